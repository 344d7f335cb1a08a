/** What the worklist knows of one patient, read through that patient's indexes. */
import { and, asc, eq, max, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import type { PatientState, WorklistDecision, WorklistProposal } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { candidateDecisions } from '../decision/candidate-decisions.ts';
import { reportedNewsOf } from '../entries/reported-news.ts';
import { baselinesOf } from '../patients/baselines.ts';
import {
  type decision,
  decisionResponse,
  prescription,
  prescriptionEnd,
  proposal,
  signature,
} from '../schema/schema.ts';
import { newestScreening } from '../screening/screenings.ts';
import { careStateOf } from './care-state.ts';
import { firstOf, singleFacts, unansweredSince } from './single-facts.ts';
import { prescriptionState } from './worklist-prescriptions.ts';

type Responses = ReadonlyMap<string, Pick<typeof decisionResponse.$inferSelect, 'kind' | 'until'>>;

/** The newest answer to each decision. */
export const newestResponses = (rows: readonly (typeof decisionResponse.$inferSelect)[]): Responses =>
  new Map([...rows].sort((a, b) => a.answeredAt - b.answeredAt).map((row) => [row.decisionId, row]));

const settledBy = (responses: Responses, decisionId: string): WorklistDecision['settled'] => {
  const response = responses.get(decisionId);
  if (!response) return null;
  return response.kind === 'override' && response.until ? response.until : 'for-good';
};

const responseRows = patientQuery((db) =>
  db.select().from(decisionResponse).where(ofPatient(decisionResponse)),
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
export const openDecisions = (
  rows: readonly DecisionRow[],
  responses: Responses,
): readonly WorklistDecision[] => {
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

/** The newest proposal of each prescribed exercise. */
const proposalRows = patientQuery((db) => {
  const older = alias(proposal, 'older') as unknown as typeof proposal;
  const lastOfItem = db
    .select({ itemId: older.itemId, at: max(older.madeAt) })
    .from(older)
    .where(ofPatient(older))
    .groupBy(older.itemId);
  return db
    .select({
      itemId: proposal.itemId,
      exerciseId: sql<string>`json_extract(${proposal.dose}, '$.exerciseId')`,
      decisionId: proposal.decisionId,
      madeAt: proposal.madeAt,
      worklist: proposal.worklist,
    })
    .from(proposal)
    .where(and(ofPatient(proposal), sql`(${proposal.itemId}, ${proposal.madeAt}) IN ${lastOfItem}`))
    .orderBy(asc(proposal.madeAt), asc(proposal.id));
});

const proposalsOf = async (
  access: Access,
  patientId: string,
  responses: Responses,
): Promise<readonly WorklistProposal[]> => {
  const rows = await proposalRows(access, patientId);
  const newest = new Map(rows.map((row) => [row.itemId, row]));
  return [...newest.values()].map(({ itemId, exerciseId, decisionId, madeAt, worklist }) => ({
    itemId,
    exercise: exerciseById(exerciseId)?.title ?? exerciseId,
    decisionId,
    madeAt,
    worklist,
    answered: responses.has(decisionId),
  }));
};

const versionRows = patientQuery((db) =>
  db
    .select({
      patientId: prescription.patientId,
      itemId: prescription.itemId,
      version: prescription.version,
      recordedAt: prescription.recordedAt,
      signedAt: signature.signedAt,
      endedAt: prescriptionEnd.endedAt,
      measuredOn: sql<string | null>`json_extract(${prescription.dose}, '$.cuff.measuredOn')`,
    })
    .from(prescription)
    .leftJoin(signature, eq(signature.prescriptionId, prescription.id))
    .leftJoin(prescriptionEnd, eq(prescriptionEnd.prescriptionId, prescription.id))
    .where(ofPatient(prescription))
    .orderBy(asc(prescription.version)),
);

/** The day of the newest baseline of each joint. */
export const lastSetOn = (baselines: readonly Baseline[]): PatientState['baselines'] => {
  const newest = new Map(baselines.map(({ joint, setOn }) => [joint, setOn]));
  return [...newest].map(([joint, setOn]) => ({ joint, setOn })).sort((a, b) => (a.joint < b.joint ? -1 : 1));
};

export const patientStateOf = async (access: Access, patientId: string): Promise<PatientState> => {
  const [facts] = await singleFacts(access, patientId);
  const responses = newestResponses(await responseRows(access, patientId));
  const decisions = openDecisions(await candidateDecisions(access, patientId), responses);
  const zone = facts?.zone ?? 'UTC';
  return {
    decisions,
    proposals: await proposalsOf(access, patientId, responses),
    ...prescriptionState(await versionRows(access, patientId), zone),
    screenedOn: (await newestScreening(access, patientId))?.day ?? null,
    lastMorning: facts?.lastMorning ?? null,
    conflictSince: facts?.conflictSince ?? null,
    clockDoubtfulSince: firstOf(facts?.doubtfulSession, facts?.doubtfulMorning),
    messageSince: unansweredSince(facts?.wroteAt, facts?.answeredBackAt),
    reviewOn: facts?.reviewOn ?? null,
    reportedNew: await reportedNewsOf(access, patientId),
    baselines: lastSetOn(await baselinesOf(access, patientId)),
    care: await careStateOf(access, patientId, decisions, zone),
  };
};
