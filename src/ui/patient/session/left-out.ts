/** What of a session is left out: by its answers, by the patient, or because a joint hurt too much to go on. */
import type { Joint } from '#core/exercises/joints.ts';
import { type ItemDraft, type Score, type SessionDraft, scoreKey, setOf } from './draft.ts';

/** Something about the limb was not as usual, or not known, once the cuff was off. */
export const isLimbChanged = ({ signs = {}, limb }: ItemDraft): boolean =>
  (limb ?? 'usual') !== 'usual' ||
  Object.values(signs).some((answer) => answer === 'not-usual' || answer === 'unknown');

/** Something new, or another joint worse: both leave the cuff off and are looked at by the clinic. */
export const reportedNew = (draft: Pick<SessionDraft, 'news' | 'otherJointWorse'>): boolean =>
  (draft.news?.length ?? 0) > 0 || draft.otherJointWorse === true;

export interface Hurt {
  readonly joint: Joint;
  readonly score: number;
}

/** A number over what is allowed in the joint; without a limit, or without a number, nothing is known to be over. */
export const overLimit = (
  { painLookups }: Pick<SessionDraft, 'painLookups'>,
  joint: Joint,
  scores: readonly unknown[],
): readonly Hurt[] => {
  const limit = painLookups.find((lookup) => lookup.joint === joint)?.acceptablePainLimit;
  const highest = Math.max(...scores.filter((score) => typeof score === 'number'));
  return limit !== undefined && highest > limit ? [{ joint, score: highest }] : [];
};

/** Joints that hurt more than is allowed when a set was stopped for them. */
export const hurtAtSet = (draft: SessionDraft, item: ItemDraft, set: number): readonly Hurt[] => {
  const { hurt = {}, stopReason } = setOf(item, set);
  return stopReason === 'joint-pain'
    ? draft.joints.flatMap((joint) => overLimit(draft, joint, [hurt[joint]]))
    : [];
};

/** Joints that hurt more than is allowed, by the answers after the work. */
export const hurtAfter = (draft: SessionDraft): readonly Hurt[] =>
  draft.joints.flatMap((joint) => {
    const after = (['during', 'after'] as const).map((when) => draft.scores[scoreKey(when, joint)]);
    return overLimit(draft, joint, after);
  });

/** Joints a set was stopped for although they hurt no more than is allowed are gone on with. */
const isHurt = (draft: SessionDraft, { joints }: ItemDraft): boolean =>
  draft.items.some((item) =>
    item.sets.some((_, place) =>
      hurtAtSet(draft, item, place + 1).some(({ joint }) => joints.includes(joint)),
    ),
  );

/**
 * Anything new, or a limb that was not as usual after the cuff, leaves the cuff off today; a joint that hurt
 * too much leaves out what loads it. An exercise already begun, or a cuff that was on, stays.
 */
export const isOut = (draft: SessionDraft, item: ItemDraft): boolean =>
  item.sets.length === 0 &&
  item.restrictions.length === 0 &&
  (item.leftOut !== null ||
    isHurt(draft, item) ||
    (item.dose.method === 'occlusion' && (reportedNew(draft) || draft.items.some(isLimbChanged))));

/** Exercises of the session that load the joint and were not begun. */
export const leftFor = ({ items }: SessionDraft, joint: Joint): readonly ItemDraft[] =>
  items.filter((item) => item.sets.length === 0 && item.joints.includes(joint));

/** The highest of what was said of a joint at the sets it stopped. */
export const highestHurt = ({ items }: SessionDraft, joint: Joint): Score | undefined => {
  const said = items.flatMap(({ sets }) => sets.flatMap(({ hurt }) => hurt?.[joint] ?? []));
  const numbers = said.filter((score) => typeof score === 'number');
  return numbers.length > 0 ? Math.max(...numbers) : said[0];
};
