/**
 * The same facts as `patient-state.ts` for every patient of a clinic at once. Each has one plan, worked out
 * as everywhere; the facts beside it come in a fixed number of queries.
 * Written apart on purpose: rebuilding by this way and keeping by the other must agree.
 */

import { and, eq, sql } from 'drizzle-orm';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Plan } from '#core/plan/plan.ts';
import type { PatientState, WorklistProposal } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { retestsOfClinic } from '../assessment/retest-plans.ts';
import { correctionIndexOfClinic } from '../corrections/correction-index.ts';
import { reportedNewsOfAll } from '../entries/reported-news.ts';
import { baselinesFrom } from '../patients/baselines.ts';
import { patientOf, peopleOf } from '../patients/people.ts';
import { planOf } from '../plan/plan-of.ts';
import { clinic, decisionResponse, morning, proposal, trainingSession } from '../schema/schema.ts';
import { careStatesOf } from './care-state.ts';
import { lastAskedOfClinic } from './last-asked.ts';
import { type Answered, newestBaselines } from './patient-state.ts';
import { unansweredSince } from './single-facts.ts';
import { byPatient, correspondenceOf, newestOf } from './worklist-newest.ts';
import { prescriptionRows, prescriptionState } from './worklist-prescriptions.ts';

/** The newest proposal of each prescribed exercise. */
const proposalRows = (access: Access) => {
  const ranked = access.store.read
    .select({
      patientId: proposal.patientId,
      itemId: proposal.itemId,
      exerciseId: sql<string>`json_extract(${proposal.dose}, '$.exerciseId')`.as('exercise_id'),
      decisionId: proposal.decisionId,
      madeAt: proposal.madeAt,
      worklist: proposal.worklist,
      place:
        sql<number>`row_number() over (partition by ${proposal.itemId} order by ${proposal.madeAt} desc, ${proposal.id} desc)`.as(
          'place',
        ),
    })
    .from(proposal)
    .where(eq(proposal.clinicId, access.clinicId))
    .as('ranked');
  return access.store.read.select().from(ranked).where(sql`${ranked.place} = 1`);
};

const proposalsFrom = (
  rows: readonly Awaited<ReturnType<typeof proposalRows>>[number][],
  answered: Answered,
): readonly WorklistProposal[] =>
  rows.map((row) => ({
    itemId: row.itemId,
    exercise: exerciseTitle(row.exerciseId),
    decisionId: row.decisionId,
    madeAt: row.madeAt,
    worklist: row.worklist,
    answered: answered.has(row.decisionId),
  }));

/** Entries with a doubtful clock that nobody has amended, oldest per patient. */
const doubtful = async (access: Access) => {
  const sessions = await access.store.read
    .select({
      patientId: trainingSession.patientId,
      entryId: trainingSession.entryId,
      amends: trainingSession.amends,
      at: trainingSession.arrivedAt,
      isDoubtful: trainingSession.clockDoubtful,
    })
    .from(trainingSession)
    .where(
      and(
        eq(trainingSession.clinicId, access.clinicId),
        sql`(${trainingSession.clockDoubtful} = 1 OR ${trainingSession.amends} IS NOT NULL)`,
      ),
    );
  const mornings = await access.store.read
    .select({
      patientId: morning.patientId,
      entryId: morning.entryId,
      amends: morning.amends,
      at: morning.arrivedAt,
      isDoubtful: morning.clockDoubtful,
    })
    .from(morning)
    .where(
      and(
        eq(morning.clinicId, access.clinicId),
        sql`(${morning.clockDoubtful} = 1 OR ${morning.amends} IS NOT NULL)`,
      ),
    );
  const since = new Map<string, number>();
  for (const rows of [sessions, mornings]) {
    const amended = new Set(rows.map((row) => `${row.patientId} ${row.amends}`));
    for (const row of rows.filter(
      (one) => one.isDoubtful && !amended.has(`${one.patientId} ${one.entryId}`),
    )) {
      since.set(row.patientId, Math.min(row.at, since.get(row.patientId) ?? row.at));
    }
  }
  return since;
};

const plansOf = async (access: Access, people: readonly { readonly id: string }[]) => {
  const plans = new Map<string, Plan>();
  for (const { id } of people) {
    const person = await patientOf(access, id);
    if (person) plans.set(id, await planOf(access, person));
  }
  return plans;
};

const answeredOf = async (access: Access): Promise<Answered> => {
  const rows = await access.store.read
    .select({ id: decisionResponse.decisionId })
    .from(decisionResponse)
    .where(eq(decisionResponse.clinicId, access.clinicId));
  return new Set(rows.map(({ id }) => id));
};

/** State of every patient of the clinic, by patient id. */
export const patientStates = async (access: Access): Promise<ReadonlyMap<string, PatientState>> => {
  const { read } = access.store;
  const mine = access.clinicId;
  const [own] = await read.select({ zone: clinic.zone }).from(clinic).where(eq(clinic.id, mine));
  const people = await peopleOf(access);
  const answered = await answeredOf(access);
  const proposals = byPatient(await proposalRows(access));
  const prescriptions = byPatient(await prescriptionRows(access));
  const { baselines, mornings, conflicts } = await newestOf(access);
  const screened = await lastAskedOfClinic(access);
  const index = await correctionIndexOfClinic(access);
  const retests = await retestsOfClinic(access, index);
  const doubts = await doubtful(access);
  const told = await reportedNewsOfAll(access);
  const { written, writtenBack, booked } = await correspondenceOf(access);
  const zone = own?.zone ?? 'UTC';
  const care = await careStatesOf(access, zone);
  const plans = await plansOf(access, people);
  return new Map(
    people.map(({ id }): [string, PatientState] => {
      const plan = plans.get(id)!;
      const state: PatientState = {
        plan,
        proposals: proposalsFrom(proposals.get(id) ?? [], answered),
        ...prescriptionState(prescriptions.get(id) ?? [], zone),
        conflictSince: conflicts.get(id) ?? null,
        clockDoubtfulSince: doubts.get(id) ?? null,
        messageSince: unansweredSince(written.get(id), writtenBack.get(id)),
        retests: retests(id),
        reviewOn: booked.get(id) ?? null,
        reportedNew: told.get(id) ?? null,
        lastMorning: mornings.get(id) ?? null,
        screenedOn: screened.get(id)?.day ?? null,
        baselines: newestBaselines(baselinesFrom(baselines.get(id) ?? [], index)),
        care: care(id, plan),
      };
      return [id, state];
    }),
  );
};
