/** Where a first visit stands, from the record alone. */
import { consentState } from '#core/episode/consent.ts';
import {
  type FirstVisitConsent,
  type FirstVisitFacts,
  type FirstVisitStepState,
  firstVisitConsents,
  firstVisitStates,
} from '#core/episode/first-visit/first-visit-steps.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import { screeningSettings } from '#core/screening/settings.ts';
import { ageYears, daysBetween } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { isLetIn } from '#data/accounts/invitations.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { settingValue } from '#data/clinic/clinic-settings.ts';
import { consentsOf } from '#data/episode/consents.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import type { Patient } from '#data/patients/people.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import { newestScreening } from '#data/screening/screenings.ts';

const questionsOf = async (access: Access, patient: Patient): Promise<FirstVisitFacts['questions']> => {
  const items = minimumSet('low-load', ageYears(patient.birthDay, access.day));
  const newest = await newestScreening(access, patient.id);
  const validDays = await settingValue(access, screeningSettings, 'screening-valid-days');
  const isOver = newest !== null && daysBetween(newest.day, access.day) > validDays;
  const given = new Set(isOver ? [] : newest?.answers.map(({ item }) => item));
  return { answered: items.filter(({ id }) => given.has(id)).length, all: items.length };
};

/** A measurement counts as measured for as long as it counts for the pressure itself. */
const isPressureMeasured = async (access: Access, patientId: string): Promise<boolean> => {
  const validDays = await settingValue(access, screeningSettings, 'blood-pressure-valid-days');
  return (await measurementsOf(access, patientId)).some(
    ({ kind, day }) => kind === 'blood-pressure' && daysBetween(day, access.day) <= validDays,
  );
};

/** Of what comes once a dose is signed; the bar of every record asks for it. */
export const afterSigningOf = async (access: Access, patientId: string) => {
  const items = inForce(await prescriptionsOf(access, patientId));
  const planned = (await programmesOf(access, patientId)).at(-1)?.lines ?? [];
  const hasDays = (itemId: string) =>
    planned.some((line) => line.itemId === itemId && line.weekdays.length > 0);
  return {
    signed: items.length,
    isWeekSet: items.every(({ itemId }) => hasDays(itemId)),
    isInvited: await isLetIn(access, patientId),
  };
};

const consentsIn = async (access: Access, patientId: string): Promise<FirstVisitFacts['consents']> => {
  const rows = await consentsOf(access, patientId);
  return Object.fromEntries(firstVisitConsents.map((kind) => [kind, consentState(rows, kind)])) as Record<
    FirstVisitConsent,
    FirstVisitFacts['consents'][FirstVisitConsent]
  >;
};

export const firstVisitStatesOf = async (
  access: Access,
  patient: Patient,
): Promise<readonly FirstVisitStepState[]> => {
  const { profile } = patient;
  return firstVisitStates({
    consents: await consentsIn(access, patient.id),
    isReasonKnown: profile !== null,
    followedJoints: profile?.followedJoints ?? [],
    jointsWithBaseline: (await baselinesOf(access, patient.id)).map(({ joint }) => joint),
    questions: await questionsOf(access, patient),
    isPressureMeasured: await isPressureMeasured(access, patient.id),
    isHomeAsked: (profile?.ownedEquipment.length ?? 0) + (profile?.ownedLoadsKg.length ?? 0) > 0,
    outcomes: (await prescribingContextFor(access, patient)).outcomes,
    ...(await afterSigningOf(access, patient.id)),
  });
};
