/** Each patient of a clinic stands in one group, and no group reassures about somebody who was snoozed. */
import { describe, expect, it } from 'vitest';
import { type DueNow, groupOf, type Standing } from '#core/worklist/groups.ts';

const today = '2026-04-20';
const item = (more: Partial<DueNow> = {}): DueNow => ({ assignedTo: null, snoozedUntil: null, ...more });
const standing = (more: Partial<Standing> = {}): Standing => ({
  due: [],
  isPaused: false,
  isScreened: true,
  isDischarged: false,
  isMine: true,
  ...more,
});
const group = (more: Partial<Standing>) => groupOf(standing(more), 'me', today);

describe('a patient', () => {
  it.each([
    ['an item nobody has', { due: [item()] }, 'needs-you'],
    ['an item of the reader', { due: [item({ assignedTo: 'me' })] }, 'needs-you'],
    ['only items of a colleague', { due: [item({ assignedTo: 'piotr' })] }, 'assigned'],
    ['one of a colleague and one nobody has', { due: [item({ assignedTo: 'piotr' }), item()] }, 'needs-you'],
    ['only snoozed items', { due: [item({ snoozedUntil: '2026-04-22' })] }, 'snoozed'],
    ['a snoozed item and an awake one', { due: [item({ snoozedUntil: '2026-04-22' }), item()] }, 'needs-you'],
    ['nothing due, paused until a day ahead', { isPaused: true }, 'paused'],
    ['a pause and an item', { isPaused: true, due: [item()] }, 'needs-you'],
    ['a pause, discharged', { isPaused: true, isDischarged: true }, 'discharged'],
    ['nothing due, never screened', { isScreened: false }, 'not-screened'],
    ['nothing due, screened', {}, 'nothing-found'],
    ['nothing due, discharged', { isDischarged: true }, 'discharged'],
    ['danger after the discharge', { isDischarged: true, due: [item()] }, 'needs-you'],
    ['a record of another team, nothing urgent', { isMine: false, isScreened: false }, null],
    ['a record of another team, danger', { isMine: false, due: [item()] }, 'needs-you'],
  ] as const)('with %s: %j is in the group %s', (_name, more, expected) => {
    expect(group(more as Partial<Standing>)).toBe(expected);
  });

  it.each([
    ['the day before its last', '2026-04-21', 'snoozed'],
    ['its last day', today, 'snoozed'],
    ['the day after', '2026-04-19', 'needs-you'],
  ])('is snoozed on %s', (_name, snoozedUntil, expected) => {
    expect(group({ due: [item({ snoozedUntil })] })).toBe(expected);
  });
});
