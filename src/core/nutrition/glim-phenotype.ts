/**
 * The phenotypic half of the GLIM criteria: body mass lost, or low body-mass index.
 *
 * A flag only. The diagnosis needs an etiologic criterion as well (reduced intake, inflammation; active
 * inflammatory arthritis may count) and a clinician. Low muscle mass, the third phenotypic criterion, is
 * not looked at. A loss that was not asked is unknown, never zero.
 */
import { calculation } from '../calculations/calculation.ts';
import type { Field, InputOf } from '../calculations/describe.ts';
import { answer } from '../outcome.ts';
import { ageYears, bodyMassIndexField } from './body-fields.ts';

const olderFrom = 70;
/** A body-mass index under the figure counts. */
const indexCuts = {
  general: { low: { younger: 20, older: 22 }, severe: { younger: 18.5, older: 20 } },
  asia: { low: { younger: 18.5, older: 20 }, severe: null },
} as const;
/** A loss above the figure counts, in percent of the earlier mass. */
const lossCuts = { sixMonths: 5, sixMonthsSevere: 10, longer: 10 } as const;

const input = [
  bodyMassIndexField,
  ageYears,
  { name: 'lossPercentSixMonths', kind: 'number', unit: '%', min: -100, max: 90, optional: true },
  { name: 'lossPercentLonger', kind: 'number', unit: '%', min: -100, max: 90, optional: true },
  { name: 'cutOffs', kind: 'enum', values: ['general', 'asia'], optional: true },
] as const satisfies readonly Field[];
type Facts = InputOf<typeof input>;

const indexFlag = (facts: Facts): 'none' | 'low' | 'severe' => {
  const cuts = indexCuts[facts.cutOffs ?? 'general'];
  const group = facts.ageYears >= olderFrom ? 'older' : 'younger';
  if (cuts.severe && facts.bodyMassIndex < cuts.severe[group]) return 'severe';
  return facts.bodyMassIndex < cuts.low[group] ? 'low' : 'none';
};

const lossFlag = (facts: Facts): 'none' | 'loss' | 'severe' | 'not-known' => {
  const recent = facts.lossPercentSixMonths;
  const longer = facts.lossPercentLonger;
  if (recent !== undefined && recent > lossCuts.sixMonthsSevere) return 'severe';
  if (recent !== undefined && recent > lossCuts.sixMonths) return 'loss';
  if (longer !== undefined && longer > lossCuts.longer) return 'loss';
  return recent === undefined ? 'not-known' : 'none';
};

export const glimPhenotype = (facts: Facts) => {
  const index = indexFlag(facts);
  const loss = lossFlag(facts);
  const found = index !== 'none' || loss === 'loss' || loss === 'severe';
  return {
    bodyMassIndexFlag: index,
    lossFlag: loss,
    flagged: found ? true : loss === 'not-known' ? null : false,
  };
};

export const glimPhenotypeRow = calculation({
  id: 'glim-phenotype',
  title: 'Malnutrition flag from body mass',
  area: 'nutrition',
  input,
  result: [
    { name: 'bodyMassIndexFlag', unit: '', about: 'none, low or severe' },
    { name: 'lossFlag', unit: '', about: 'none, loss, severe or not-known' },
    { name: 'flagged', unit: '', about: 'null when nothing was found and loss was not asked' },
  ],
  citations: [
    {
      source: 'glim-2019',
      locator: 'phenotypic criteria and severity',
      mark: 'second-hand',
      remark: 'No grading of a low index was seen for the Asian cut-offs.',
    },
  ],
  calculate: (facts) =>
    answer(glimPhenotype(facts), [
      {
        code: 'flag-only',
        text: 'A flag from body mass alone. Muscle mass, intake and inflammation were not looked at; a clinician decides.',
      },
    ]),
  example: { bodyMassIndex: 19.5, ageYears: 65, lossPercentSixMonths: 0 },
});
