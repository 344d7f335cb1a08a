/** What a dose is proposed on, read from the record. */
import { type EligibilityBasis, eligibilityNow } from '#core/episode/eligibility-now.ts';
import type { PrescribingContext } from '#core/prescribing/prescribing-context.ts';
import { withDefaults } from '#core/prescribing/prescribing-context.ts';
import { ageYears } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { measurementsInForce } from '../assessment/measurements.ts';
import { settingsOf } from '../clinic/clinic-settings.ts';
import { machinesOf } from '../clinic/machines.ts';
import { readTogether, togetherOf, workedOnce } from '../database/read-together.ts';
import { careAroundOf } from '../episode/care-around.ts';
import { homeFactsOf } from '../episode/home-eligibility.ts';
import { limitsOfPerson } from '../episode/limits-of-person.ts';
import type { Patient } from '../patients/people.ts';
import { clearancesOf, newestScreening, screeningsInForce } from '../screening/screenings.ts';
import { contextQueries } from './context-queries.ts';
import { inForce, prescriptionsOf } from './prescriptions.ts';

export const eligibilityBasisFor = async (access: Access, patient: Patient): Promise<EligibilityBasis> => ({
  screenings: await screeningsInForce(access, patient.id),
  readings: (await measurementsInForce(access, patient.id)).readings,
  clearances: await clearancesOf(access, patient.id),
  today: access.day,
  ageYears: ageYears(patient.birthDay, access.day),
  settings: await settingsOf(access),
  care: await careAroundOf(access, patient.id, await newestScreening(access, patient.id)),
});

const readContext = async (access: Access, patient: Patient): Promise<PrescribingContext> => {
  const basis = await eligibilityBasisFor(access, patient);
  const { today, clearances, settings, care } = basis;
  return {
    today,
    ageYears: basis.ageYears,
    formulaSex: patient.profile?.formulaSex ?? null,
    ownedLoadsKg: patient.profile?.ownedLoadsKg ?? [],
    machines: await machinesOf(access),
    screening: await newestScreening(access, patient.id),
    measurements: (await measurementsInForce(access, patient.id)).counted,
    clearances,
    outcomes: eligibilityNow(basis),
    settings: withDefaults(settings),
    limits: await limitsOfPerson(access, patient.id),
    consents: care.consents,
    home: await homeFactsOf(access, patient.id),
    inForce: inForce(await prescriptionsOf(access, patient.id)).map(({ dose }) => dose),
  };
};

const together = togetherOf(contextQueries);

/** The plan, the next doses and what is proposed each rest on it. */
export const prescribingContextFor = (access: Access, patient: Patient): Promise<PrescribingContext> =>
  readTogether(access, patient.id, together, () =>
    workedOnce(access, 'prescribing context', patient, () => readContext(access, patient)),
  );
