/** Limits on a joint, and steps approved ahead. */
import { randomUUID } from 'node:crypto';
import { and, asc, eq } from 'drizzle-orm';
import { type CorrectionIndex, type Counted, inForce } from '#core/corrections/correction.ts';
import type { PreApproval } from '#core/decision/dose/pre-approval.ts';
import { limitsOfProtocol } from '#core/episode/protocol/protocol.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Limit } from '#core/record/limit.ts';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { careLimit, careLimitLift, preApproval, preApprovalEnd } from '../schema/schema.ts';
import { protocolsOf } from './protocols.ts';

export type RecordedLimit = Limit & {
  readonly id: string;
  readonly recordedAt: number;
  readonly remark: string | null;
};

/** What a form can enter; a limit on methods, or one that is graded, belongs to a phase of a protocol. */
type EnteredLimit = Omit<Limit, 'kind' | 'weightBearing' | 'bearKg' | 'withoutMethods' | 'ofPhase'> & {
  readonly kind: Exclude<Limit['kind'], 'methods'>;
  readonly remark: string | null;
};

export const limitRows = patientQuery((db) =>
  db
    .select()
    .from(careLimit)
    .leftJoin(careLimitLift, eq(careLimitLift.limitId, careLimit.id))
    .where(ofPatient(careLimit))
    .orderBy(asc(careLimit.fromDay)),
);

type LimitRow = Awaited<ReturnType<typeof limitRows>>[number];

/** Limits from their rows; rows come with the lift of each. */
export const limitsFrom = (rows: readonly LimitRow[]): readonly RecordedLimit[] =>
  rows.map(({ care_limit: row, care_limit_lift: lift }) => ({
    id: row.id,
    recordedAt: row.recordedAt,
    joint: row.joint as Joint,
    kind: row.kind,
    limitKg: row.limitKg,
    movement: row.movement,
    fromDegrees: row.fromDegrees,
    toDegrees: row.toDegrees,
    from: row.fromDay,
    to: row.toDay,
    liftedOn: lift?.liftedOn ?? null,
    author: row.author,
    remark: row.remark,
  }));

/**
 * What binds now: of an entry and the one it corrects both, until the new plan was seen. One that ends
 * the limits before it ends nothing meanwhile, neither as the entry in error nor as the one in its place.
 */
export const limitsThatBind = (
  limits: readonly RecordedLimit[],
  index: CorrectionIndex,
): readonly Counted<RecordedLimit>[] =>
  inForce(limits, index).filter(({ id, kind }) => kind !== 'none' || !index.isUnseen(id));

/** All of them as recorded, those entered in error as well. */
export const limitsOnRecord = async (access: Access, patientId: string): Promise<readonly RecordedLimit[]> =>
  limitsFrom(await limitRows(access, patientId));

export const limitsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly Counted<RecordedLimit>[]> => [
  ...limitsThatBind(await limitsOnRecord(access, patientId), await correctionIndexFor(access, patientId)),
  ...(await protocolsOf(access, patientId)).flatMap(limitsOfProtocol),
];

export const addLimit = (access: Access, patientId: string, row: EnteredLimit): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    const { from, to, ...rest } = row;
    await tx.insert(careLimit).values({
      id,
      ...recordedFor(access, patientId),
      ...rest,
      fromDay: from,
      toDay: to,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'limit', {
      subjectId: id,
      patientId,
      detail: { joint: row.joint, kind: row.kind },
    });
    return id;
  });

export const liftLimit = (
  access: Access,
  patientId: string,
  limitId: string,
  reason: string,
): Promise<boolean> =>
  access.store.write(async (tx) => {
    const [row] = await tx
      .select({ id: careLimit.id })
      .from(careLimit)
      .where(
        and(
          eq(careLimit.clinicId, access.clinicId),
          eq(careLimit.patientId, patientId),
          eq(careLimit.id, limitId),
        ),
      );
    const [lifted] = await tx.select().from(careLimitLift).where(eq(careLimitLift.limitId, limitId));
    if (!row || lifted) return false;
    await tx.insert(careLimitLift).values({
      limitId,
      clinicId: access.clinicId,
      patientId,
      liftedOn: access.day,
      liftedAt: access.now,
      liftedBy: access.actorId,
      reason,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'limit-lift', { subjectId: limitId, patientId });
    return true;
  });

export const preApprovalRows = patientQuery((db) =>
  db
    .select()
    .from(preApproval)
    .leftJoin(preApprovalEnd, eq(preApprovalEnd.preApprovalId, preApproval.id))
    .where(ofPatient(preApproval))
    .orderBy(asc(preApproval.signedAt)),
);

/** Oldest first, withdrawn ones included. */
export const preApprovalsOf = async (access: Access, patientId: string): Promise<readonly PreApproval[]> => {
  const rows = await preApprovalRows(access, patientId);
  return rows.map(({ pre_approval: row, pre_approval_end: end }) => ({
    id: row.id,
    itemId: row.itemId,
    signedAt: row.signedAt,
    signedDay: row.signedDay,
    signedBy: row.signedName,
    steps: row.steps,
    days: row.days,
    withdrawnAt: end?.endedAt ?? null,
  }));
};

export const signPreApproval = (
  access: Access,
  patientId: string,
  itemId: string,
  steps: number,
  days: number,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(preApproval).values({
      id,
      clinicId: access.clinicId,
      patientId,
      itemId,
      steps,
      days,
      signedAt: access.now,
      signedDay: access.day,
      signedBy: access.actorId,
      signedName: access.actorName,
    });
    await auditWrite(tx, access, 'pre-approval', {
      subjectId: id,
      patientId,
      detail: { itemId, steps, days },
    });
    return id;
  });

export const withdrawPreApproval = (access: Access, patientId: string, id: string): Promise<boolean> =>
  access.store.write(async (tx) => {
    const known = (await preApprovalsOf(access, patientId)).find((row) => row.id === id);
    if (!known || known.withdrawnAt !== null) return false;
    await tx.insert(preApprovalEnd).values({
      preApprovalId: id,
      clinicId: access.clinicId,
      patientId,
      endedAt: access.now,
      endedBy: access.actorId,
    });
    await auditWrite(tx, access, 'pre-approval-end', { subjectId: id, patientId });
    return true;
  });
