/**
 * Three patient ratings in one index, 0 to 30: function, pain and patient global, each 0 to 10.
 *
 * For rheumatoid arthritis. Sources disagree at exactly 3; here 3 itself is remission, as on the college's card,
 * which prints the index divided by three.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { bandOf, type UpperBand } from './bands.ts';
import type { ActivityBand } from './das28.ts';
import { zeroToTen } from './joint-count-fields.ts';

const bands: readonly UpperBand<ActivityBand>[] = [
  { band: 'remission', upTo: 3, including: true },
  { band: 'low', upTo: 6, including: true },
  { band: 'moderate', upTo: 12, including: true },
];

export const rapid3Band = (score: number): ActivityBand => bandOf(score, bands, 'high');

export const rapid3Row = calculation({
  id: 'rapid3',
  title: 'Index of three patient ratings',
  area: 'outcomes',
  input: [
    zeroToTen('function', 'Difficulty with daily function.'),
    zeroToTen('pain', 'Pain.'),
    zeroToTen('patientGlobal', 'Patient’s global rating.'),
  ],
  result: units({ score: '{score}', band: '' }),
  citations: [
    {
      source: 'activity-card',
      locator: 'remission up to and with 3 (1.0 when divided by three), 6, 12',
      mark: 'seen',
    },
    {
      source: 'das28-formulae',
      locator: 'table 187591: remission under 3',
      mark: 'seen',
      remark: 'Not the one used: the two sources disagree at exactly 3.',
    },
  ],
  calculate: (input) => {
    const score = input.function + input.pain + input.patientGlobal;
    const atBound = Math.abs(score - 3) < 1e-9;
    return answer(
      { score, band: rapid3Band(score) },
      atBound
        ? [{ code: 'sources-disagree', text: 'Sources disagree whether 3 is remission; here it is.' }]
        : [],
    );
  },
  example: { function: 3.3, pain: 5, patientGlobal: 4 },
});
