/** Which prescription item and joint a summary speaks of: of those in force the one whose dose changed last. */
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord, PrescriptionVersion } from '#core/record/record.ts';

export interface InFocus {
  /** The version in force. */
  readonly version: PrescriptionVersion;
  /** The followed joint that it loads; the first it loads where it loads none of those. */
  readonly joint: Joint;
}

/** The newest signed version of each item, where it has not ended. */
const inForce = (versions: readonly PrescriptionVersion[]): readonly PrescriptionVersion[] => {
  const ordered = versions.toSorted((a, b) => a.version - b.version);
  return [...new Map(ordered.map((one) => [one.itemId, one])).values()].filter(
    ({ endedAt }) => endedAt === null,
  );
};

/** null = no dose is in force, or it loads no joint. */
export const inFocus = ({ prescriptions, followedJoints }: PatientRecord): InFocus | null => {
  const newest = inForce(prescriptions).toSorted((a, b) => b.signedAt - a.signedAt);
  const followedIn = ({ joints }: PrescriptionVersion): Joint | undefined =>
    followedJoints.find((joint) => joints.includes(joint));
  const version = newest.find((one) => followedIn(one) !== undefined) ?? newest[0];
  const joint = version && (followedIn(version) ?? version.joints[0]);
  return version && joint ? { version, joint } : null;
};
