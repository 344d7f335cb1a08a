/** The plan of one patient as the core works it out from what is recorded. The only way to it. */
import type { MadeDecision } from '#core/decision/decisions-in-force.ts';
import type { Plan } from '#core/plan/plan.ts';
import { planFor } from '#core/plan/plan-for.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { dangerRecordOf } from '../danger/danger-record.ts';
import { candidateDecisions } from '../decision/candidate-decisions.ts';
import { responsesOf } from '../decision/decision-responses.ts';
import { sessionsOf } from '../entries/logs.ts';
import { careAroundOf } from '../episode/care-around.ts';
import type { Patient } from '../patients/people.ts';
import { prescribingContextFor } from '../prescribing/prescribing-context.ts';
import { inForce, type Prescription, prescriptionsOf } from '../prescribing/prescriptions.ts';
import { newestScreening } from '../screening/screenings.ts';

/** Days back in which the newest decision of a joint still speaks. */
const countsForDays = 120;

const decisionsFor = async (access: Access, patientId: string) => {
  const since = addDays(access.day, -countsForDays);
  // A pause of any age counts: one that nobody has overruled still stands.
  return (await candidateDecisions(access, patientId)).filter(
    (row) => row.day >= since || row.decision === 'pause',
  );
};

/** Something new was told before a session of this day: the cuff stays off for the day. */
const newsOn = async (access: Access, patientId: string): Promise<boolean> =>
  (await sessionsOf(access, patientId, access.day)).some(
    (session) => session.day === access.day && session.reportedNew === true,
  );

export const planOf = async (
  access: Access,
  patient: Patient,
  /** What is planned: the exercises in force when left out. */
  rows?: readonly Prescription[],
  /** Decisions beside those on record, newer than they are: what would be decided, without deciding it. */
  would: readonly MadeDecision[] = [],
): Promise<Plan> => {
  const { id } = patient;
  const screened = await prescribingContextFor(access, patient);
  return planFor({
    versions: (rows ?? inForce(await prescriptionsOf(access, id))).map((row) => ({
      ...row,
      signedAt: row.signedAt!,
    })),
    decisions: [...(await decisionsFor(access, id)), ...would],
    answers: await responsesOf(access, id),
    danger: await dangerRecordOf(access, id),
    limits: screened.limits,
    ownedLoadsKg: screened.ownedLoadsKg,
    care: await careAroundOf(access, id, await newestScreening(access, id)),
    screened,
    newsToday: await newsOn(access, id),
    settings: screened.settings,
    at: { instant: access.now, day: access.day },
  });
};
