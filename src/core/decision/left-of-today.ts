/** What several answers leave of today together: the most cautious, by joint or of all. */
import type { Joint } from '../exercises/joints.ts';
import { type Today, todays } from './answers.ts';

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
