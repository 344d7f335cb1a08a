/**
 * Undernutrition by the ESPEN consensus of 2015.
 *
 * Either a body-mass index under 18.5, or enough loss together with a low index for age or a low fat-free
 * index. Differs from the GLIM criteria, which came later: both are shown, and either one locks targets.
 */
import { calculation } from '../calculations/calculation.ts';
import type { Field, InputOf } from '../calculations/describe.ts';
import { answer } from '../outcome.ts';
import { ageYears, bodyMassIndexField, sex } from './body-fields.ts';

export const underweightUnder = 18.5;
const lowIndexUnder = { younger: 20, older: 22, olderFrom: 70 } as const;
const lossAbovePercent = { threeMonths: 5, anyTime: 10 } as const;
const lowFatFreeIndexUnder = { female: 15, male: 17 } as const;

const input = [
  bodyMassIndexField,
  ageYears,
  { name: 'lossPercentThreeMonths', kind: 'number', unit: '%', min: -100, max: 90, optional: true },
  { name: 'lossPercentAnyTime', kind: 'number', unit: '%', min: -100, max: 90, optional: true },
  { name: 'fatFreeMassIndex', kind: 'number', unit: 'kg/m2', min: 5, max: 40, optional: true },
  { ...sex, optional: true },
] as const satisfies readonly Field[];
type Facts = InputOf<typeof input>;

const above = (value: number | undefined, cut: number): boolean | null =>
  value === undefined ? null : value > cut;

/** Three-valued "or": one true settles it, an unknown leaves it open. */
const either = (left: boolean | null, right: boolean | null): boolean | null =>
  left || right ? true : left === null || right === null ? null : false;

const secondCriterion = (facts: Facts): boolean | null => {
  const loss = either(
    above(facts.lossPercentThreeMonths, lossAbovePercent.threeMonths),
    above(facts.lossPercentAnyTime, lossAbovePercent.anyTime),
  );
  const indexCut = facts.ageYears >= lowIndexUnder.olderFrom ? lowIndexUnder.older : lowIndexUnder.younger;
  const fatFree =
    facts.fatFreeMassIndex === undefined || facts.sex === undefined
      ? null
      : facts.fatFreeMassIndex < lowFatFreeIndexUnder[facts.sex];
  const thin = either(facts.bodyMassIndex < indexCut, fatFree);
  if (loss === false || thin === false) return false;
  return loss === null || thin === null ? null : true;
};

export const espenUndernutrition = (facts: Facts): boolean | null =>
  either(facts.bodyMassIndex < underweightUnder, secondCriterion(facts));

export const espenUndernutritionRow = calculation({
  id: 'espen-undernutrition',
  title: 'Undernutrition by the 2015 consensus',
  area: 'nutrition',
  input,
  result: [
    { name: 'undernutrition', unit: '', about: 'null when an answer that would settle it is missing' },
  ],
  citations: [{ source: 'espen-2015', locator: 'the two alternative criteria', mark: 'seen' }],
  calculate: (facts) =>
    answer({ undernutrition: espenUndernutrition(facts) }, [
      { code: 'flag-only', text: 'A flag for the clinician, who decides with what was not asked here.' },
    ]),
  example: { bodyMassIndex: 19.5, ageYears: 60, lossPercentThreeMonths: 6 },
});
