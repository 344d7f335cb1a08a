/** Joints that are followed: how many at most, and which of them a session asks about. */
import type { Joint } from '../exercises/joints.ts';

/** Each is asked about every morning; more would be a questionnaire. A clinic choice of ours, no source fixes it. */
export const mostFollowedJoints = 6;

/** So many are asked about in every session, loaded by it or not. */
const allAsked = 2;

/**
 * Of one or two joints every one is asked about; of more, those that the exercises in force load, and where they
 * load none, the first two. A joint that is left out has no answer in the session: it is never "no pain".
 */
export const askedInSession = (
  followed: readonly Joint[],
  exercises: readonly { readonly joints: readonly Joint[] }[],
): readonly Joint[] => {
  if (followed.length <= allAsked) return followed;
  const loaded = new Set(exercises.flatMap(({ joints }) => joints));
  const asked = followed.filter((joint) => loaded.has(joint));
  return asked.length > 0 ? asked : followed.slice(0, allAsked);
};

interface JointsOfLimit {
  readonly limit: number;
  readonly joints: readonly Joint[];
}

/** Followed joints by their acceptable pain limit, in the order they come: what holds for several is said once. */
export const jointsByPainLimit = (
  limits: readonly { readonly joint: Joint; readonly limit: number }[],
): readonly JointsOfLimit[] =>
  [...new Set(limits.map(({ limit }) => limit))].map((limit) => ({
    limit,
    joints: limits.filter((one) => one.limit === limit).map(({ joint }) => joint),
  }));
