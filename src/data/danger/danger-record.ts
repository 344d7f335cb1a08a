/** Danger as recorded of one patient, in the form the core reads. */
import { and, asc, sql } from 'drizzle-orm';
import { asCorrected } from '#core/corrections/correction.ts';
import type { ContactAttempt, DangerRecord } from '#core/danger/danger.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Access } from '../access.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { contactAttempt, pause, pauseResumption, warningSign, worklistItemAction } from '../schema/schema.ts';

export const signRows = patientQuery((db) =>
  db.select().from(warningSign).where(ofPatient(warningSign)).orderBy(asc(warningSign.recordedAt)),
);

export const acknowledgementRows = patientQuery((db) =>
  db
    .select({
      key: worklistItemAction.itemKey,
      at: worklistItemAction.doneAt,
      by: worklistItemAction.doneName,
    })
    .from(worklistItemAction)
    .where(
      and(
        ofPatient(worklistItemAction),
        sql`(${worklistItemAction.act} = 'acknowledge' OR (${worklistItemAction.act} = 'assign' AND ${worklistItemAction.assignee} = ${worklistItemAction.doneBy})) AND ${worklistItemAction.itemKey} LIKE 'sign %'`,
      ),
    )
    .orderBy(asc(worklistItemAction.doneAt)),
);

export const contactRows = patientQuery((db) =>
  db.select().from(contactAttempt).where(ofPatient(contactAttempt)).orderBy(asc(contactAttempt.recordedAt)),
);

export const pauseRows = patientQuery((db) =>
  db.select().from(pause).where(ofPatient(pause)).orderBy(asc(pause.recordedAt)),
);

export const resumptionRows = patientQuery((db) =>
  db
    .select()
    .from(pauseResumption)
    .where(ofPatient(pauseResumption))
    .orderBy(asc(pauseResumption.recordedAt)),
);

/** Oldest first, those entered in error among them. */
export const contactsOnRecord = async (
  access: Access,
  patientId: string,
): Promise<readonly ContactAttempt[]> =>
  (await contactRows(access, patientId)).map((row) => ({
    id: row.id,
    signIds: row.signIds,
    decisionIds: row.decisionIds,
    at: row.recordedAt,
    by: row.byName,
    reached: row.reached,
    found: row.found,
    advised: row.advised,
    referredTo: row.referredTo,
    nextAt: row.nextAt,
  }));

/** As corrected: a contact entered in error has reached nobody and ended nothing. */
export const contactsOf = async (access: Access, patientId: string): Promise<readonly ContactAttempt[]> =>
  asCorrected(await contactsOnRecord(access, patientId), await correctionIndexFor(access, patientId));

/** Whoever acknowledged a sign, or took it, has seen it; being given one by somebody else says nothing. */
export const dangerRecordOf = async (access: Access, patientId: string): Promise<DangerRecord> => {
  const signs = await signRows(access, patientId);
  const pauses = await pauseRows(access, patientId);
  const acknowledged = await acknowledgementRows(access, patientId);
  const contacts = await contactsOf(access, patientId);
  const resumed = await resumptionRows(access, patientId);
  return {
    signs: signs.map((row) => ({
      id: row.id,
      source: row.source,
      flags: row.flags,
      joint: row.joint as Joint | null,
      urgency: row.urgency,
      reportedAt: row.recordedAt,
      reportedBy: row.byName,
    })),
    acknowledgements: acknowledged.map(({ key, at, by }) => ({ signId: key.slice('sign '.length), at, by })),
    contacts,
    pauses: pauses.map((row) => ({
      id: row.id,
      cause: row.cause,
      signId: row.signId,
      joint: row.joint as Joint | null,
      reason: row.reason,
      until: row.until,
      at: row.recordedAt,
      by: row.byName,
    })),
    resumptions: resumed.map((row) => ({
      pauseId: row.pauseId,
      itemId: row.itemId,
      reason: row.reason,
      at: row.recordedAt,
      by: row.byName,
    })),
  };
};

/** Flags each entry told, by the id of its session or morning. */
export const flagsByEntry = async (
  access: Access,
  patientId: string,
): Promise<
  readonly { readonly entryId: string | null; readonly flags: readonly string[]; readonly at: number }[]
> =>
  (await signRows(access, patientId)).map(({ entryId, flags, recordedAt }) => ({
    entryId,
    flags,
    at: recordedAt,
  }));
