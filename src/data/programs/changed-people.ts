/** People of a clinic for another program, with the instant anything of each was last written. */
import { and, asc, eq, gt, or, type SQL, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { audit, patientIdentity } from '../schema/schema.ts';

export interface ChangedPeopleQuery {
  /** Epoch milliseconds; null = everybody. */
  readonly since: number | null;
  /** Id of the last person of the page before. */
  readonly after: string | null;
  readonly limit: number;
}

/**
 * From the audit, in which every write of a record stands. Where its rows of a person were all moved to an archive it
 * is not known, and such a person is told whatever is asked.
 */
const changedAt = sql<number | null>`(
  SELECT max(${audit.at}) FROM ${audit}
  WHERE ${audit.patientId} = ${patientIdentity.patientId} AND ${audit.act} = 'write'
)`;

const isChanged = (since: number | null): SQL | undefined =>
  since === null ? undefined : or(sql`${changedAt} >= ${since}`, sql`${changedAt} IS NULL`);

export const changedPeople = (access: Access, { since, after, limit }: ChangedPeopleQuery) =>
  access.store.read
    .select({
      id: patientIdentity.patientId,
      givenName: patientIdentity.givenName,
      familyName: patientIdentity.familyName,
      birthDay: patientIdentity.birthDay,
      patientNumber: patientIdentity.patientNumber,
      changedAt,
    })
    .from(patientIdentity)
    .where(
      and(
        eq(patientIdentity.clinicId, access.clinicId),
        after === null ? undefined : gt(patientIdentity.patientId, after),
        isChanged(since),
      ),
    )
    .orderBy(asc(patientIdentity.patientId))
    .limit(limit);
