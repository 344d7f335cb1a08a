/** Patients of the clinic who look like somebody about to be added. */
import { eq } from 'drizzle-orm';
import { type Known, type SameSign, sameSigns } from '#core/record/same-person.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { digestOfIds, noteRead } from '../audit/audit.ts';
import { patientIdentity } from '../schema/schema.ts';
import { closedToMe } from './care-team.ts';
import { shownInstead } from './merges.ts';

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
  // A record that is marked merged leads to the one shown.
  const shown = await shownInstead(access);
  const signs = new Map<string, Set<SameSign>>();
  for (const one of known)
    for (const sign of sameSigns(row, one)) {
      const patientId = shown.get(one.patientId) ?? one.patientId;
      signs.set(patientId, (signs.get(patientId) ?? new Set()).add(sign));
    }
  if (signs.size === 0) return [];
  const ids = [...signs.keys()];
  noteRead(access, { subject: 'same-patients', detail: { count: ids.length, ids: digestOfIds(ids) } });
  const closed = await closedToMe(access);
  return known
    .filter(({ patientId }) => signs.has(patientId))
    .map(({ patientId, givenName, familyName, birthDay }) => ({
      patientId,
      person: closed.has(patientId) ? null : { givenName, familyName, birthDay },
      signs: closed.has(patientId) ? [] : [...signs.get(patientId)!],
    }));
};
