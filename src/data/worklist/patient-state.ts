/** What the worklist knows of one patient, read through that patient's indexes. */
import { and, asc, max, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { setByClinicianOn } from '#core/record/baseline-age.ts';
import type { Baseline } from '#core/record/record.ts';
import type { PatientState, WorklistProposal } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { retestsOf } from '../assessment/retest-plans.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { responsesOf } from '../decision/decision-responses.ts';
import { reportedNewsOf } from '../entries/reported-news.ts';
import { baselinesOf } from '../patients/baselines.ts';
import { patientOf } from '../patients/people.ts';
import { planOf } from '../plan/plan-of.ts';
import { prescriptionsOf } from '../prescribing/prescriptions.ts';
import { proposal } from '../schema/schema.ts';
import { newestScreening } from '../screening/screenings.ts';
import { careStateOf } from './care-state.ts';
import { firstOf, singleFacts, unansweredSince } from './single-facts.ts';
import { prescriptionState } from './worklist-prescriptions.ts';

/** Decisions that a clinician has answered. */
export type Answered = ReadonlySet<string>;

/** The newest proposal of each prescribed exercise. */
export const newestProposalRows = patientQuery((db) => {
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
  answered: Answered,
): Promise<readonly WorklistProposal[]> => {
  const rows = await newestProposalRows(access, patientId);
  const newest = new Map(rows.map((row) => [row.itemId, row]));
  return [...newest.values()].map(({ itemId, exerciseId, decisionId, madeAt, worklist }) => ({
    itemId,
    exercise: exerciseTitle(exerciseId),
    decisionId,
    madeAt,
    worklist,
    answered: answered.has(decisionId),
  }));
};

const versionsOf = async (access: Access, patientId: string) =>
  (await prescriptionsOf(access, patientId))
    .map(({ dose, ...row }) => ({
      ...row,
      patientId,
      measuredOn: dose.method === 'occlusion' && 'measuredOn' in dose.cuff ? dose.cuff.measuredOn : null,
    }))
    .toSorted((a, b) => a.version - b.version);

/** The newest baseline of each joint: since when it stands, and whether it was only told. */
export const newestBaselines = (baselines: readonly Baseline[]): PatientState['baselines'] => {
  const newest = new Map(baselines.map((row) => [row.joint, row]));
  return [...newest.values()]
    .map((row) => ({
      joint: row.joint,
      setOn: setByClinicianOn(row),
      provisional: row.provisional ?? false,
    }))
    .sort((a, b) => (a.joint < b.joint ? -1 : 1));
};

export const patientStateOf = async (access: Access, patientId: string): Promise<PatientState> => {
  const [facts] = await singleFacts(access, patientId);
  const answered = new Set((await responsesOf(access, patientId)).map(({ decisionId }) => decisionId));
  const patient = await patientOf(access, patientId);
  if (!patient) throw new Error('The worklist was asked about a patient of another clinic.');
  const plan = await planOf(access, patient);
  const zone = facts?.zone ?? 'UTC';
  return {
    plan,
    proposals: await proposalsOf(access, patientId, answered),
    ...prescriptionState(await versionsOf(access, patientId), zone),
    screenedOn: (await newestScreening(access, patientId))?.day ?? null,
    lastMorning: facts?.lastMorning ?? null,
    conflictSince: facts?.conflictSince ?? null,
    clockDoubtfulSince: firstOf(facts?.doubtfulSession, facts?.doubtfulMorning),
    messageSince: unansweredSince(facts?.wroteAt, facts?.answeredBackAt),
    retests: await retestsOf(access, patientId),
    reviewOn: facts?.reviewOn ?? null,
    reportedNew: await reportedNewsOf(access, patientId),
    baselines: newestBaselines(await baselinesOf(access, patientId)),
    care: await careStateOf(access, patientId, plan, zone),
  };
};
