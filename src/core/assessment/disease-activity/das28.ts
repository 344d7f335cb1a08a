/**
 * Disease activity score on 28 joints, with ESR or CRP, with and without the patient's global rating.
 *
 * For rheumatoid arthritis, entered by a clinician. The CRP form runs lower than the ESR form at the same cuts:
 * never mix the two in one series. Sources disagree at exactly 3.2; here 3.2 itself is low. An ESR of 0 has no
 * logarithm and is refused, never floored.
 */
import { calculation } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import { needed } from '#core/calculations/needed-inputs.ts';
import { answer, type Note, type Outcome } from '#core/outcome.ts';
import { bandOf, type UpperBand } from './bands.ts';
import { swollen, tender } from './joint-count-fields.ts';

export type ActivityBand = 'remission' | 'low' | 'moderate' | 'high';

const bands: readonly UpperBand<ActivityBand>[] = [
  { band: 'remission', upTo: 2.6, including: false },
  { band: 'low', upTo: 3.2, including: true },
  { band: 'moderate', upTo: 5.1, including: true },
];
const weights = {
  tender: 0.56,
  swollen: 0.28,
  lnEsr: 0.7,
  lnCrp: 0.36,
  global: 0.014,
  crpConstant: 0.96,
} as const;
const threeVariables = {
  esr: { factor: 1.08, constant: 0.16 },
  crp: { factor: 1.1, constant: 1.15 },
} as const;

const input = [
  { name: 'form', kind: 'enum', values: ['esr', 'crp', 'esr-three', 'crp-three'] },
  tender,
  swollen,
  { name: 'esr', kind: 'number', unit: 'mm/h', min: 1, max: 200, optional: true },
  { name: 'crp', kind: 'number', unit: 'mg/L', min: 0, max: 600, optional: true },
  {
    name: 'globalHealth',
    kind: 'number',
    unit: '{score}',
    min: 0,
    max: 100,
    optional: true,
    about: 'Patient’s global rating 0 to 100; not used by the three-variable forms.',
  },
] as const satisfies readonly Field[];
export type Das28Input = InputOf<typeof input>;

const joints = (given: Das28Input): number =>
  weights.tender * Math.sqrt(given.tender) + weights.swollen * Math.sqrt(given.swollen);

const score = (given: Das28Input): Outcome<number> => {
  if (given.form === 'esr' || given.form === 'esr-three') {
    const full = needed(given, ['esr'], 'this form takes it');
    if (!full.ok) return full;
    const base = joints(given) + weights.lnEsr * Math.log(full.result.esr);
    if (given.form === 'esr-three')
      return answer(base * threeVariables.esr.factor + threeVariables.esr.constant);
    const rated = needed(given, ['globalHealth'], 'this form takes it');
    return rated.ok ? answer(base + weights.global * rated.result.globalHealth) : rated;
  }
  const full = needed(given, ['crp'], 'this form takes it');
  if (!full.ok) return full;
  const base = joints(given) + weights.lnCrp * Math.log(full.result.crp + 1);
  if (given.form === 'crp-three')
    return answer(base * threeVariables.crp.factor + threeVariables.crp.constant);
  const rated = needed(given, ['globalHealth'], 'this form takes it');
  return rated.ok ? answer(base + weights.global * rated.result.globalHealth + weights.crpConstant) : rated;
};

const notesFor = (given: Das28Input, value: number): readonly Note[] => [
  ...(given.form.startsWith('crp')
    ? [
        {
          code: 'crp-runs-lower',
          text: 'The CRP form runs lower than the ESR form; keep to one form in a series.',
        },
      ]
    : []),
  ...(Math.abs(value - 3.2) < 0.05
    ? [{ code: 'sources-disagree', text: 'Sources disagree whether 3.2 is low or moderate; here it is low.' }]
    : []),
];

/** The band of a score however it was computed; the bound 3.2 belongs to low activity. */
export const das28Band = (value: number): ActivityBand => bandOf(value, bands, 'high');

export const das28 = (given: Das28Input): Outcome<{ score: number; band: ActivityBand }> => {
  const outcome = score(given);
  if (!outcome.ok) return outcome;
  const value = outcome.result;
  return answer({ score: value, band: das28Band(value) }, notesFor(given, value));
};

export const das28Row = calculation({
  id: 'das28',
  title: 'Disease activity score on 28 joints',
  area: 'outcomes',
  input,
  result: [
    { name: 'score', unit: '{score}' },
    { name: 'band', unit: '', about: 'remission, low, moderate or high' },
  ],
  citations: [
    { source: 'das28-formulae', locator: 'four formulae; bands with 3.2 in low activity', mark: 'seen' },
    {
      source: 'activity-card',
      locator: 'bands with 3.2 in moderate activity',
      mark: 'seen',
      remark: 'Not the one used: the two sources disagree at exactly 3.2.',
    },
  ],
  calculate: das28,
  example: { form: 'esr', tender: 4, swollen: 2, esr: 30, globalHealth: 40 },
});
