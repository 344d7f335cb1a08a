/**
 * What is left of each method now, from everything that closes one: answers, measurements, clearances, consents
 * and the course of care. The same from answers that are given and not saved yet, so that a page can say at
 * once what they would close.
 */
import type { Measurement } from '../assessment/measurements/measurement.ts';
import { strictestOutcomes } from '../corrections/stricter.ts';
import { nextScreening } from '../screening/changed-answers.ts';
import { methodOutcomes } from '../screening/outcomes.ts';
import type { Clearance, MethodOutcome, Screening, ScreeningItemAnswer } from '../screening/screening.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import type { Day } from '../time/day.ts';
import { type CareAround, withCare } from './care-eligibility.ts';

export interface EligibilityBasis {
  /** One, or each of those between which a correction waits. */
  readonly screenings: readonly (Screening | null)[];
  /** One reading of the measurements, or each of those between which a correction waits. */
  readonly readings: readonly (readonly Measurement[])[];
  readonly clearances: readonly Clearance[];
  readonly today: Day;
  readonly ageYears: number;
  readonly settings: SettingValues;
  readonly care: CareAround;
}

export const eligibilityNow = (basis: EligibilityBasis): readonly MethodOutcome[] =>
  withCare(
    strictestOutcomes(
      basis.screenings.flatMap((screening) =>
        basis.readings.map((measurements) => methodOutcomes({ ...basis, screening, measurements })),
      ),
    ),
    basis.care,
  );

/** As it would be with these answers beside those on record. */
export const eligibilityWith = (
  basis: EligibilityBasis,
  sheet: { readonly sheetVersion: string; readonly answers: readonly ScreeningItemAnswer[] },
): readonly MethodOutcome[] => {
  if (sheet.answers.length === 0) return eligibilityNow(basis);
  const { today, ageYears, care } = basis;
  const screenings = basis.screenings.map((before) => {
    const { changed: _, ...next } = nextScreening(before, sheet, today, ageYears);
    return { ...next, version: (before?.version ?? 0) + 1 };
  });
  const asked = { day: screenings[0]?.day ?? today, recordedAt: Number.MAX_SAFE_INTEGER };
  return eligibilityNow({ ...basis, screenings, care: { ...care, screening: asked } });
};
