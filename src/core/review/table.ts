/** The rows of the series as text, for the table that can be read, copied and printed. */
import { type JointQuestion, morningQuestions, type QuestionId } from '../record/morning-questions.ts';
import type { Answered, MorningAnswers, SessionPain } from './joint-answers.ts';
import { type LoadMeasure, measureInFull, type SessionLoad } from './load-of-session.ts';
import { figure, shareInWords, swellingInWords } from './plain-words.ts';
import type { ReviewRow, ReviewSeries } from './series.ts';

export interface ReviewTableRow extends Readonly<Record<QuestionId, string>> {
  readonly day: string;
  readonly session: string;
  readonly load: string;
  readonly version: string;
  readonly before: string;
  readonly during: string;
  readonly after: string;
  readonly twoHours: string;
  readonly decision: string;
}

const kindWords = { full: 'full', 'bad-day': 'easier', test: 'test' } as const;

const answerText = (value: Answered | boolean | string): string =>
  value === 'not-asked' ? 'not asked' : typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);

/** Without its unit, which stands at the head of the column. */
const loadText = ({ value }: SessionLoad, measure: LoadMeasure): string =>
  value === null ? 'not known' : measure === 'dose' ? shareInWords(value) : figure(value);

const several = <T>(values: readonly T[], text: (value: T) => string): string => values.map(text).join('; ');

const painTexts = (pains: readonly SessionPain[]) => ({
  before: several(pains, (pain) => answerText(pain.before)),
  during: several(pains, (pain) => answerText(pain.during)),
  after: several(pains, (pain) => answerText(pain.after)),
  twoHours: several(pains, (pain) => answerText(pain.twoHours)),
});

export const swellingText = (morning: MorningAnswers | null | undefined): string => {
  if (!morning) return '';
  const { swelling, swellingQuestion } = morning;
  if (swelling === 'not-asked') return 'not asked';
  return swelling === 'missing' ? swelling : swellingInWords(swelling, swellingQuestion);
};

/** An answer out of a choice in the clinic's words; swelling in those of the question that was asked. */
const morningText = ({ id, answer, words }: JointQuestion, morning: MorningAnswers): string => {
  const value = morning[answer.name];
  return id === 'swelling' ? swellingText(morning) : (words?.[String(value)] ?? answerText(value));
};

const morningTexts = (morning: MorningAnswers | null) =>
  Object.fromEntries(
    morningQuestions.map((question) => [question.id, morning ? morningText(question, morning) : '']),
  ) as Readonly<Record<QuestionId, string>>;

const rowText = (
  { day, loads, pains, morning, decision }: ReviewRow,
  { measure }: ReviewSeries,
): ReviewTableRow => ({
  day,
  session: several(loads, (load) => kindWords[load.kind]) || (pains.length > 0 ? 'other exercises' : ''),
  load: several(loads, (load) => loadText(load, measure)),
  version: several(loads, (load) => (load.version === null ? 'not known' : String(load.version))),
  ...painTexts(pains),
  ...morningTexts(morning),
  decision: decision?.decision ?? '',
});

/** One line for each day on which something was done, answered, due or decided; newest first. */
export const reviewTable = (series: ReviewSeries): readonly ReviewTableRow[] =>
  [...series.rows].reverse().map((row) => rowText(row, series));

export const reviewColumns = (
  series: Pick<ReviewSeries, 'measure'>,
): readonly { readonly key: keyof ReviewTableRow; readonly title: string; readonly isNumber?: boolean }[] => [
  { key: 'day', title: 'Day' },
  { key: 'session', title: 'Session' },
  {
    key: 'load',
    title: measureInFull(series.measure),
    isNumber: true,
  },
  { key: 'version', title: 'Version', isNumber: true },
  { key: 'before', title: 'Pain before', isNumber: true },
  { key: 'during', title: 'during', isNumber: true },
  { key: 'after', title: 'after', isNumber: true },
  { key: 'twoHours', title: '2 hours', isNumber: true },
  ...morningQuestions.map(({ id, title, answer }) => ({
    key: id,
    title,
    isNumber: answer.kind === 'integer',
  })),
  { key: 'decision', title: 'Decision' },
];
