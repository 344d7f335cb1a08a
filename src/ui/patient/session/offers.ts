/**
 * What the answers to "pain now" leave of each exercise, read from the tables that came with the day:
 * the phone carries no rules. An answer that was left open or not known is read as unknown.
 */
import { type Today, todays } from '#core/decision/answers.ts';
import type { ItemDraft, SessionDraft } from './draft.ts';
import { scoreKey } from './draft.ts';

const mostCautious = (all: readonly Today[]): Today =>
  todays.find((today) => all.includes(today)) ?? 'as-planned';

/** What each joint's answer leaves, by its table. */
const leftByJoint = (draft: SessionDraft): ReadonlyMap<string, Today> =>
  new Map(
    draft.painLookups.map(({ joint, byPain, whenUnknown }) => {
      const score = draft.scores[scoreKey('before', joint)];
      return [joint, typeof score === 'number' ? (byPain[score] ?? whenUnknown) : whenUnknown];
    }),
  );

const leftOf = (item: ItemDraft, byJoint: ReadonlyMap<string, Today>): Today =>
  mostCautious(
    [...byJoint].flatMap(([joint, today]) =>
      // "None" speaks of the whole day, anything else of the exercises that load the joint.
      today === 'none' || (item.joints as readonly string[]).includes(joint) ? [today] : [],
    ),
  );

const withLeft = (item: ItemDraft, today: Today): ItemDraft => {
  const leftOut =
    today === 'none' || today === 'rest-this-joint'
      ? 'offer'
      : item.leftOut === 'offer'
        ? null
        : item.leftOut;
  return today === 'bad-day'
    ? { ...item, leftOut, dose: item.badDay, isEasierSession: true }
    : { ...item, leftOut, ...item.planned };
};

const isUnfinished = ({ sets, dose, leftAt, leftOut }: ItemDraft): boolean =>
  leftOut === 'offer' || (leftAt === null && (sets.length < dose.sets || sets.at(-1)?.finishedAt === null));

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
  const byJoint = leftByJoint(draft);
  return {
    ...draft,
    items: draft.items.map((item) =>
      item.sets.length === 0 && item.restrictions.length === 0
        ? withLeft(item, leftOf(item, byJoint))
        : draft.backTo
          ? withBegun(item, leftOf(item, byJoint))
          : item,
    ),
  };
};
