/** What was found joint by joint in appointments at a distance, each part as it was last entered. */
import { asc } from 'drizzle-orm';
import { partsOfGuide } from '#core/episode/distance/guide.ts';
import type { Finding } from '#core/episode/distance/guide-fields.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { distanceFinding } from '../schema/notes.ts';
import { writtenAfter } from './episodes.ts';

const findingRows = patientQuery((db) =>
  db
    .select()
    .from(distanceFinding)
    .where(ofPatient(distanceFinding))
    .orderBy(asc(distanceFinding.recordedAt), asc(distanceFinding.id)),
);

export interface DistanceFinding extends Finding {
  readonly visitId: string;
  readonly joint: Joint;
  readonly byName: string;
  readonly recordedAt: number;
  /** Entered before under the same part, oldest first; they stay on record. */
  readonly before: readonly string[];
}

export const distanceFindingsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly DistanceFinding[]> => {
  const standing = new Map<string, DistanceFinding>();
  for (const { visitId, joint, part, by, found, byName, recordedAt } of await findingRows(
    access,
    patientId,
  )) {
    const key = [visitId, joint, part].join(' ');
    const earlier = standing.get(key);
    // All parts are sent together, so that most stay as they were.
    const isAnew = earlier !== undefined && (earlier.by !== by || earlier.found !== found);
    const before = [
      ...(earlier?.before ?? []),
      ...(isAnew ? [earlier.found ?? earlier.by.replace('-', ' ')] : []),
    ];
    standing.set(key, { visitId, joint: joint as Joint, part, by, found, byName, recordedAt, before });
  }
  // Parts of one joint are written together.
  return [...standing.values()].sort(
    (a, b) => a.recordedAt - b.recordedAt || partsOfGuide.indexOf(a.part) - partsOfGuide.indexOf(b.part),
  );
};

/** All parts of the joint or none. */
export const recordDistanceFindings = (
  access: Access,
  patientId: string,
  visitId: string,
  joint: Joint,
  findings: readonly Finding[],
): Promise<void> =>
  access.store.write(async (tx) => {
    const before = (await findingRows(access, patientId)).map(({ recordedAt }) => recordedAt);
    for (const finding of findings) {
      const now = writtenAfter(access, patientId, before);
      await tx.insert(distanceFinding).values({ ...now, visitId, joint, ...finding });
    }
    await auditWrite(tx, access, 'distance-findings', {
      subjectId: visitId,
      patientId,
      detail: { joint, parts: findings.length },
    });
  });
