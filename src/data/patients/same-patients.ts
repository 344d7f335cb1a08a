/** Patients of the clinic who look like somebody about to be added. */
import { eq } from 'drizzle-orm';
import { type Known, type SameSign, sameSigns } from '#core/record/same-person.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { digestOfIds, noteRead } from '../audit/audit.ts';
import { patientIdentity } from '../schema/schema.ts';
import { closedToMe } from './care-team.ts';

export interface SamePatient {
  readonly patientId: string;
  /** null: kept to a care team the caller is not in, so nothing of the person is said. */
  readonly person: { readonly givenName: string; readonly familyName: string; readonly birthDay: Day } | null;
  readonly signs: readonly SameSign[];
}

export const samePatients = async (access: Access, row: Known): Promise<readonly SamePatient[]> => {
  const known = await access.store.read
    .select()
    .from(patientIdentity)
    .where(eq(patientIdentity.clinicId, access.clinicId));
  const alike = known
    .map((one) => ({ one, signs: sameSigns(row, one) }))
    .filter(({ signs }) => signs.length > 0);
  if (alike.length === 0) return [];
  const ids = alike.map(({ one }) => one.patientId);
  noteRead(access, { subject: 'same-patients', detail: { count: ids.length, ids: digestOfIds(ids) } });
  const closed = await closedToMe(access);
  return alike.map(({ one: { patientId, givenName, familyName, birthDay }, signs }) => ({
    patientId,
    person: closed.has(patientId) ? null : { givenName, familyName, birthDay },
    signs: closed.has(patientId) ? [] : signs,
  }));
};
