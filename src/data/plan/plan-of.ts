/** The plan of one patient as the core works it out from what is recorded. The only way to it. */
import type { MadeDecision } from '#core/decision/decisions-in-force.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Plan } from '#core/plan/plan.ts';
import { planFor } from '#core/plan/plan-for.ts';
import type { SessionRecord } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { machinesOf } from '../clinic/machines.ts';
import { dangerRecordOf } from '../danger/danger-record.ts';
import { readTogether, togetherOf, workedOnce } from '../database/read-together.ts';
import { candidateDecisions } from '../decision/candidate-decisions.ts';
import { responsesOf } from '../decision/decision-responses.ts';
import { lastSessionOn } from '../entries/last-session.ts';
import { sessionsOf } from '../entries/logs.ts';
import { careAroundOf } from '../episode/care-around.ts';
import { limitsOf } from '../episode/limits-and-pre-approvals.ts';
import { mergedWith } from '../patients/merges.ts';
import { type Patient, patientOf } from '../patients/people.ts';
import { prescribingContextFor } from '../prescribing/prescribing-context.ts';
import { inForce, type Prescription, prescriptionsOf } from '../prescribing/prescriptions.ts';
import { newestScreening } from '../screening/screenings.ts';
import { planQueries, restDays } from './plan-queries.ts';

/** Days back in which the newest decision of a joint still speaks. */
const countsForDays = 120;

const decisionsFor = async (access: Access, patientId: string) => {
  const since = addDays(access.day, -countsForDays);
  // A pause of any age counts: one that nobody has overruled still stands.
  return (await candidateDecisions(access, patientId)).filter(
    (row) => row.day >= since || row.decision === 'pause',
  );
};

const lastLoadedIn = (sessions: readonly SessionRecord[]): ReadonlyMap<Joint, number> =>
  new Map(
    sessions.flatMap(({ joints, beganAt, recordedAt, clockDoubtful }) =>
      joints.map(({ joint }) => [joint, clockDoubtful ? recordedAt : beganAt] as const),
    ),
  );

/** What of a record speaks about a plan, whatever is prescribed. */
const recordedOf = async (access: Access, patient: Patient, would: readonly MadeDecision[]) => {
  const screened = await prescribingContextFor(access, patient);
  const sessions = await sessionsOf(access, patient.id, addDays(access.day, -restDays));
  return {
    decisions: [...(await decisionsFor(access, patient.id)), ...would],
    answers: await responsesOf(access, patient.id),
    danger: await dangerRecordOf(access, patient.id),
    limits: await limitsOf(access, patient.id),
    screened,
    care: await careAroundOf(access, patient.id, await newestScreening(access, patient.id)),
    // Something new was told before a session of this day: the cuff stays off for the day.
    newsToday: sessions.some(({ day, reportedNew }) => day === access.day && reportedNew === true),
    lastLoadedAt: lastLoadedIn(sessions),
    lastSessionOn: await lastSessionOn(access, patient.id),
  };
};

/**
 * The person's other records; none for almost everybody. Whose prescriptions stay is chosen once; what
 * speaks against an exercise goes on counting from either record.
 */
const recordedBeside = async (access: Access, patientId: string) => {
  const beside = [];
  for (const id of await mergedWith(access, patientId)) {
    const other = await patientOf(access, id);
    if (other) beside.push(await recordedOf(access, other, []));
  }
  return beside;
};

const signed = (row: Prescription) => ({ ...row, signedAt: row.signedAt! });

/** What was last signed of the exercises whose dose was eased back by itself since. */
const writtenOf = (all: readonly Prescription[], now: readonly Prescription[]): readonly Prescription[] =>
  now
    .filter(({ origin }) => origin === 'ease-back')
    .flatMap(
      ({ itemId, version }) =>
        all
          .filter((row) => row.itemId === itemId && row.version < version)
          .filter(({ origin, signedAt }) => origin !== 'ease-back' && signedAt !== null)
          .toSorted((a, b) => a.version - b.version)
          .at(-1) ?? [],
    );

const readPlan = async (
  access: Access,
  patient: Patient,
  rows: readonly Prescription[] | null,
  would: readonly MadeDecision[],
): Promise<Plan> => {
  const { id } = patient;
  const all = rows ? null : await prescriptionsOf(access, id);
  const versions = rows ?? inForce(all ?? []);
  const recorded = await recordedOf(access, patient, would);
  return planFor({
    ...recorded,
    beside: await recordedBeside(access, id),
    versions: versions.map(signed),
    written: all ? writtenOf(all, versions).map(signed) : [],
    ownedLoadsKg: recorded.screened.ownedLoadsKg,
    machines: await machinesOf(access),
    settings: recorded.screened.settings,
    at: { instant: access.now, day: access.day },
  });
};

const together = togetherOf(planQueries);

/** Read by one statement. */
export const planOf = (
  access: Access,
  patient: Patient,
  /** What is planned: the exercises in force when left out. */
  rows: readonly Prescription[] | null = null,
  /** Decisions beside those on record, newer than they are: what would be decided, without deciding it. */
  would: readonly MadeDecision[] = [],
): Promise<Plan> =>
  readTogether(access, patient.id, together, () =>
    workedOnce(access, 'plan', { patient, rows, would }, () => readPlan(access, patient, rows, would)),
  );
