/**
 * Which limb was operated on or injured, as the protocols of a patient say. Where both limbs of a pair were, none is
 * named: that one of them is the sound one is for nobody but a clinician to say.
 */
import { exerciseById } from '#core/exercises/catalogue.ts';
import { type Joint, type Limb, limbOfJoint, type Side, sideOf } from '#core/exercises/joints.ts';
import type { Day } from '#core/time/day.ts';
import type { Measurement } from '../measurements/measurement.ts';

export interface Operation {
  readonly joint: Joint;
  readonly procedure: string;
  /** Day of the operation or injury. */
  readonly on: Day;
}

export interface OperatedSide {
  readonly side: Side;
  readonly procedure: string;
  readonly on: Day;
}

/** The limb a measurement is of; null where it does not say. */
const limbMeasured = (row: Measurement): Limb | null => {
  if ('joint' in row && row.joint) return limbOfJoint(row.joint);
  if ('limb' in row && row.limb) return row.limb;
  const limb = 'exerciseId' in row ? exerciseById(row.exerciseId)?.limb : undefined;
  return limb === 'arm' || limb === 'leg' ? limb : null;
};

/** The newest operation on that limb. */
export const operatedSide = (row: Measurement, operations: readonly Operation[]): OperatedSide | null => {
  const limb = limbMeasured(row);
  if (limb === null) return null;
  const found = operations
    .filter(({ joint }) => limbOfJoint(joint) === limb)
    .flatMap(({ joint, procedure, on }) => {
      const side = sideOf(joint);
      return side === null ? [] : [{ side, procedure, on }];
    })
    .toSorted((a, b) => (a.on < b.on ? 1 : -1));
  return new Set(found.map(({ side }) => side)).size === 1 ? found[0]! : null;
};
