/**
 * What the answers to "pain now" leave of each exercise, read from the tables that came with the day:
 * the phone carries no rules. An answer that was left open or not known is read as unknown.
 */
import { type Today, todays } from '#core/engine/answers.ts';
import type { LineDraft, SessionDraft } from './draft.ts';
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

const leftOf = (line: LineDraft, byJoint: ReadonlyMap<string, Today>): Today =>
  mostCautious(
    [...byJoint].flatMap(([joint, today]) =>
      // "None" speaks of the whole day, anything else of the exercises that load the joint.
      today === 'none' || (line.joints as readonly string[]).includes(joint) ? [today] : [],
    ),
  );

const withLeft = (line: LineDraft, today: Today): LineDraft => {
  const leftOut =
    today === 'none' || today === 'rest-this-joint'
      ? 'offer'
      : line.leftOut === 'offer'
        ? null
        : line.leftOut;
  return today === 'bad-day'
    ? { ...line, leftOut, dose: line.badDay, isLighter: true }
    : { ...line, leftOut, ...line.planned };
};

/**
 * Only ever takes away from what the session began with; a corrected answer gives it back. An exercise
 * already begun is left as it is.
 */
export const withOffers = (draft: SessionDraft): SessionDraft => {
  const byJoint = leftByJoint(draft);
  return {
    ...draft,
    lines: draft.lines.map((line) =>
      line.sets.length > 0 || line.restrictions.length > 0 ? line : withLeft(line, leftOf(line, byJoint)),
    ),
  };
};
