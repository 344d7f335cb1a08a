/** What a correction changed is told answer by answer, and nothing else is. */
import { describe, expect, it } from 'vitest';
import { answerChanges } from '#core/record/answer-changes.ts';
import type { SessionEntry } from '#core/record/entries.ts';
import { sessionEntry } from '#tests/support/clinic.ts';

const set = {
  prescriptionId: 'p',
  itemId: 'i',
  set: 1,
  repetitions: 15,
  loadKg: 4,
  reserve: 2,
  stopReason: 'none',
} as const;
const joint = {
  joint: 'right-knee',
  painBefore: 1,
  painDuring: 2,
  painAfter: 3,
  twoHoursState: 'asked',
  muscleBurn: 4,
  cuffDiscomfort: null,
  gaveWay: false,
} as const;
const entry = sessionEntry({ entryId: 'a', sets: [set], joints: [joint] });
const withJoint = (more: object): SessionEntry => ({ ...entry, joints: [{ ...joint, ...more }] });
const withSet = (more: object): SessionEntry => ({ ...entry, sets: [{ ...set, ...more }] });

describe('the changes between two versions of a session', () => {
  it.each([
    [withSet({ repetitions: 12 }), { what: 'repetitions', itemId: 'i', set: 1, from: 15, to: 12 }],
    [withSet({ repetitions: null }), { what: 'repetitions', from: 15, to: null }],
    [withSet({ loadKg: 3 }), { what: 'load', from: 4, to: 3 }],
    [withJoint({ painBefore: 0 }), { what: 'pain-before', joint: 'right-knee', from: 1, to: 0 }],
    [withJoint({ painDuring: 7 }), { what: 'pain-during', from: 2, to: 7 }],
    [withJoint({ painAfter: null }), { what: 'pain-after', from: 3, to: null }],
    [withJoint({ muscleBurn: 5 }), { what: 'burn', joint: null, from: 4, to: 5 }],
    [withJoint({ cuffDiscomfort: 5 }), { what: 'cuff', from: null, to: 5 }],
    [withJoint({ gaveWay: true }), { what: 'gave-way', from: false, to: true }],
    [
      { ...entry, didExtra: null },
      { what: 'extra', from: false, to: null },
    ],
  ] as const)('name the one answer that differs: %#', (after, change) => {
    expect(answerChanges(entry, after)).toEqual([expect.objectContaining(change)]);
  });

  it('are none where only id, time of sending and reasons differ', () => {
    expect(answerChanges(entry, { ...withSet({ stopReason: 'unknown' }), entryId: 'b', sentAt: 1 })).toEqual(
      [],
    );
  });
});
