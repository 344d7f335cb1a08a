/** Five times sit-to-stand against its two cuts. Its error in sore joints is large and not on file. */
import { worked } from '#core/calculations/working.ts';
import { figure } from '#core/review/plain-words.ts';
import { withoutError } from '../../change/against-error.ts';
import { type Judgement, withoutNorm } from '../../course/judgement.ts';
import { fiveTimesSitToStandRow } from '../../function-tests/five-times-sit-to-stand.ts';
import { number, usually } from '../fields.ts';
import { measure } from '../measure.ts';

const norm = ({ seconds }: { readonly seconds: number }): Judgement => {
  const { working, outcome } = worked(fiveTimesSitToStandRow, { seconds });
  if (!outcome.ok) return withoutNorm('No cut-off holds for this time.');
  const { mobilityRisk, lowStrength } = outcome.result;
  const place = lowStrength
    ? 'over both'
    : mobilityRisk
      ? 'at the first or over it, not over the second'
      : 'under both';
  return {
    sentence: `13.6 s or more is a mobility-risk cut, more than 15 s low strength: ${figure(seconds)} s is ${place}. Pain on rising slows the test without any loss of strength.`,
    workings: [working],
  };
};

export const fiveTimesSitToStand = measure({
  kind: 'five-times-sit-to-stand',
  title: 'Five times sit-to-stand',
  isChosen: true,
  fields: [number('seconds', 's', 2, 300, 'Time')],
  usual: [usually('seconds', 4, 60, 's')],
  hints: { seconds: 'Arms crossed, the same chair each time; a test that needed the arms is not one.' },
  figure: (row) => row.seconds,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.seconds, unit: 's' }] },
  inWords: (row) => `${figure(row.seconds)} s`,
  course: {
    area: 'function',
    norm,
    change: (first, last, { errorGroup }) => withoutError(last.seconds - first.seconds, ' s', errorGroup),
    drawnAt: (row) => row.seconds,
    drawn: () => ({
      unit: 's',
      error: null,
      cut: { at: 13.6, words: 'mobility-risk cut: 13.6 s or more' },
      better: 'lower',
    }),
  },
});
