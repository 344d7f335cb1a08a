/**
 * Estimated glomerular filtration rate from creatinine, CKD-EPI 2021, with its stage.
 *
 * For adults with stable kidney function. Unreliable in pregnancy, in extremes of muscle mass, on very
 * high or low protein and with creatine, which is exactly the group that trains for muscle: always an
 * estimate. Stages are cut on the unrounded value, so 89.6 is G2.
 */
import { calculation, units } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';
import { ageYears, type Sex, sex } from './body-fields.ts';

const scale = 142;
const aboveKneeExponent = -1.2;
const perYear = 0.9938;
const bySex = {
  female: { kneeMgDl: 0.7, belowKneeExponent: -0.241, factor: 1.012 },
  male: { kneeMgDl: 0.9, belowKneeExponent: -0.302, factor: 1 },
} as const;

/** Each stage runs from its lower bound, which belongs to it, in mL/min/1.73 m². */
const stages = [
  { stage: 'G1', from: 90 },
  { stage: 'G2', from: 60 },
  { stage: 'G3a', from: 45 },
  { stage: 'G3b', from: 30 },
  { stage: 'G4', from: 15 },
  { stage: 'G5', from: 0 },
] as const;
export type KidneyStage = (typeof stages)[number]['stage'];

export const egfr = (person: Sex, age: number, creatinineMgDl: number): number => {
  const row = bySex[person];
  const ratio = creatinineMgDl / row.kneeMgDl;
  return (
    scale *
    Math.min(ratio, 1) ** row.belowKneeExponent *
    Math.max(ratio, 1) ** aboveKneeExponent *
    perYear ** age *
    row.factor
  );
};

export const kidneyStage = (rate: number): KidneyStage =>
  stages.find((row) => rate >= row.from)?.stage ?? 'G5';

export const egfrRow = calculation({
  id: 'egfr',
  title: 'Kidney function from creatinine',
  area: 'nutrition',
  input: [sex, ageYears, { name: 'creatinineMgDl', kind: 'number', unit: 'mg/dL', min: 0.1, max: 30 }],
  result: units({ egfr: 'mL/min/{1.73_m2}', stage: '' }),
  citations: [
    { source: 'inker-2021', locator: 'equation as printed by a kidney foundation', mark: 'seen' },
    { source: 'gfr-stages', locator: 'stages G1 to G5 and limits of the estimate', mark: 'second-hand' },
  ],
  calculate: (input) => {
    const rate = egfr(input.sex, input.ageYears, input.creatinineMgDl);
    return answer({ egfr: rate, stage: kidneyStage(rate) }, [
      {
        code: 'estimate',
        text: 'An estimate for stable kidney function. Much or little muscle, creatine, a very high- or low-protein diet and pregnancy each make it wrong.',
      },
    ]);
  },
  example: { sex: 'female', ageYears: 55, creatinineMgDl: 0.9 },
});
