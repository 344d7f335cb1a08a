/**
 * What the answers to "pain now" leave of each exercise, read from the tables that came with the day:
 * the phone carries no rules.
 */
import type { Today } from '#core/decision/answers.ts';
import { isRest, leftByPain, leftOfExercise } from '#core/decision/left-of-today.ts';
import { didWork, hasSetsLeft, type ItemDraft, type SessionDraft, scoreKey } from './draft.ts';

const withLeft = (item: ItemDraft, today: Today): ItemDraft => {
  const leftOut = isRest(today) ? 'offer' : item.leftOut === 'offer' ? null : item.leftOut;
  return today === 'bad-day'
    ? { ...item, leftOut, dose: item.badDay, isEasierSession: true }
    : { ...item, leftOut, ...item.planned };
};

const isBegun = (item: ItemDraft): boolean => item.sets.length > 0 || item.restrictions.length > 0;

const isUnfinished = (item: ItemDraft): boolean => item.leftOut === 'offer' || hasSetsLeft(item);

/** Asked again in the middle: an exercise that should be less by now ends with the sets that were done. */
const withBegun = (item: ItemDraft, today: Today): ItemDraft => {
  if (!isUnfinished(item)) return item;
  if (today !== 'as-planned') return { ...item, leftOut: 'offer', leftAt: item.leftAt ?? item.sets.length };
  return item.leftOut === 'offer' ? { ...item, leftOut: null, leftAt: null } : item;
};

/**
 * Only ever takes away from what the session began with; a corrected answer gives it back. An exercise
 * already begun is left as it is, unless pain is asked again after the session had been left.
 */
export const withOffers = (draft: SessionDraft): SessionDraft => {
  const byJoint = leftByPain(draft.painLookups, (joint) => draft.scores[scoreKey('before', joint)]);
  return {
    ...draft,
    items: draft.items.map((item) =>
      !isBegun(item)
        ? withLeft(item, leftOfExercise(byJoint, item.joints))
        : draft.backTo
          ? withBegun(item, leftOfExercise(byJoint, item.joints))
          : item,
    ),
  };
};

/** The lighter dose signed for days like this, for all that has not been begun. */
export const lighter = (draft: SessionDraft): SessionDraft => ({
  ...draft,
  kind: didWork(draft) ? draft.kind : 'bad-day',
  items: draft.items.map((item) => {
    if (isBegun(item) || item.planned.isEasierSession) return item;
    const planned = { dose: item.badDay, isEasierSession: true };
    return { ...item, ...planned, planned, beforeLighter: item.planned };
  }),
});

/** What today's answers left of the exercise stays left: only the patient's own choice is taken back. */
export const notLighter = (draft: SessionDraft): SessionDraft =>
  withOffers({
    ...draft,
    kind: didWork(draft) ? draft.kind : 'full',
    items: draft.items.map((item) => {
      const { beforeLighter, ...rest } = item;
      return beforeLighter && !isBegun(item) ? { ...rest, ...beforeLighter, planned: beforeLighter } : item;
    }),
  });
