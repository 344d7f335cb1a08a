/** Who somebody is, where a page speaks of many. */
import { eq } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { patientIdentity } from '../schema/schema.ts';

/** Names by id, for a page that shows whose days or decisions it speaks of. */
export const namesOf = async (access: Access): Promise<ReadonlyMap<string, string>> => {
  const rows = await access.store.read
    .select({
      id: patientIdentity.patientId,
      givenName: patientIdentity.givenName,
      familyName: patientIdentity.familyName,
    })
    .from(patientIdentity)
    .where(eq(patientIdentity.clinicId, access.clinicId));
  return new Map(rows.map((row) => [row.id, `${row.familyName}, ${row.givenName}`]));
};
