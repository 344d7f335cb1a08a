/** What a dose is proposed on, read from the record. */
import { withCare } from '#core/episode/care-eligibility.ts';
import type { PrescribingContext } from '#core/prescribing/prescribing-context.ts';
import { withDefaults } from '#core/prescribing/prescribing-context.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { ageYears } from '#core/time/day.ts';
import type { Access } from './access.ts';
import { limitsOf } from './care.ts';
import { careAroundOf } from './care-around.ts';
import { settingsOf } from './choices.ts';
import { homeFactsOf } from './home-gate.ts';
import { measurementsOf } from './measurements.ts';
import type { Patient } from './people.ts';
import { clearancesOf, newestScreening } from './screenings.ts';

export const prescribingContextFor = async (
  access: Access,
  patient: Patient,
): Promise<PrescribingContext> => {
  const own = await settingsOf(access);
  const screening = await newestScreening(access, patient.id);
  const clearances = await clearancesOf(access, patient.id);
  const measurements = await measurementsOf(access, patient.id);
  const age = ageYears(patient.birthDay, access.day);
  const care = await careAroundOf(access, patient.id, screening);
  const outcomes = methodOutcomes({
    screening,
    clearances,
    measurements,
    today: access.day,
    ageYears: age,
    settings: own,
  });
  return {
    today: access.day,
    ageYears: age,
    formulaSex: patient.profile?.formulaSex ?? null,
    ownedLoadsKg: patient.profile?.ownedLoadsKg ?? [],
    screening,
    measurements,
    clearances,
    outcomes: withCare(outcomes, care),
    settings: withDefaults(own),
    limits: await limitsOf(access, patient.id),
    consents: care.consents,
    home: await homeFactsOf(access, patient.id),
  };
};
