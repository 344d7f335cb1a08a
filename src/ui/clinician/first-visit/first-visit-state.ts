/**
 * What is typed on the first-visit page, as flat text, so that the same words are the draft on the
 * server. Nothing is filled in that nobody has said; a number left out is not given, never zero.
 */

import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import {
  type Asking,
  answersFrom,
  type ItemState,
  type ScreeningFormState,
  stateFromAnswer,
  unanswered,
} from '#ui/clinician/screening/screening-form-state.ts';
import type { FirstVisitPage } from '../episode/answers.ts';

export type Typed = Readonly<Record<string, string>>;

const itemKey = (id: string): string => `item:${id}`;

export const stateOf = (typed: Typed, id: string): ItemState => {
  const text = typed[itemKey(id)];
  return text ? { ...unanswered, ...(JSON.parse(text) as Partial<ItemState>) } : unanswered;
};

export const withItem = (typed: Typed, id: string, state: ItemState): Typed => ({
  ...typed,
  [itemKey(id)]: JSON.stringify(state),
});

const screeningOf = (typed: Typed, items: readonly Asking[]): ScreeningFormState =>
  Object.fromEntries(items.map((item) => [item.id, stateOf(typed, item.id)]));

export const answered = (typed: Typed, items: readonly Asking[]): readonly ScreeningItemAnswer[] =>
  answersFrom(items, screeningOf(typed, items));

/** Said by the clinician in one act: all others were asked and answered no. */
export const restNo = (typed: Typed, items: readonly Asking[]): Typed =>
  items
    .filter((item) => stateOf(typed, item.id).answer === null)
    .reduce((known, item) => withItem(known, item.id, { ...unanswered, answer: 'no' }), typed);

/** What the patient answered at home stands in place of what nobody has answered here yet. */
export const fromHome = (
  typed: Typed,
  items: readonly Asking[],
  answers: readonly ScreeningItemAnswer[],
): Typed =>
  items.reduce((known, item) => {
    const answer = answers.find((one) => one.item === item.id);
    if (!answer || stateOf(known, item.id).answer !== null) return known;
    return withItem(known, item.id, stateFromAnswer(answer));
  }, typed);

/** What is on record stands in the fields at first; a draft stands above it. */
export const startFrom = ({ profile, draft }: FirstVisitPage): Typed => ({
  ...(profile
    ? {
        'profile.diagnosis': profile.diagnosis,
        'profile.inflammatoryArthritis': profile.inflammatoryArthritis ? 'yes' : 'no',
        'profile.followedJoints': profile.followedJoints[0] ?? '',
        'profile.ownedLoadsKg': profile.ownedLoadsKg.join(' '),
      }
    : {}),
  ...(draft?.typed ?? {}),
});
