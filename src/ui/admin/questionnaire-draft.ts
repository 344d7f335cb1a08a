/** A questionnaire as it is typed, and what it lacks before it can be sent. Pure. */
import {
  mostQuestions,
  type OwnQuestion,
  type Questionnaire,
} from '#core/assessment/questionnaires/questionnaire.ts';
import { say } from '#messages/en/staff/administration.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';

export interface TypedQuestion {
  readonly kind: OwnQuestion['kind'] | '';
  readonly text: string;
  readonly low: string;
  readonly high: string;
}

export interface TypedQuestionnaire {
  readonly title: string;
  readonly questions: readonly TypedQuestion[];
  readonly isPermitted: boolean;
}

const blank: TypedQuestion = { kind: '', text: '', low: '', high: '' };

/** The permission is asked for anew with each version. */
export const typedFrom = (before: Questionnaire | null): TypedQuestionnaire => ({
  title: before?.title ?? '',
  questions: before?.questions.map((one) => ({ ...one, low: one.low ?? '', high: one.high ?? '' })) ?? [
    blank,
  ],
  isPermitted: false,
});

export const withQuestion = (typed: TypedQuestionnaire): TypedQuestionnaire =>
  typed.questions.length >= mostQuestions ? typed : { ...typed, questions: [...typed.questions, blank] };

export const withoutQuestion = (typed: TypedQuestionnaire, place: number): TypedQuestionnaire => ({
  ...typed,
  questions: typed.questions.filter((_, at) => at !== place),
});

export const withTyped = (
  typed: TypedQuestionnaire,
  place: number,
  more: Partial<TypedQuestion>,
): TypedQuestionnaire => ({
  ...typed,
  questions: typed.questions.map((one, at) => (at === place ? { ...one, ...more } : one)),
});

/** Where a refusal of the server points to, and the id of its control. */
export const fieldAt = (place: number, name: keyof TypedQuestion): string => `questions[${place}].${name}`;

export const missingIn = ({ title, questions }: TypedQuestionnaire): readonly Problem[] => [
  ...(title.trim() === '' ? [{ field: 'title', text: say('questionnaire.no-title') }] : []),
  ...questions.flatMap(({ kind, text }, place) => [
    ...(text.trim() === ''
      ? [{ field: fieldAt(place, 'text'), text: say('questionnaire.no-text', { number: place + 1 }) }]
      : []),
    ...(kind === ''
      ? [{ field: fieldAt(place, 'kind'), text: say('questionnaire.no-kind', { number: place + 1 }) }]
      : []),
  ]),
];

const orNull = (text: string): string | null => text.trim() || null;

/** As the procedure takes it; ends are sent of a score alone. */
export const sentFrom = ({ title, questions, isPermitted }: TypedQuestionnaire) => ({
  title: title.trim(),
  isPermitted,
  questions: questions.map(({ kind, text, low, high }) => ({
    kind,
    text: text.trim(),
    low: kind === 'score' ? orNull(low) : null,
    high: kind === 'score' ? orNull(high) : null,
  })),
});
