/** What a dose is proposed on, read from the record. */
import { strictestOutcomes } from '#core/corrections/stricter.ts';
import { withCare } from '#core/episode/care-eligibility.ts';
import type { PrescribingContext } from '#core/prescribing/prescribing-context.ts';
import { withDefaults } from '#core/prescribing/prescribing-context.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { ageYears } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { measurementsInForce } from '../assessment/measurements.ts';
import { settingsOf } from '../clinic/clinic-settings.ts';
import { careAroundOf } from '../episode/care-around.ts';
import { homeFactsOf } from '../episode/home-eligibility.ts';
import { limitsOf } from '../episode/limits-and-pre-approvals.ts';
import type { Patient } from '../patients/people.ts';
import { clearancesOf, newestScreening, screeningsInForce } from '../screening/screenings.ts';
import { inForce, prescriptionsOf } from './prescriptions.ts';

export const prescribingContextFor = async (
  access: Access,
  patient: Patient,
): Promise<PrescribingContext> => {
  const own = await settingsOf(access);
  const screening = await newestScreening(access, patient.id);
  const clearances = await clearancesOf(access, patient.id);
  const measured = await measurementsInForce(access, patient.id);
  const age = ageYears(patient.birthDay, access.day);
  const care = await careAroundOf(access, patient.id, screening);
  const screenings = await screeningsInForce(access, patient.id);
  const outcomes = strictestOutcomes(
    screenings.flatMap((sheet) =>
      measured.readings.map((measurements) =>
        methodOutcomes({
          screening: sheet,
          clearances,
          measurements,
          today: access.day,
          ageYears: age,
          settings: own,
        }),
      ),
    ),
  );
  return {
    today: access.day,
    ageYears: age,
    formulaSex: patient.profile?.formulaSex ?? null,
    ownedLoadsKg: patient.profile?.ownedLoadsKg ?? [],
    screening,
    measurements: measured.counted,
    clearances,
    outcomes: withCare(outcomes, care),
    settings: withDefaults(own),
    limits: await limitsOf(access, patient.id),
    consents: care.consents,
    home: await homeFactsOf(access, patient.id),
    inForce: inForce(await prescriptionsOf(access, patient.id)).map(({ dose }) => dose),
  };
};
