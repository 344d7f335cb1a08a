/** Two properties of the rules over invented diaries, symptoms independent of load, clinic choices at default. */
import { beforeAll, describe, expect, it } from 'vitest';
import { engineDefaults } from '#core/decision/settings.ts';
import { diaryTypes } from '#simulation/diaries/diary-types.ts';
import { summarise, type TypeSummary } from '#simulation/diaries/summary.ts';

const settings = { weeks: 26, settings: engineDefaults, widenedBy: 0, pauseDays: 3 };
const ceiling = 5;

describe('26 weeks of invented diaries through engine and dose rules', () => {
  let summaries: readonly TypeSummary[] = [];
  beforeAll(() => {
    summaries = diaryTypes.map((type) => summarise(type, settings, 24, 20_260_131));
  });

  it('on flare days progress stays under 2 % for every type', () => {
    for (const { type, flareShares, flareDecisions } of summaries) {
      expect([type.id, flareDecisions > 0]).toEqual([type.id, true]);
      expect([type.id, flareShares.progress < 0.02]).toEqual([type.id, true]);
    }
  });

  it('a type whose usual pain lies under the ceiling does not end below its start at the median', () => {
    const under = summaries.filter(({ type }) => type.usualPain < ceiling);
    const below = under.filter(({ dose }) => dose[1] < 1).map(({ type }) => type.id);
    console.log(under.map(({ type, dose }) => `${type.id} ${(dose[1] * 100).toFixed(0)} %`).join(', '));
    expect(below).toEqual([]);
  });

  it('with the usual band widened by one point none of them does either', () => {
    for (const type of diaryTypes.filter(({ usualPain }) => usualPain < ceiling)) {
      const { dose } = summarise(type, { ...settings, widenedBy: 1 }, 24, 20_260_131);
      expect([type.id, dose[1] >= 1]).toEqual([type.id, true]);
    }
  });
});
