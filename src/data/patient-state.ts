/** What the worklist knows of one patient, read through that patient's indexes. */
import { and, asc, desc, eq, inArray, max, min, notExists, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import { exerciseById } from '#core/catalogue/catalogue.ts';
import type { Day } from '#core/day.ts';
import type { Joint } from '#core/joints.ts';
import type { PatientState, StandingDecision, StandingProposal } from '#core/worklist/matter.ts';
import type { Access } from './access.ts';
import { careStateOf } from './care-state.ts';
import { clinicOf } from './people.ts';
import {
  baseline,
  decision,
  decisionResponse,
  entryConflict,
  morning,
  prescription,
  prescriptionEnd,
  proposal,
  screening,
  signature,
  trainingSession,
} from './schema/schema.ts';
import { toldNewOf } from './told-new.ts';
import { prescriptionState } from './worklist-prescriptions.ts';

type Responses = ReadonlyMap<string, Pick<typeof decisionResponse.$inferSelect, 'kind' | 'until'>>;

/** The newest answer to each decision. */
export const newestResponses = (rows: readonly (typeof decisionResponse.$inferSelect)[]): Responses =>
  new Map([...rows].sort((a, b) => a.answeredAt - b.answeredAt).map((row) => [row.decisionId, row]));

export const settledBy = (responses: Responses, decisionId: string): StandingDecision['settled'] => {
  const response = responses.get(decisionId);
  if (!response) return null;
  return response.kind === 'override' && response.until ? response.until : 'for-good';
};

const responsesOf = async (access: Access, patientId: string): Promise<Responses> =>
  newestResponses(
    await access.store.read
      .select()
      .from(decisionResponse)
      .where(and(eq(decisionResponse.clinicId, access.clinicId), eq(decisionResponse.patientId, patientId))),
  );

type DecisionRow = Pick<
  typeof decision.$inferSelect,
  'id' | 'joint' | 'decision' | 'contact' | 'evaluatedAt' | 'reasons'
>;

const isOpenPause = (row: DecisionRow, responses: Responses): boolean =>
  row.decision === 'pause' && responses.get(row.id)?.kind !== 'override';

/**
 * The decision that speaks for each joint: its newest, or the newest pause that nobody has overruled,
 * which later good answers do not lift. A pause that was accepted has been seen; the newest then speaks.
 */
export const speaking = (rows: readonly DecisionRow[], responses: Responses): readonly StandingDecision[] => {
  const byJoint = new Map<string, DecisionRow>();
  for (const row of [...rows].sort((a, b) => a.evaluatedAt - b.evaluatedAt || (a.id < b.id ? -1 : 1))) {
    const known = byJoint.get(row.joint);
    const holds = known && isOpenPause(known, responses) && !responses.has(known.id);
    if (!holds || row.decision === 'pause') byJoint.set(row.joint, row);
  }
  return [...byJoint.values()].map(({ id, joint, contact, evaluatedAt, reasons, ...row }) => ({
    id,
    joint: joint as Joint,
    decision: row.decision,
    contact,
    evaluatedAt,
    reasons,
    settled: settledBy(responses, id),
  }));
};

const decisionsOf = async (
  access: Access,
  patientId: string,
  responses: Responses,
): Promise<readonly StandingDecision[]> => {
  const { read } = access.store;
  const mine = and(eq(decision.clinicId, access.clinicId), eq(decision.patientId, patientId));
  const newest = await read
    .select({ joint: decision.joint, at: max(decision.evaluatedAt) })
    .from(decision)
    .where(mine)
    .groupBy(decision.joint);
  const rows = [
    ...(await read
      .select()
      .from(decision)
      .where(and(mine, eq(decision.decision, 'pause')))),
  ];
  for (const { joint, at } of newest) {
    const [row] = await read
      .select()
      .from(decision)
      .where(and(mine, eq(decision.joint, joint), eq(decision.evaluatedAt, at ?? 0)))
      .orderBy(desc(decision.id))
      .limit(1);
    if (row && !rows.some((one) => one.id === row.id)) rows.push(row);
  }
  return speaking(rows, responses);
};

const proposalsOf = async (
  access: Access,
  patientId: string,
  responses: Responses,
): Promise<readonly StandingProposal[]> => {
  const rows = await access.store.read
    .select()
    .from(proposal)
    .where(and(eq(proposal.clinicId, access.clinicId), eq(proposal.patientId, patientId)))
    .orderBy(asc(proposal.madeAt), asc(proposal.id));
  const newest = new Map(rows.map((row) => [row.lineId, row]));
  return [...newest.values()].map((row) => ({
    lineId: row.lineId,
    exercise: exerciseById(row.dose.exerciseId)?.title ?? row.dose.exerciseId,
    decisionId: row.decisionId,
    madeAt: row.madeAt,
    worklist: row.worklist,
    answered: responses.has(row.decisionId),
  }));
};

const prescriptionsOf = (access: Access, patientId: string) =>
  access.store.read
    .select({
      patientId: prescription.patientId,
      lineId: prescription.lineId,
      version: prescription.version,
      recordedAt: prescription.recordedAt,
      signedAt: signature.signedAt,
      endedAt: prescriptionEnd.endedAt,
      measuredOn: sql<string | null>`json_extract(${prescription.dose}, '$.cuff.measuredOn')`,
    })
    .from(prescription)
    .leftJoin(signature, eq(signature.prescriptionId, prescription.id))
    .leftJoin(prescriptionEnd, eq(prescriptionEnd.prescriptionId, prescription.id))
    .where(and(eq(prescription.clinicId, access.clinicId), eq(prescription.patientId, patientId)))
    .orderBy(asc(prescription.version));

const baselinesOf = async (access: Access, patientId: string) => {
  const rows = await access.store.read
    .select({ joint: baseline.joint, frozenOn: max(baseline.frozenOn) })
    .from(baseline)
    .where(and(eq(baseline.clinicId, access.clinicId), eq(baseline.patientId, patientId)))
    .groupBy(baseline.joint);
  return rows.map((row) => ({ joint: row.joint as Joint, frozenOn: row.frozenOn as Day }));
};

/** Since when an entry with a doubtful clock waits for confirmation; amended ones no longer count. */
const doubtfulSince = async (access: Access, patientId: string): Promise<number | null> => {
  const { read } = access.store;
  const later = alias(trainingSession, 'later');
  const laterMorning = alias(morning, 'later_morning');
  const amendedSession = read
    .select({ one: sql`1` })
    .from(later)
    .where(and(eq(later.patientId, patientId), eq(later.amends, trainingSession.entryId)));
  const amendedMorning = read
    .select({ one: sql`1` })
    .from(laterMorning)
    .where(and(eq(laterMorning.patientId, patientId), eq(laterMorning.amends, morning.entryId)));
  const [sessions] = await read
    .select({ at: min(trainingSession.arrivedAt) })
    .from(trainingSession)
    .where(
      and(
        eq(trainingSession.clinicId, access.clinicId),
        eq(trainingSession.patientId, patientId),
        eq(trainingSession.clockDoubtful, true),
        notExists(amendedSession),
      ),
    );
  const [mornings] = await read
    .select({ at: min(morning.arrivedAt) })
    .from(morning)
    .where(
      and(
        eq(morning.clinicId, access.clinicId),
        eq(morning.patientId, patientId),
        eq(morning.clockDoubtful, true),
        notExists(amendedMorning),
      ),
    );
  const found = [sessions?.at ?? null, mornings?.at ?? null].filter((at) => at !== null);
  return found.length > 0 ? Math.min(...found) : null;
};

const lastOf = async (access: Access, patientId: string) => {
  const { read } = access.store;
  const [screened] = await read
    .select({ day: max(screening.day) })
    .from(screening)
    .where(and(eq(screening.clinicId, access.clinicId), eq(screening.patientId, patientId)));
  const [answered] = await read
    .select({ day: max(morning.day) })
    .from(morning)
    .where(and(eq(morning.clinicId, access.clinicId), eq(morning.patientId, patientId)));
  const [conflict] = await read
    .select({ at: min(entryConflict.arrivedAt) })
    .from(entryConflict)
    .where(and(inArray(entryConflict.clinicId, [access.clinicId]), eq(entryConflict.patientId, patientId)));
  return {
    screenedOn: screened?.day ?? null,
    lastMorning: answered?.day ?? null,
    conflictSince: conflict?.at ?? null,
  };
};

export const patientStateOf = async (access: Access, patientId: string): Promise<PatientState> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  const responses = await responsesOf(access, patientId);
  const decisions = await decisionsOf(access, patientId, responses);
  const zone = clinic?.zone ?? 'UTC';
  return {
    decisions,
    proposals: await proposalsOf(access, patientId, responses),
    ...prescriptionState(await prescriptionsOf(access, patientId), zone),
    ...(await lastOf(access, patientId)),
    clockDoubtfulSince: await doubtfulSince(access, patientId),
    toldNew: await toldNewOf(access, patientId),
    baselines: await baselinesOf(access, patientId),
    care: await careStateOf(access, patientId, decisions, zone),
  };
};
