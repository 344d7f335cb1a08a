/** The page for the colleague, read from the record. */
import { limitsInForce } from '#core/decision/dose/limits.ts';
import {
  ineligibleMethods,
  lastDecisions,
  overridesOf,
  pauseLines,
} from '#core/episode/documents/handover.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import { ineligibleAtHome } from '#core/episode/home-eligibility.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { joints, limbs, sides } from '#core/exercises/joints.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { dangers } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { coveringClinicianOf, pauseOwnersOf } from '../clinic/covering-clinicians.ts';
import { responsesOf } from '../decision/decision-responses.ts';
import { decisionsOf } from '../decision/decisions.ts';
import type { Patient } from '../patients/people.ts';
import { planOf } from '../plan/plan-of.ts';
import { prescribingContextFor } from '../prescribing/prescribing-context.ts';
import { inForce, type Prescription, prescriptionsOf, unsigned } from '../prescribing/prescriptions.ts';
import { itemsDueOf } from '../worklist/items-of-patient.ts';
import { episodesOf } from './episodes.ts';
import { limitsOfPerson } from './limits-of-person.ts';

/** Days of decisions looked through for the last three and for overrides that hold. */
const decisionDays = 200;

const namedDose = ({ id, itemId, dose, signedName, recordedAt }: Prescription) => ({
  id,
  itemId,
  title: exerciseTitle(dose.exerciseId),
  dose,
  signedName,
  recordedAt,
});

const openDangers = async (access: Access, patientId: string) => {
  const rows = await itemsDueOf(access, patientId);
  return rows.filter((row) => dangers.includes(row.kind));
};

export const handoverFor = async (access: Access, patient: Patient) => {
  const { day } = access;
  const context = await prescribingContextFor(access, patient);
  const decisions = await decisionsOf(access, patient.id, addDays(day, -decisionDays));
  const responses = await responsesOf(access, patient.id);
  const plan = await planOf(access, patient);
  const versions = await prescriptionsOf(access, patient.id);
  const limits = await limitsOfPerson(access, patient.id);
  return {
    day,
    episodeStatus: episodeStatusOn(await episodesOf(access, patient.id), day),
    limits: limitsInForce(limits, joints, dayNumber(day)),
    closed: ineligibleMethods(context.outcomes),
    cuffAtHome: limbs.flatMap((limb) =>
      sides.map((side) => ({ limb, side, why: ineligibleAtHome(context.home, { limb, side }, false) })),
    ),
    decisions: lastDecisions(decisions).map((row) => ({
      id: row.id,
      joint: row.joint,
      decision: row.decision,
      contact: row.contact,
      evaluatedAt: row.evaluatedAt,
      reasons: row.reasons,
      answer: responses.find((response) => response.decisionId === row.id) ?? null,
    })),
    overrides: overridesOf(plan, decisions, responses),
    inForce: inForce(versions).map(namedDose),
    unsigned: unsigned(versions).map(namedDose),
    pauses: pauseLines(plan, await pauseOwnersOf(access, patient.id), day),
    plan,
    dangers: await openDangers(access, patient.id),
    coveringClinician: await coveringClinicianOf(access),
  };
};
