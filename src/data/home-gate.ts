/** Watched occlusion sessions and checks of what a patient can do with a cuff alone. */
import { asc } from 'drizzle-orm';
import type { HomeCheck, HomeFacts, SupervisedSession } from '#core/care/home-gate.ts';
import type { Access } from './access.ts';
import { appendAudit } from './audit.ts';
import { writtenNow } from './episodes.ts';
import { homeCheck, observedSession } from './schema/care.ts';
import { ofPatient, patientQuery } from './store/prepared.ts';

const observedSessionRows = patientQuery((db) =>
  db
    .select()
    .from(observedSession)
    .where(ofPatient(observedSession))
    .orderBy(asc(observedSession.day), asc(observedSession.recordedAt)),
);

const homeCheckRows = patientQuery((db) =>
  db.select().from(homeCheck).where(ofPatient(homeCheck)).orderBy(asc(homeCheck.recordedAt)),
);

export const homeFactsOf = async (access: Access, patientId: string): Promise<HomeFacts> => {
  const observed = await observedSessionRows(access, patientId);
  const checks = await homeCheckRows(access, patientId);
  return {
    observed: observed.map(({ limb, side, day, watchedWhole, recordedAt, byName }) => ({
      limb,
      side,
      day,
      watchedWhole,
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
  row: Pick<SupervisedSession, 'limb' | 'side' | 'day' | 'watchedWhole'> & {
    readonly remoteReason: string | null;
    readonly remark: string | null;
  },
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(observedSession).values({ ...now, ...row });
    await appendAudit(tx, access, {
      act: 'write',
      subject: 'observed-session',
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
    await appendAudit(tx, access, {
      act: 'write',
      subject: 'home-check',
      subjectId: now.id,
      patientId,
      detail: { limb: row.limb, side: row.side, wrapOpened: row.wrapOpened },
    });
    return now.id;
  });
