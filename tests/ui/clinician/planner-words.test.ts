import { describe, expect, it } from 'vitest';
import { conflictsInWords } from '#ui/clinician/programme/planner-words.ts';

describe('conflicts of a week in words', () => {
  it('name each muscle once, with every pair of days that stand too close', () => {
    expect(
      conflictsInWords(
        [
          { kind: 'muscle-crowded', muscle: 'quadriceps', days: [1, 2] },
          { kind: 'session-long', day: 3, minutes: 61 },
          { kind: 'muscle-crowded', muscle: 'quadriceps', days: [2, 3] },
        ],
        (itemId) => itemId,
      ),
    ).toEqual([
      'quadriceps: worked on Monday and again on Tuesday; worked on Tuesday and again on Wednesday.',
      'Wednesday: about 61 minutes.',
    ]);
  });

  it('say how often a cuff may be on a limb', () => {
    // Common practice, no source: two to three days a week, once a session.
    expect(conflictsInWords([{ kind: 'cuff-often', limb: 'left leg', days: 4 }], String)).toEqual([
      'A cuff on the left leg on 4 days a week. The limit is 3; remove a day.',
    ]);
  });
});
