/** What answers would close, said before they are saved: the same as once they are. */
import { describe, expect, it } from 'vitest';
import { type EligibilityBasis, eligibilityNow, eligibilityWith } from '#core/episode/eligibility-now.ts';
import { screeningSheetVersion } from '#core/screening/items.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';

const today = '2026-04-20';
const basis: EligibilityBasis = {
  screenings: [null],
  readings: [[]],
  clearances: [],
  today,
  ageYears: 64,
  settings: {},
  care: {
    episodeStatus: { state: 'not-recorded', change: null, returned: null },
    consents: [],
    events: [],
    screening: null,
  },
};
type Over = Readonly<Record<string, 'yes' | 'not-known'>>;
const answers = (over: Over = {}) =>
  minimumSet('low-load', 64).map(({ id }) => ({ item: id, answer: over[id] ?? ('no' as const) }));
const sheetOf = (over: Over = {}) => ({
  sheetVersion: screeningSheetVersion,
  answers: answers(over),
});
const saved = (sheet: ReturnType<typeof sheetOf>) =>
  eligibilityNow({ ...basis, screenings: [{ ...sheet, version: 1, day: today }] });

describe('eligibility with answers that are not saved yet', () => {
  it('is that of the record while nothing is answered', () => {
    expect(eligibilityWith(basis, { ...sheetOf(), answers: [] })).toEqual(eligibilityNow(basis));
    expect(eligibilityNow(basis).every(({ eligibility }) => eligibility === 'closed')).toBe(true);
  });

  it.each<Over>([
    {},
    { 'past-clot': 'yes' },
    { 'new-chest-faint-or-breath': 'yes' },
    { diabetes: 'not-known' },
  ])('is what it is once they are saved: %o', (over) => {
    expect(eligibilityWith(basis, sheetOf(over))).toEqual(saved(sheetOf(over)));
  });

  it('puts an answer beside those on record and takes none of them away', () => {
    const onRecord = { ...basis, screenings: [{ ...sheetOf(), version: 1, day: today }] };
    const one = {
      sheetVersion: screeningSheetVersion,
      answers: [{ item: 'past-clot', answer: 'yes' as const }],
    };
    expect(eligibilityWith(onRecord, one)).toEqual(saved(sheetOf({ 'past-clot': 'yes' })));
  });

  it('takes the stricter of two readings between which a correction waits', () => {
    const open = { ...sheetOf(), version: 1, day: today };
    const shut = { ...sheetOf({ 'new-chest-faint-or-breath': 'yes' }), version: 2, day: today };
    const both = eligibilityNow({ ...basis, screenings: [open, shut] });
    expect(both.every(({ eligibility }) => eligibility.startsWith('closed'))).toBe(true);
  });
});
