/** What several answers leave of today together: the most cautious, by joint or of all. */
import type { Joint } from '../exercises/joints.ts';
import { type Today, todays } from './answers.ts';
import type { PainLookup } from './pain-lookup.ts';

/** What is left of what loads a joint; "none" speaks of the whole day. */
export interface LeftOfJoint {
  readonly joint: Joint;
  readonly today: Today;
}

export const mostCautiousToday = (all: readonly Today[]): Today =>
  todays.find((today) => all.includes(today)) ?? 'as-planned';

export const leftOfExercise = (left: readonly LeftOfJoint[], joints: readonly Joint[]): Today =>
  mostCautiousToday(
    left.filter(({ joint, today }) => today === 'none' || joints.includes(joint)).map(({ today }) => today),
  );

/** Nothing is done of it. */
export const isRest = (today: Today): boolean => today === 'none' || today === 'rest-this-joint';

/** Of an exercise of the day: it stands on it, and is not at rest. */
export const isDoable = ({ planned, today }: { readonly planned: boolean; readonly today: Today }): boolean =>
  planned && !isRest(today);

/** What each joint's answer to "pain now" leaves, by its table; an answer left open or not known is read as unknown. */
export const leftByPain = (
  lookups: readonly PainLookup[],
  painOf: (joint: Joint) => number | 'unknown' | null | undefined,
): readonly LeftOfJoint[] =>
  lookups.map(({ joint, byPain, whenUnknown }) => {
    const pain = painOf(joint);
    return { joint, today: typeof pain === 'number' ? (byPain[pain] ?? whenUnknown) : whenUnknown };
  });
