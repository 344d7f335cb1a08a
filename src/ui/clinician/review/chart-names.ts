/** What the picture shows that its series does not hold: who signed, answered and stood beside, and what a patient put right. */
import type { AnswerChange } from '#core/record/answer-changes.ts';
import type { ChartNames } from '#core/review/day-detail.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review.ts';
import { doseTitle } from '../dose-words.ts';
import { responseInWords } from './response-words.ts';
import type { ReviewProps } from './review-props.ts';

const valueText = (value: AnswerChange['to']): string =>
  value === null
    ? say('corrected.open')
    : value === true
      ? say('corrected.yes')
      : value === false
        ? say('corrected.no')
        : String(value);

const placeOf = ({ itemId, set, joint }: AnswerChange, { prescriptions }: ReviewProps['review']): string => {
  const dose = prescriptions.findLast((row) => row.itemId === itemId)?.dose;
  return [
    dose ? doseTitle(dose) : '',
    set === null ? '' : say('corrected.set', { set }),
    joint === null ? '' : jointInWords(joint),
  ]
    .filter(Boolean)
    .join(', ');
};

const changeText = (change: AnswerChange, review: ReviewProps['review']): string => {
  const place = placeOf(change, review);
  const what = say(`corrected.${change.what}`);
  const name = place === '' ? what : `${place}, ${what}`;
  return say('corrected.change', { name, from: valueText(change.from), to: valueText(change.to) });
};

type LinesByDay = ReadonlyMap<string, readonly string[]>;

const linesByDay = (told: readonly (readonly [day: string, line: string])[]): LinesByDay => {
  const lines = new Map<string, readonly string[]>();
  for (const [day, line] of told) lines.set(day, [...(lines.get(day) ?? []), line]);
  return lines;
};

const correctedInWords = (changes: readonly AnswerChange[], review: ReviewProps['review']): string =>
  say('corrected.line', { changes: changes.map((change) => changeText(change, review)).join('; ') });

/** A correction by which nothing changed, such as a confirmed time, is none to tell. */
const corrections = (review: ReviewProps['review']): LinesByDay =>
  linesByDay(
    review.corrected
      .filter(({ changes }) => changes.length > 0)
      .map(({ day, changes }) => [day, correctedInWords(changes, review)]),
  );

const supervised = (review: ReviewProps['review']): LinesByDay =>
  linesByDay(
    review.supervised.map(({ day, name, did }) => [
      day,
      say(did === 'supervised' ? 'supervised.line' : 'corrected.line-by', { name }),
    ]),
  );

export const chartNames = ({ review, choice, clock }: ReviewProps): ChartNames => ({
  signers: new Map(
    review.prescriptions.flatMap((row) =>
      row.itemId === choice.version?.itemId && row.signedName ? [[row.version, row.signedName] as const] : [],
    ),
  ),
  answers: new Map(
    [...review.responses].reverse().map((row) => [row.decisionId, responseInWords(row, clock)] as const),
  ),
  treatments: review.treatments,
  supervised: supervised(review),
  corrections: corrections(review),
});
