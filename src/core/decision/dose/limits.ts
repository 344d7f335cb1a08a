/**
 * Limits a clinician entered for a joint. They bound every dose and proposal. One whose last day has
 * passed still binds and asks again: an expiry opens nothing. Lifting it opens, and so does a later
 * entry of kind "none" for those before it. What a phase binds ends with the phase alone.
 */

import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Limit } from '#core/record/limit.ts';
import { type Day, dayNumber } from '#core/time/day.ts';
import { milligrams } from '#core/units/units.ts';
import { prescribedLoadKg } from './volume.ts';

export interface LimitInForce extends Limit {
  readonly isExpired: boolean;
}

export const limitsInForce = <L extends Limit>(
  limits: readonly L[],
  joints: readonly Joint[],
  day: number,
): readonly (L & LimitInForce)[] => {
  const isLifted = (limit: Limit): boolean => !!limit.liftedOn && dayNumber(limit.liftedOn) <= day;
  const begun = limits.filter(
    (limit) => joints.includes(limit.joint) && dayNumber(limit.from) <= day && !isLifted(limit),
  );
  const liftedFrom = (joint: Joint): number =>
    Math.max(
      Number.NEGATIVE_INFINITY,
      ...begun
        .filter((limit) => limit.kind === 'none' && limit.joint === joint)
        .map((limit) => dayNumber(limit.from)),
    );
  return begun
    .filter(
      (limit) => limit.kind !== 'none' && (limit.ofPhase || dayNumber(limit.from) >= liftedFrom(limit.joint)),
    )
    .map((limit) => ({ ...limit, isExpired: limit.to !== null && dayNumber(limit.to) < day }));
};

/**
 * Limits of one record for use beside those of another: each with the day on which an entry of kind "none" ended it,
 * and without such entries, so that they end nothing but what stands on their own record.
 */
export const endedByOwn = (limits: readonly Limit[]): readonly Limit[] => {
  const ends = limits.filter(({ kind, liftedOn }) => kind === 'none' && !liftedOn);
  return limits.flatMap((limit) => {
    if (limit.kind === 'none') return [];
    const later = ends.filter(({ joint, from }) => joint === limit.joint && from > limit.from);
    const days = [limit.liftedOn, ...(limit.ofPhase ? [] : later.map(({ from }) => from))];
    return [{ ...limit, liftedOn: days.filter((day) => !!day).sort()[0] ?? null }];
  });
};

/** Day of the next limit that begins after today; a plan made today does not know it yet. null where none is entered. */
export const nextLimitFrom = (limits: readonly Limit[], today: Day): Day | null =>
  limits
    .filter(({ kind, from, liftedOn }) => kind !== 'none' && from > today && !(liftedOn && liftedOn <= from))
    .map(({ from }) => from)
    .sort()[0] ?? null;

export const loadCeilingKg = (limits: readonly LimitInForce[]): number =>
  Math.min(
    Number.POSITIVE_INFINITY,
    ...limits.flatMap((limit) =>
      limit.kind === 'load-limit' && limit.limitKg !== null ? [limit.limitKg] : [],
    ),
  );

/** A load against the ceiling, to the milligram. */
export const isOverCeiling = (loadKg: number, limitKg: number): boolean =>
  milligrams(loadKg) > milligrams(limitKg);

/** Loads that may be handled under a ceiling. */
export const loadsWithin = (loadsKg: readonly number[], limitKg: number): readonly number[] =>
  loadsKg.filter((kg) => !isOverCeiling(kg, limitKg));

/** A harder variation may bear more weight or go further than such a limit allows; the model cannot tell. */
export const forbidsHarderVariation = (limits: readonly LimitInForce[]): boolean =>
  limits.some((limit) => limit.kind !== 'methods' && (limit.kind !== 'load-limit' || limit.limitKg === null));

/** The dose within the ceiling, on a load of the place where it is done; null where no such load exists. */
export const withinLoadLimit = (dose: Dose, limitKg: number, loadsKg: readonly number[]): Dose | null => {
  if (!isOverCeiling(prescribedLoadKg(dose), limitKg)) return dose;
  const fitting = loadsWithin(loadsKg, limitKg);
  if (dose.method === 'variation') return { ...dose, addedKg: Math.max(0, ...fitting) };
  return fitting.length === 0 ? null : { ...dose, loadKg: Math.max(...fitting) };
};
