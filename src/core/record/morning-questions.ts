/**
 * The questions of the morning check about a joint, each once: its answer as it is sent, recorded and stored,
 * its page, and its words for the clinic. Fields of the entry, columns of the file, steps and pages of the
 * phone, the form for answers on paper and the columns of a review come from these rows.
 */
import type { Field, InputOf } from '../calculations/describe.ts';
import type { Joint } from '../exercises/joints.ts';

/** Whether a question was asked at all; null in the answer beside it then means nothing. */
export const askedStates = ['asked', 'not-applicable'] as const;

export const score = <const N extends string>(name: N) =>
  ({ name, kind: 'integer', unit: '{score}', min: 0, max: 10, nullable: true }) as const;
export const state = <const N extends string>(name: N) =>
  ({ name, kind: 'enum', values: askedStates }) as const;

export const swellings = ['none', 'slight', 'clear', 'severe'] as const;
export type Swelling = (typeof swellings)[number];
/**
 * What the patient was asked about swelling. "more-than-usual": none, slight, clear and severe mean no more,
 * a little more, clearly more and far more swollen than usual. "absolute": how swollen it is, usual or not;
 * asked by earlier releases. Answers to the two are never compared with each other.
 */
const swellingQuestions = ['absolute', 'more-than-usual'] as const;
export type SwellingQuestion = (typeof swellingQuestions)[number];

/** The answer in the clinic's words. */
export const moreThanUsual = {
  none: 'no more than usual',
  slight: 'a little more than usual',
  clear: 'clearly more than usual',
  severe: 'far more than usual',
} as const;

interface MorningQuestion {
  /** Names the page, its sentence `morning.<id>` and the field of the clinic's form. */
  readonly id: string;
  /** null = asked and not answered. `optional` where an earlier release did not ask it; a state says so then. */
  readonly answer: Field & { readonly nullable: true };
  /** Says whether it was asked, where it is not asked on every joint or by every release. */
  readonly state?: Field;
  /** Says in which wording it was asked, where a release changed it. */
  readonly wording?: Field;
  /** What an entry of this release says beside the answer. */
  readonly sent?: Readonly<Record<string, string>>;
  /** What is stored where an entry says nothing of a field, as those of earlier releases. */
  readonly absent?: Readonly<Record<string, string | null>>;
  /** For the clinic: beside the field for an answer on paper, and over the column of a review. */
  readonly label: string;
  readonly title: string;
  /** An answer out of a choice, as the clinic reads it. */
  readonly words?: Readonly<Record<string, string>>;
}

/** In the order in which they are asked. The pain comes before the short way, the others may be part of it. */
const questions = [
  { id: 'pain', answer: score('pain'), label: 'Pain in the morning, 0 to 10', title: 'Morning pain' },
  {
    id: 'stiffness',
    answer: { name: 'stiffnessMinutes', kind: 'integer', unit: 'min', min: 0, max: 1440, nullable: true },
    state: state('stiffnessState'),
    label: 'Stiff for',
    title: 'Stiffness, min',
  },
  {
    id: 'swelling',
    answer: { name: 'swelling', kind: 'enum', values: swellings, nullable: true },
    state: state('swellingState'),
    wording: { name: 'swellingQuestion', kind: 'enum', values: swellingQuestions, optional: true },
    sent: { swellingQuestion: 'more-than-usual' },
    absent: { swellingQuestion: 'absolute' },
    label: 'More swollen than usual',
    title: 'Swelling',
    words: moreThanUsual,
  },
  { id: 'flare', answer: { name: 'flare', kind: 'flag', nullable: true }, label: 'Flare', title: 'Flare' },
] as const satisfies readonly MorningQuestion[];

export type Question = (typeof questions)[number];
export type QuestionId = Question['id'];
export type AnswerName = Question['answer']['name'];

type WordingField = Extract<Question, { readonly wording: Field }>['wording'];
export type AnswerField =
  | Question['answer']
  | Extract<Question, { readonly state: Field }>['state']
  | WordingField;

const isField = (field: AnswerField | undefined): field is AnswerField => field !== undefined;

export type JointQuestion = MorningQuestion & Pick<Question, 'id' | 'answer'>;

/** The same rows, read alike whichever parts each of them has. */
export const morningQuestions: readonly JointQuestion[] = questions;

/** Every field of a joint's answers, in the order in which they are sent and stored. */
export const answerFields: readonly AnswerField[] = morningQuestions
  .flatMap(
    ({ answer, state: asked, wording }) => [answer, asked, wording] as readonly (AnswerField | undefined)[],
  )
  .filter(isField);

type Given<F extends Field> = InputOf<readonly [F]>;
type RecordedOf<Q extends Question> = Q extends { readonly state: Field }
  ? { [N in keyof Given<Q['answer']>]: Given<Q['answer']>[N] | 'not-applicable' }
  : Given<Q['answer']>;
type Together<U> = (U extends unknown ? (one: U) => void : never) extends (all: infer A) => void ? A : never;
type Flat<T> = { readonly [N in keyof T]: T[N] };
type Absent = Together<Extract<Question, { readonly absent: object }>['absent']>;

/** What is stored of the fields that an entry leaves out. */
export const absentAnswers = Object.assign({}, ...morningQuestions.map(({ absent }) => absent)) as Absent;

/** A joint's answers as recorded; a wording that is absent is the one of `absent`. */
export type JointMorningAnswers = Flat<
  { readonly joint: Joint } & Together<RecordedOf<Question>> & InputOf<readonly WordingField[]>
>;
