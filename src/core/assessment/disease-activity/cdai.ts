/**
 * Clinical disease activity index: tender and swollen joints of 28 and two global ratings 0 to 10.
 *
 * For rheumatoid arthritis, entered by a clinician; no blood test. Sources disagree at exactly 2.8; here 2.8
 * itself is remission, as on the college's card.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { bandOf, type UpperBand } from './bands.ts';
import type { ActivityBand } from './das28.ts';
import { clinicalFields, clinicalSum } from './joint-count-fields.ts';

const bands: readonly UpperBand<ActivityBand>[] = [
  { band: 'remission', upTo: 2.8, including: true },
  { band: 'low', upTo: 10, including: true },
  { band: 'moderate', upTo: 22, including: true },
];

export const cdaiBand = (score: number): ActivityBand => bandOf(score, bands, 'high');

export const cdaiRow = calculation({
  id: 'cdai',
  title: 'Clinical disease activity index',
  area: 'outcomes',
  input: clinicalFields,
  result: units({ score: '{score}', band: '' }),
  citations: [
    { source: 'activity-card', locator: 'remission up to and with 2.8, low 10, moderate 22', mark: 'seen' },
    {
      source: 'das28-formulae',
      locator: 'table 187591: remission under 2.8',
      mark: 'seen',
      remark: 'Not the one used: the two sources disagree at exactly 2.8.',
    },
  ],
  calculate: (input) => {
    const score = clinicalSum(input);
    const atBound = Math.abs(score - 2.8) < 1e-9;
    return answer(
      { score, band: cdaiBand(score) },
      atBound
        ? [{ code: 'sources-disagree', text: 'Sources disagree whether 2.8 is remission; here it is.' }]
        : [],
    );
  },
  example: { tender: 4, swollen: 2, patientGlobal: 4, clinicianGlobal: 3 },
});
