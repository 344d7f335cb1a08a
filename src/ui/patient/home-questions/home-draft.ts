/** Answers to what the clinic asks now and then, one after the other, and the entry they become. Pure. */
import type { QuestionDue, QuestionsDue } from '#api/patient/today-view.ts';
import type { OwnAnswer } from '#core/assessment/questionnaires/questionnaire.ts';
import type { Carer } from '#core/record/entry-words.ts';
import { t } from '#ui/language/words.ts';
import type { HomeAnswersEntry } from '../outbox/entry-kinds.ts';
import { scoreText, yesNoText } from '../questions/answers-in-words.ts';

/** null: not answered yet. An answer that is null says "I don't know". */
type Slot = { readonly answer: OwnAnswer } | null;

export interface HomeDraft {
  readonly homeQuestionsId: string;
  readonly version: number | null;
  /** The questions as they were asked when it was begun. */
  readonly texts: readonly string[];
  readonly slots: readonly Slot[];
}

export const begun = ({ homeQuestionsId, version, questions }: QuestionsDue): HomeDraft => ({
  homeQuestionsId,
  version,
  texts: questions.map(({ text }) => text),
  slots: questions.map(() => null),
});

/** Whether what is kept on the phone answers these very questions. */
export const isOf = (draft: HomeDraft, due: QuestionsDue): boolean =>
  draft.homeQuestionsId === due.homeQuestionsId &&
  draft.version === due.version &&
  JSON.stringify(draft.texts) === JSON.stringify(due.questions.map(({ text }) => text));

export const answered = (draft: HomeDraft, place: number, answer: OwnAnswer): HomeDraft => ({
  ...draft,
  slots: draft.slots.map((slot, at) => (at === place ? { answer } : slot)),
});

/** Blanks alone are no answer in own words. */
const isAnswered = (slot: Slot | undefined): slot is { readonly answer: OwnAnswer } =>
  slot != null && !(typeof slot.answer === 'string' && slot.answer.trim() === '');

/** Place of the first question without an answer; null = all are answered. */
export const firstOpen = ({ slots }: HomeDraft): number | null => {
  const place = slots.findIndex((slot) => !isAnswered(slot));
  return place < 0 ? null : place;
};

/** After an answer: the question that follows, or the check once none is open. */
export const stepAfter = (draft: HomeDraft, place: number): string =>
  firstOpen(draft) === null ? 'check' : String(place + 1);

/** The question a step shows; null = the check. What is still open is asked before anything is checked. */
export const placeAt = (draft: HomeDraft, step: string): number | null => {
  const place = step === '' ? 0 : Number(step);
  return Number.isInteger(place) && place >= 0 && place < draft.slots.length ? place : firstOpen(draft);
};

export const questionText = (question: QuestionDue): string =>
  question.kind === 'activity' ? t('home-questions.activity', { activity: question.text }) : question.text;

export const answerText = ({ kind }: QuestionDue, slot: Slot | undefined): string => {
  if (!isAnswered(slot)) return t('ask.not-answered');
  const { answer } = slot;
  if (answer === null) return t('ask.unknown');
  if (kind === 'yes-no') return yesNoText(answer === true);
  return typeof answer === 'number' ? scoreText(answer) : String(answer).trim();
};

interface Sending {
  readonly entryId: string;
  readonly day: string;
  readonly enteredAs: Carer | null;
}

const trimmed = (answer: OwnAnswer): OwnAnswer => (typeof answer === 'string' ? answer.trim() : answer);

/** Only once all are answered: a question left open would be sent as one nobody knew. */
export const homeAnswersEntry = (
  { entryId, day, enteredAs }: Sending,
  { homeQuestionsId, version, texts, slots }: HomeDraft,
): HomeAnswersEntry => ({
  entryId,
  day,
  homeQuestionsId,
  version,
  answers: texts.map((question, place) => ({ question, answer: trimmed(slots[place]?.answer ?? null) })),
  ...(enteredAs ? { enteredAs } : {}),
  redFlags: null,
});
