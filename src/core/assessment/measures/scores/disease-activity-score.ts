/** A disease activity index worked out elsewhere, such as in a letter of the rheumatologist, entered as its number. */
import type { Refusal } from '#core/outcome.ts';
import { amount, unjudged, withoutNorm } from '../../course/judgement.ts';
import { cdaiBand } from '../../disease-activity/cdai.ts';
import { type ActivityBand, das28Band } from '../../disease-activity/das28.ts';
import { rapid3Band } from '../../disease-activity/rapid3.ts';
import { number } from '../fields.ts';
import { measure } from '../measure.ts';

const indices = ['das28-esr', 'das28-crp', 'cdai', 'rapid3'] as const;
type Index = (typeof indices)[number];

interface About {
  readonly name: string;
  readonly most: number;
  readonly band: (score: number) => ActivityBand;
  readonly cuts: string;
}

const dasCuts = 'remission under 2.6, low to 3.2, moderate to 5.1';
/** The highest each can be by its formula, that of the DAS28 rounded up. */
const about: Readonly<Record<Index, About>> = {
  'das28-esr': { name: 'DAS28 with ESR', most: 10, band: das28Band, cuts: dasCuts },
  'das28-crp': { name: 'DAS28 with CRP', most: 10, band: das28Band, cuts: dasCuts },
  cdai: { name: 'CDAI', most: 76, band: cdaiBand, cuts: 'remission up to 2.8, low to 10, moderate to 22' },
  rapid3: { name: 'RAPID3', most: 30, band: rapid3Band, cuts: 'remission up to 3, low to 6, moderate to 12' },
};

const tooHigh = ({ index, score }: { readonly index: Index; readonly score: number }): readonly Refusal[] => {
  const { name, most } = about[index];
  return score > most
    ? [
        {
          field: 'input.score',
          code: 'too-high',
          reason: `${name} goes up to ${most}; check the index and the number.`,
        },
      ]
    : [];
};

export const diseaseActivityScore = measure({
  kind: 'disease-activity-score',
  title: 'Reported disease activity index',
  isChosen: true,
  fields: [
    { name: 'index', kind: 'enum', values: indices, about: 'Index' },
    number('score', '{score}', 0, 76, 'Number'),
  ],
  hints: { score: 'RAPID3 from 0 to 30, not divided by three.' },
  sameBy: ['index'],
  subject: (row) => about[row.index].name,
  figure: (row) => row.score,
  consistent: tooHigh,
  inWords: (row) => `${amount(row.score)}, ${about[row.index].band(row.score)}`,
  course: {
    area: 'joints',
    subject: (row) => about[row.index].name,
    title: (subject) => `Reported disease activity index: ${subject}`,
    norm: ({ index, score }) =>
      withoutNorm(
        `${amount(score)} is ${about[index].band(score)}: ${about[index].cuts}. For rheumatoid arthritis.`,
      ),
    change: (first, last) =>
      unjudged(last.score - first.score, '', 'No error of measuring this index is on file.'),
    drawnAt: (row) => row.score,
    drawn: () => ({ unit: '', error: null, cut: null, better: 'lower' }),
  },
});
