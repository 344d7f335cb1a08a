/** Watched occlusion sessions and checks of what a patient can do with a cuff alone. */
import { asc } from 'drizzle-orm';
import { asCorrected } from '#core/corrections/correction.ts';
import type { HomeCheck, HomeFacts, SupervisedSession } from '#core/episode/home-eligibility.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { homeCheck, supervisedSession } from '../schema/care.ts';
import { writtenNow } from './episodes.ts';

const observedSessionRows = patientQuery((db) =>
  db
    .select()
    .from(supervisedSession)
    .where(ofPatient(supervisedSession))
    .orderBy(asc(supervisedSession.day), asc(supervisedSession.recordedAt)),
);

export const homeCheckRows = patientQuery((db) =>
  db.select().from(homeCheck).where(ofPatient(homeCheck)).orderBy(asc(homeCheck.recordedAt)),
);

/** Supervised sessions as recorded, oldest first, those entered in error as well. */
export const supervisedOnRecord = observedSessionRows;

export const homeFactsOf = async (access: Access, patientId: string): Promise<HomeFacts> => {
  const index = await correctionIndexFor(access, patientId);
  const observed = asCorrected(await supervisedOnRecord(access, patientId), index);
  const checks = await homeCheckRows(access, patientId);
  return {
    observed: observed.map(({ limb, side, day, supervisedThroughout, recordedAt, byName }) => ({
      limb,
      side,
      day,
      supervisedThroughout,
      recordedAt,
      by: byName,
    })),
    checks: checks.map(
      ({ id: _id, clinicId: _c, patientId: _p, recordedBy: _r, byName, reason: _why, ...row }) => ({
        ...row,
        by: byName,
      }),
    ),
  };
};

export const recordObservedSession = (
  access: Access,
  patientId: string,
  row: Pick<SupervisedSession, 'limb' | 'side' | 'day' | 'supervisedThroughout'> & {
    readonly remoteReason: string | null;
    readonly remark: string | null;
  },
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(supervisedSession).values({ ...now, ...row });
    await auditWrite(tx, access, 'supervised-session', {
      subjectId: now.id,
      patientId,
      detail: { limb: row.limb, side: row.side },
    });
    return now.id;
  });

export const recordHomeCheck = (
  access: Access,
  patientId: string,
  row: Omit<HomeCheck, 'day' | 'recordedAt' | 'by'> & { readonly reason: string | null },
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(homeCheck).values({ ...now, ...row, day: access.day });
    await auditWrite(tx, access, 'home-check', {
      subjectId: now.id,
      patientId,
      detail: { limb: row.limb, side: row.side, wrapOpened: row.wrapOpened },
    });
    return now.id;
  });
