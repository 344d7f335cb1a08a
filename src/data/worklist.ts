/** What the worklist needs of every patient of a clinic, in a fixed number of queries. */
import { and, asc, desc, eq, isNull, max, min, sql } from 'drizzle-orm';
import { exerciseById } from '#core/catalogue/catalogue.ts';
import type { Day } from '#core/day.ts';
import type { Joint } from '#core/joints.ts';
import type { PatientState, StandingDecision, StandingProposal } from '#core/worklist/matter.ts';
import type { Access } from './access.ts';
import {
  baseline,
  clinic,
  decision,
  decisionResponse,
  entryConflict,
  morning,
  patientIdentity,
  proposal,
  screening,
  trainingSession,
} from './schema/schema.ts';
import { prescriptionRows, prescriptionState } from './worklist-prescriptions.ts';

export interface WorklistPatient extends PatientState {
  readonly patientId: string;
  readonly givenName: string;
  readonly familyName: string;
}

const byPatient = <R extends { patientId: string }>(
  rows: readonly R[],
): ReadonlyMap<string, readonly R[]> => {
  const groups = new Map<string, R[]>();
  for (const row of rows) {
    const known = groups.get(row.patientId);
    if (known) known.push(row);
    else groups.set(row.patientId, [row]);
  }
  return groups;
};

/** The newest decision of each joint. */
const decisionRows = async (access: Access) => {
  const ranked = access.store.read
    .select({
      id: decision.id,
      patientId: decision.patientId,
      joint: decision.joint,
      decision: decision.decision,
      contact: decision.contact,
      evaluatedAt: decision.evaluatedAt,
      reasons: decision.reasons,
      rank: sql<number>`row_number() over (partition by ${decision.patientId}, ${decision.joint} order by ${decision.evaluatedAt} desc)`.as(
        'rank',
      ),
    })
    .from(decision)
    .where(eq(decision.clinicId, access.clinicId))
    .as('ranked');
  const rows = await access.store.read
    .select()
    .from(ranked)
    .where(sql`${ranked.rank} = 1`)
    .orderBy(asc(ranked.rank));
  const answered = await access.store.read
    .selectDistinct({ decisionId: decisionResponse.decisionId })
    .from(decisionResponse)
    .where(eq(decisionResponse.clinicId, access.clinicId));
  const answeredIds = new Set(answered.map((row) => row.decisionId));
  return { rows, answeredIds };
};

type DecisionRow = Awaited<ReturnType<typeof decisionRows>>['rows'][number];

const standingOf = (
  rows: readonly DecisionRow[],
  answeredIds: ReadonlySet<string>,
): readonly StandingDecision[] =>
  rows.map((row) => ({
    id: row.id,
    joint: row.joint as Joint,
    decision: row.decision,
    contact: row.contact,
    evaluatedAt: row.evaluatedAt,
    reasons: row.reasons,
    answered: answeredIds.has(row.id),
  }));

/** The newest proposal of each prescribed exercise. */
const proposalRows = async (access: Access) => {
  const ranked = access.store.read
    .select({
      patientId: proposal.patientId,
      exerciseId: sql<string>`json_extract(${proposal.dose}, '$.exerciseId')`.as('exercise_id'),
      decisionId: proposal.decisionId,
      madeAt: proposal.madeAt,
      worklist: proposal.worklist,
      rank: sql<number>`row_number() over (partition by ${proposal.lineId} order by ${proposal.madeAt} desc)`.as(
        'rank',
      ),
    })
    .from(proposal)
    .where(eq(proposal.clinicId, access.clinicId))
    .as('ranked');
  return access.store.read.select().from(ranked).where(sql`${ranked.rank} = 1`);
};

type ProposalRow = Awaited<ReturnType<typeof proposalRows>>[number];

const proposalsFrom = (
  rows: readonly ProposalRow[],
  answeredIds: ReadonlySet<string>,
): readonly StandingProposal[] =>
  rows.map((row) => ({
    exercise: exerciseById(row.exerciseId)?.title ?? row.exerciseId,
    decisionId: row.decisionId,
    madeAt: row.madeAt,
    worklist: row.worklist,
    answered: answeredIds.has(row.decisionId),
  }));

const newestBaselines = async (access: Access) =>
  access.store.read
    .select({ patientId: baseline.patientId, joint: baseline.joint, frozenOn: max(baseline.frozenOn) })
    .from(baseline)
    .where(eq(baseline.clinicId, access.clinicId))
    .groupBy(baseline.patientId, baseline.joint);

const single = async <V>(
  rows: Promise<readonly { patientId: string; value: V }[]> | readonly { patientId: string; value: V }[],
) => new Map((await rows).map((row) => [row.patientId, row.value]));

export const worklistPatients = async (access: Access): Promise<readonly WorklistPatient[]> => {
  const { read } = access.store;
  const mine = access.clinicId;
  const [own] = await read.select({ zone: clinic.zone }).from(clinic).where(eq(clinic.id, mine));
  const people = await read
    .select()
    .from(patientIdentity)
    .where(eq(patientIdentity.clinicId, mine))
    .orderBy(asc(patientIdentity.familyName), asc(patientIdentity.givenName));
  const { rows, answeredIds } = await decisionRows(access);
  const decisions = byPatient(rows);
  const proposals = byPatient(await proposalRows(access));
  const prescriptions = byPatient(await prescriptionRows(access));
  const baselines = byPatient(await newestBaselines(access));
  const mornings = await single(
    read
      .select({ patientId: morning.patientId, value: max(morning.day) })
      .from(morning)
      .where(eq(morning.clinicId, mine))
      .groupBy(morning.patientId),
  );
  const screened = await single(
    read
      .select({ patientId: screening.patientId, value: max(screening.day) })
      .from(screening)
      .where(eq(screening.clinicId, mine))
      .groupBy(screening.patientId),
  );
  const conflicts = await single(
    read
      .select({ patientId: entryConflict.patientId, value: min(entryConflict.arrivedAt) })
      .from(entryConflict)
      .where(eq(entryConflict.clinicId, mine))
      .groupBy(entryConflict.patientId),
  );
  const doubtful = await single(
    read
      .select({ patientId: trainingSession.patientId, value: min(trainingSession.arrivedAt) })
      .from(trainingSession)
      .where(
        and(
          eq(trainingSession.clinicId, mine),
          eq(trainingSession.clockDoubtful, true),
          isNull(trainingSession.amends),
        ),
      )
      .groupBy(trainingSession.patientId)
      .orderBy(desc(trainingSession.patientId)),
  );
  return people.map((person) => ({
    patientId: person.patientId,
    givenName: person.givenName,
    familyName: person.familyName,
    decisions: standingOf(decisions.get(person.patientId) ?? [], answeredIds),
    proposals: proposalsFrom(proposals.get(person.patientId) ?? [], answeredIds),
    ...prescriptionState(prescriptions.get(person.patientId) ?? [], own?.zone ?? 'UTC'),
    conflictSince: conflicts.get(person.patientId) ?? null,
    clockDoubtfulSince: doubtful.get(person.patientId) ?? null,
    lastMorning: mornings.get(person.patientId) ?? null,
    screenedOn: screened.get(person.patientId) ?? null,
    baselines: (baselines.get(person.patientId) ?? []).map((row) => ({
      joint: row.joint as Joint,
      frozenOn: row.frozenOn as Day,
    })),
  }));
};
