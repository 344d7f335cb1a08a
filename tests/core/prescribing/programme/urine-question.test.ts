/** When dark urine and unusual muscle pain are asked apart. */
import { describe, expect, it } from 'vitest';
import { isNewDose, urineAskedUntil } from '#core/prescribing/programme/urine-question.ts';

const done = (day: string, prescriptionId: string) => ({
  day,
  beganAt: Date.parse(`${day}T18:00:00Z`),
  sets: [
    {
      itemId: 'a',
      prescriptionId,
      set: 1,
      repetitions: 15,
      loadKg: 4,
      reserve: 2,
      stopReason: 'none' as const,
    },
  ],
});
const first = { id: 'first', origin: 'clinician' as const };
const raised = { id: 'raised', origin: 'progress' as const };
const eased = { id: 'eased', origin: 'ease-back' as const };

describe('after the first session of a new or raised dose', () => {
  it.each([
    ['2026-03-09', '2026-03-12'],
    ['2026-03-12', '2026-03-12'],
    ['2026-03-13', null],
  ])('on 9 March it is asked up to the third morning: seen on %s until %s', (today, until) => {
    expect(urineAskedUntil([first], [done('2026-03-09', 'first')], today)).toBe(until);
  });

  it('it is not asked again after the second session of the same dose', () => {
    const both = [done('2026-03-09', 'first'), done('2026-03-13', 'first')];
    expect(urineAskedUntil([first], both, '2026-03-14')).toBeNull();
  });

  it('it is asked anew when the dose was raised, and not when it was eased', () => {
    const then = [done('2026-03-01', 'first')];
    expect(urineAskedUntil([first, raised], [...then, done('2026-03-09', 'raised')], '2026-03-10')).toBe(
      '2026-03-12',
    );
    expect(urineAskedUntil([first, eased], [...then, done('2026-03-09', 'eased')], '2026-03-10')).toBeNull();
  });
});

describe('a dose', () => {
  it('is new until somebody has done it', () => {
    expect(isNewDose(raised, [])).toBe(true);
    expect(isNewDose(raised, [done('2026-03-09', 'raised')])).toBe(false);
    expect(isNewDose(eased, [])).toBe(false);
  });
});
