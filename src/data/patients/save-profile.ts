/** A new version of what is known of the person for dosing; what is left out stays as it was. */
import { randomUUID } from 'node:crypto';
import { and, desc, eq } from 'drizzle-orm';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { careProfile } from '../schema/schema.ts';
import type { CareProfile } from './people.ts';

export const saveProfile = (access: Access, patientId: string, profile: CareProfile): Promise<number> =>
  access.store.write(async (tx) => {
    const [last] = await tx
      .select({
        version: careProfile.version,
        swellingNotAsked: careProfile.swellingNotAsked,
        asksFatigue: careProfile.asksFatigue,
        errorGroup: careProfile.errorGroup,
      })
      .from(careProfile)
      .where(and(eq(careProfile.clinicId, access.clinicId), eq(careProfile.patientId, patientId)))
      .orderBy(desc(careProfile.version))
      .limit(1);
    const version = (last?.version ?? 0) + 1;
    const id = randomUUID();
    const swellingNotAsked = profile.swellingNotAsked ?? last?.swellingNotAsked ?? [];
    const asksFatigue = profile.asksFatigue ?? last?.asksFatigue ?? false;
    const errorGroup = profile.errorGroup === undefined ? (last?.errorGroup ?? null) : profile.errorGroup;
    const row = {
      ...recordedFor(access, patientId),
      ...profile,
      id,
      version,
      swellingNotAsked,
      asksFatigue,
      errorGroup,
    };
    await tx.insert(careProfile).values(row);
    changed(access, patientId);
    await auditWrite(tx, access, 'care-profile', { subjectId: id, patientId, detail: { version } });
    return version;
  });
