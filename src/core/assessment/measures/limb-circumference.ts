/**
 * Girth of a limb, and its change against the error of the tape: 1.5 cm, from memory and with little confidence.
 *
 * Recalled are about 1 cm at the joint line and 1 to 1.5 cm at the thigh; the wider is used, because calling
 * too little a change does less harm. A clinic's own double measures give a better figure. A tape cannot tell
 * muscle from swelling, so no direction is called better.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { worked } from '#core/calculations/working.ts';
import { answer } from '#core/outcome.ts';
import { figure } from '#core/review/plain-words.ts';
import { exceeds } from '../change/change-beyond-error.ts';
import { amount, nothingToCompare, type OutcomeLine, signed, withoutNorm } from '../course/judgement.ts';
import { limb, number, side, usually, word } from './fields.ts';
import { measure } from './measure.ts';

const minimalDetectableCm = 1.5;

const girth = <const N extends string>(name: N) =>
  ({ name, kind: 'number', unit: 'cm', min: 10, max: 120 }) as const;

const girthChangeRow = calculation({
  id: 'girth-change',
  title: 'Change of a limb’s girth',
  area: 'outcomes',
  input: [girth('beforeCm'), girth('afterCm')],
  result: [
    { name: 'change', unit: 'cm', about: 'after less before' },
    { name: 'minimalDetectableChange', unit: 'cm' },
    { name: 'beyondError', unit: '' },
  ],
  citations: [
    {
      source: 'girth-recalled',
      locator: 'smallest real difference about 1 cm at the joint line, 1 to 1.5 cm at the thigh',
      mark: 'memory',
      remark: 'Measure twice and work out your own with the detectable change from double measures.',
    },
  ],
  calculate: (input) => {
    const change = input.afterCm - input.beforeCm;
    return answer(
      {
        change,
        minimalDetectableChange: minimalDetectableCm,
        beyondError: exceeds(Math.abs(change), minimalDetectableCm),
      },
      [
        {
          code: 'from-memory',
          text: 'The detectable change of 1.5 cm is from memory, with little confidence.',
        },
      ],
    );
  },
  example: { beforeCm: 48, afterCm: 50 },
});

interface Girth {
  readonly circumferenceCm: number;
}

const change = (first: Girth, last: Girth): OutcomeLine['change'] => {
  const { working, outcome } = worked(girthChangeRow, {
    beforeCm: first.circumferenceCm,
    afterCm: last.circumferenceCm,
  });
  if (!outcome.ok) return nothingToCompare;
  const { change: difference, minimalDetectableChange, beyondError } = outcome.result;
  const error = `the error of measuring ${amount(minimalDetectableChange)} cm (from memory)`;
  return {
    sentence: beyondError
      ? `${signed(difference)} cm, beyond ${error}: a change. A tape cannot tell muscle from swelling.`
      : `${signed(difference)} cm, within ${error}: not called a change.`,
    workings: [working],
    verdict: 'not-judged',
  };
};

export const limbCircumference = measure({
  kind: 'limb-circumference',
  title: 'Limb circumference',
  fields: [
    limb,
    side,
    word('site', 'Where on the limb'),
    number('circumferenceCm', 'cm', 10, 120, 'Circumference'),
  ],
  usual: [usually('circumferenceCm', 18, 80, 'cm')],
  sameBy: ['limb', 'side', 'site'],
  figure: (row) => row.circumferenceCm,
  farFromLast: { percent: 15, figures: (row) => [{ value: row.circumferenceCm, unit: 'cm' }] },
  inWords: (row) => `${figure(row.circumferenceCm)} cm, ${row.site}`,
  course: {
    area: 'size',
    subject: (row) => `${row.side} ${row.limb}, ${row.site}`,
    title: (subject) => `Girth: ${subject}`,
    reading: (row) => `${figure(row.circumferenceCm)} cm`,
    norm: () => withoutNorm('There is no norm; compare with the other side, measured at the same place.'),
    change,
    drawnAt: (row) => row.circumferenceCm,
    drawn: () => ({ unit: 'cm', error: minimalDetectableCm, cut: null, better: null }),
  },
  sides: {
    subject: (row) => `${row.limb}, ${row.site}`,
    side: (row) => row.side,
    figure: (row) => row.circumferenceCm,
    unit: ' cm',
    isRatio: false,
    error: { figure: minimalDetectableCm, words: 'from memory; a tape cannot tell muscle from swelling' },
  },
  calculations: [girthChangeRow],
});
