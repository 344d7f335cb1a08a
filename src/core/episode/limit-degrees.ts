/**
 * A limit on range that names degrees, against the range of an exercise. An exercise that goes beyond is
 * closed whole: nothing here shortens one. What the catalogue gives no degrees for stays the
 * clinician's to judge, and is never taken to lie inside.
 */

import type { Exercise, WorkedSide } from '../exercises/exercise.ts';
import { type Joint, jointNameOf, sideOf } from '../exercises/joints.ts';
import { movementRefusals } from '../exercises/movement-of-joint.ts';
import { type Arc, arcAs, arcInWords, type Movement, oppositeOf } from '../exercises/movements.ts';
import type { Refusal } from '../outcome.ts';
import type { Limit } from '../record/limit.ts';

/** What the limit allows; null where it names no degrees. */
export const allowedArc = ({ movement, fromDegrees, toDegrees }: Limit): Arc | null =>
  movement == null || fromDegrees == null || toDegrees == null ? null : { movement, fromDegrees, toDegrees };

/** ", 0° to 90° of flexion allowed"; nothing where none is named. */
const degreesAllowed = (limit: Limit): string => {
  const allowed = allowedArc(limit);
  return allowed ? `, ${arcInWords(allowed)} allowed` : '';
};

/** The ranges of an exercise are those of the worked limb; a standing leg that only holds has none. */
const isOfWorkedLimb = (limit: Limit, exercise: Exercise, side: WorkedSide): boolean => {
  const own = sideOf(limit.joint);
  return own === null || exercise.limbsAtOnce === 'both' || side === 'both' || own === side;
};

/** Behind the kind of a limit where it is listed: what it allows, graded or in degrees, as far as it says. */
export const boundInWords = (limit: Limit): string => {
  const { weightBearing, bearKg, withoutMethods } = limit;
  if (withoutMethods) return `, without ${withoutMethods.join(' and ').replaceAll('-', ' ')}`;
  if (!weightBearing) return degreesAllowed(limit);
  return bearKg ? `, ${weightBearing} to ${bearKg} kg` : `, ${weightBearing.replaceAll('-', ' ')}`;
};

/** Where the exercise takes the joint in the plane of the limit, told in the limit's own movement. */
const arcsOf = (limit: Limit, allowed: Arc, exercise: Exercise, side: WorkedSide): readonly Arc[] =>
  isOfWorkedLimb(limit, exercise, side)
    ? exercise.range
        .filter(({ joint }) => joint === jointNameOf(limit.joint))
        .map((range) => arcAs(allowed.movement, range))
        .filter((arc) => arc !== null)
    : [];

const asTaught = 'as usually taught (degrees from memory, to be confirmed by a licensed clinician)';

/** Why the exercise goes beyond the degrees a limit allows; null where it does not, or nobody knows. */
export const beyondDegrees = (limit: Limit, exercise: Exercise, side: WorkedSide): string | null => {
  const allowed = allowedArc(limit);
  if (limit.kind !== 'range' || allowed === null) return null;
  const beyond = arcsOf(limit, allowed, exercise, side).find(
    (arc) => arc.fromDegrees < allowed.fromDegrees || arc.toDegrees > allowed.toDegrees,
  );
  return beyond
    ? `The limit on range allows ${arcInWords(allowed)}; this exercise goes through ${arcInWords(beyond)}, ${asTaught}`
    : null;
};

/** Both figures, or that one is not known, for an exercise the limit leaves to the clinician's judgement. */
export const degreesToJudge = (limit: Limit, allowed: Arc, exercise: Exercise, side: WorkedSide): string => {
  const [arc] = arcsOf(limit, allowed, exercise, side);
  const known = arc
    ? `this exercise goes through ${arcInWords(arc)}, ${asTaught}`
    : 'for this movement of this joint the catalogue gives the exercise no degrees';
  return `Limit on range of movement: ${arcInWords(allowed)} allowed; ${known}; the clinician judges that it keeps within`;
};

const wrong = (field: string, reason: string): Refusal => ({
  field: `input.${field}`,
  code: 'inconsistent',
  reason,
});

interface Entered {
  readonly movement: Movement | null;
  readonly fromDegrees: number | null;
  readonly toDegrees: number | null;
}

/** A range as it is entered: movement, from and to come together or not at all, and fit the joint. */
export const rangeRefusals = (
  joint: Joint,
  { movement, fromDegrees: from, toDegrees: to }: Entered,
): readonly Refusal[] => {
  if (movement === null && from === null && to === null) return [];
  if (movement === null || from === null || to === null) {
    const reason = 'Enter the movement and both angles, from and to; or leave all three out.';
    return [wrong(movement === null ? 'movement' : 'fromDegrees', reason)];
  }
  const refused = movementRefusals(joint, movement);
  if (refused.length > 0) return refused;
  if (from > to) return [wrong('toDegrees', 'The range ends before it begins; check both angles.')];
  return from < 0 && oppositeOf(movement) === null
    ? [wrong('fromDegrees', 'This movement counts alike to both sides; start at 0 or more.')]
    : [];
};
