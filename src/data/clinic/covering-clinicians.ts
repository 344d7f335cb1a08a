/** Who takes over danger nobody has acknowledged, and who looks after a pause until when. */
import { randomUUID } from 'node:crypto';
import { and, desc, eq, isNull } from 'drizzle-orm';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed, clinicChanged } from '../changed.ts';
import { ofClinic, ofPatient, patientQuery, prepared } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { authUser, coveringClinician, pauseOwner } from '../schema/schema.ts';

export interface CoveringClinician {
  readonly id: string;
  readonly name: string;
}

export const newestCoveringClinician = prepared((db) =>
  db
    .select()
    .from(coveringClinician)
    .where(ofClinic(coveringClinician))
    .orderBy(desc(coveringClinician.recordedAt), desc(coveringClinician.id))
    .limit(1),
);

export const coveringClinicianOf = async (
  access: Pick<Access, 'store' | 'clinicId'>,
): Promise<CoveringClinician | null> => {
  const [row] = await newestCoveringClinician(access.store.read, { clinicId: access.clinicId });
  return row?.userId && row.userName ? { id: row.userId, name: row.userName } : null;
};

/** Clinicians of the clinic who may be asked to stand in. */
export const cliniciansOf = (access: Access): Promise<readonly CoveringClinician[]> =>
  Promise.resolve(
    access.store.read
      .select({ id: authUser.id, name: authUser.name })
      .from(authUser)
      .where(
        and(
          eq(authUser.clinicId, access.clinicId),
          eq(authUser.role, 'clinician'),
          isNull(authUser.deactivatedAt),
        ),
      )
      .orderBy(authUser.name),
  );

/** Names a clinician of the clinic, or nobody; false when there is no such clinician. */
export const nameCoveringClinician = (access: Access, userId: string | null): Promise<boolean> =>
  access.store.write(async (tx) => {
    const found = (await cliniciansOf(access)).find((one) => one.id === userId);
    if (userId !== null && !found) return false;
    const id = randomUUID();
    await tx.insert(coveringClinician).values({
      id,
      clinicId: access.clinicId,
      userId: found?.id ?? null,
      userName: found?.name ?? null,
      recordedAt: access.now,
      recordedBy: access.actorId,
    });
    // Every danger that waits is given to somebody else now.
    clinicChanged(access);
    await auditWrite(tx, access, 'covering-clinician', { subjectId: id });
    return true;
  });

export interface PauseOwner {
  readonly decisionId: string;
  readonly ownerName: string;
  readonly until: Day;
  readonly remark: string | null;
  readonly recordedAt: number;
}

const pauseOwnerRows = patientQuery((db) =>
  db.select().from(pauseOwner).where(ofPatient(pauseOwner)).orderBy(desc(pauseOwner.recordedAt)),
);

/** Newest first. */
export const pauseOwnersOf = async (access: Access, patientId: string): Promise<readonly PauseOwner[]> => {
  const rows = await pauseOwnerRows(access, patientId);
  return rows.map(({ decisionId, ownerName, until, remark, recordedAt }) => ({
    decisionId,
    ownerName,
    until,
    remark,
    recordedAt,
  }));
};

/** The caller, or a named colleague, looks after a pause until a day. */
export const ownPause = (
  access: Access,
  patientId: string,
  row: {
    readonly decisionId: string;
    readonly until: Day;
    readonly remark: string | null;
    readonly owner: CoveringClinician;
  },
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    const { owner, ...rest } = row;
    await tx.insert(pauseOwner).values({ ...now, ...rest, ownerId: owner.id, ownerName: owner.name });
    changed(access, patientId);
    await auditWrite(tx, access, 'pause-owner', {
      subjectId: now.id,
      patientId,
      detail: { decisionId: row.decisionId, ownerId: owner.id },
    });
    return now.id;
  });
