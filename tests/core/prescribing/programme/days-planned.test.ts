/** A dose for other days than the planned week gives it. */
import { describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { daysApart, daysPlanned } from '#core/prescribing/programme/days-planned.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';
import { daysApartInWords } from '#ui/clinician/programme/days-apart-words.ts';
import { namedOfStep } from '#ui/clinician/worklist/dose-step.ts';

const week = [
  { version: 1, fromDay: '2026-03-02', lines: [{ itemId: 'knee', weekdays: [1, 3, 5] }] },
] as const;
const often = (sessionsPerWeek: number): Dose => ({ ...lowLoadDose, sessionsPerWeek });

describe('days a planned week gives a line', () => {
  it('are those of its line, none for a line it does not name or that is new, and not known before any week', () => {
    expect(daysPlanned(week, '2026-03-02', 'knee')).toBe(3);
    expect(daysPlanned(week, '2026-03-02', 'hip')).toBe(0);
    expect(daysPlanned(week, '2026-03-02', null)).toBe(0);
    expect(daysPlanned(week, '2026-03-01', 'knee')).toBeNull();
    expect(daysPlanned([], '2026-03-02', 'knee')).toBeNull();
  });

  it.each([
    [2, 3],
    [3, null],
    [4, 3],
    [7, 3],
  ])('%i a week on three days is apart: %s', (sessions, apart) => {
    expect(daysApart(often(sessions), 3)).toBe(apart);
  });

  it('are not held against a dose that a clinician is beside, or where no week was planned', () => {
    const cuff = { ...often(2), method: 'occlusion', supervised: true } as unknown as Dose;
    expect(daysApart(cuff, 0)).toBeNull();
    expect(daysApart({ ...cuff, supervised: false } as Dose, 0)).toBe(0);
    expect(daysApart(often(7), null)).toBeNull();
  });
});

describe('a dose of 7 a week with three days planned', () => {
  it('is named before it is signed, and says what the phone shows', () => {
    const text = daysApartInWords(often(7), 3);
    expect(text).toMatch(/^Prescribed 7 times a week, but the planned week has it on 3 days/);
    expect(namedOfStep(often(7), often(7), [], 3)).toEqual([text]);
    expect(namedOfStep(often(7), often(7), [], 7)).toEqual([]);
    expect(daysApartInWords(often(3), 0)).toMatch(/the phone shows it on none/);
  });
});

describe('a dose that is prescribed for other days than planned', () => {
  it.each([
    [1, 2, /^Prescribed once a week, but the planned week has it on 2 days/],
    [1, 0, /^Prescribed once a week, but the planned week has no day/],
    [2, 1, /^Prescribed 2 times a week, but the planned week has it on 1 day,/],
  ])('%i a week with %i planned is said in the right number', (sessions, planned, said) => {
    expect(daysApartInWords(often(sessions), planned)).toMatch(said);
  });
});
