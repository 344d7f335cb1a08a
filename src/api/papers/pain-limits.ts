/** The acceptable pain limit of each followed joint as the rules read it today; null = none is set. */
import { painLookup } from '#core/decision/pain-lookup.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Access } from '#data/access.ts';
import type { Patient } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';

export interface JointPainLimit {
  readonly joint: Joint;
  readonly acceptablePainLimit: number | null;
}

export const painLimitsOf = async (
  access: Access,
  { id, profile }: Patient,
): Promise<readonly JointPainLimit[]> => {
  const record = await recordOf(access, id);
  const at = { instant: access.now, day: access.day };
  return (profile?.followedJoints ?? []).map((joint) => ({
    joint,
    acceptablePainLimit: record ? (painLookup(record, joint, at).acceptablePainLimit ?? null) : null,
  }));
};
