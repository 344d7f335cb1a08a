/** What a record says about nutrition, and what a clinician shows the patient of it. */
import { desc } from 'drizzle-orm';
import type { Measurement, MeasurementOf } from '#core/assessment/measurements/measurement.ts';
import { lockAnswersOf } from '#core/nutrition/picture/answers-that-lock.ts';
import type { NutritionAdvice } from '#core/nutrition/picture/nutrition-advice.ts';
import type { NutritionFacts } from '#core/nutrition/picture/nutrition-facts.ts';
import { type NutritionPicture, nutritionPicture } from '#core/nutrition/picture/nutrition-picture.ts';
import { ageYears, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { settingsOf } from '../clinic/clinic-settings.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import type { Patient } from '../patients/people.ts';
import { nutritionAdvice } from '../schema/nutrition.ts';
import { newestScreening } from '../screening/screenings.ts';
import { measurementsOf } from './measurements.ts';

const adviceRows = patientQuery((db) =>
  db
    .select()
    .from(nutritionAdvice)
    .where(ofPatient(nutritionAdvice))
    // Of two in one instant the one that shows nothing counts.
    .orderBy(desc(nutritionAdvice.recordedAt), desc(nutritionAdvice.act), desc(nutritionAdvice.id)),
);

export interface ShownAdvice extends NutritionAdvice {
  readonly recordedAt: number;
  readonly byName: string;
}

/** Newest first; null stands for a withdrawal. */
export interface AdviceStep {
  readonly advice: NutritionAdvice | null;
  readonly recordedAt: number;
  readonly byName: string;
}

export const adviceStepsOf = async (access: Access, patientId: string): Promise<readonly AdviceStep[]> =>
  (await adviceRows(access, patientId)).map((row) => {
    const { proteinLowG, proteinHighG, meals, surplusKcal, words, recordedAt, byName } = row;
    const isShown = proteinLowG !== null && proteinHighG !== null && meals !== null;
    return {
      advice: isShown ? { proteinLowG, proteinHighG, meals, surplusKcal, words } : null,
      recordedAt,
      byName,
    };
  });

const newestOf = <K extends Measurement['kind']>(
  rows: readonly Measurement[],
  kind: K,
): MeasurementOf<K> | null =>
  rows
    .filter((row): row is MeasurementOf<K> => row.kind === kind)
    .toSorted((a, b) => (a.day < b.day ? -1 : 1))
    .at(-1) ?? null;

export interface NutritionOnRecord {
  readonly facts: NutritionFacts;
  readonly measuredOn: {
    readonly massKg: Day | null;
    readonly statureCm: Day | null;
    readonly bodyFatPercent: Day | null;
  };
  readonly screenedOn: Day | null;
  readonly picture: NutritionPicture;
}

export const nutritionOnRecord = async (access: Access, patient: Patient): Promise<NutritionOnRecord> => {
  const rows = await measurementsOf(access, patient.id);
  const screening = await newestScreening(access, patient.id);
  const [mass, stature, fat] = [
    newestOf(rows, 'body-mass'),
    newestOf(rows, 'stature'),
    newestOf(rows, 'body-fat'),
  ];
  const facts: NutritionFacts = {
    massKg: mass?.massKg ?? null,
    statureCm: stature?.statureCm ?? null,
    bodyFatPercent: fat?.bodyFatPercent ?? null,
    ageYears: ageYears(patient.birthDay, access.day),
    formulaSex: patient.profile?.formulaSex ?? null,
    answers: lockAnswersOf(screening),
  };
  return {
    facts,
    measuredOn: {
      massKg: mass?.day ?? null,
      statureCm: stature?.day ?? null,
      bodyFatPercent: fat?.day ?? null,
    },
    screenedOn: screening?.day ?? null,
    picture: nutritionPicture(facts, await settingsOf(access)),
  };
};

/** `advice` null takes back what was shown. */
export const recordAdvice = (
  access: Access,
  patientId: string,
  advice: NutritionAdvice | null,
): Promise<void> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    const act = advice ? 'shown' : 'withdrawn';
    await tx.insert(nutritionAdvice).values({ ...now, act, ...advice });
    await auditWrite(tx, access, 'nutrition-advice', { subjectId: now.id, patientId, detail: { act } });
  });

/** What the patient is shown now: the newest, unless it was taken back or something closes it since. */
export const adviceShownTo = async (access: Access, patient: Patient): Promise<ShownAdvice | null> => {
  const [newest] = await adviceStepsOf(access, patient.id);
  if (!newest?.advice) return null;
  const { picture } = await nutritionOnRecord(access, patient);
  if (picture.lockReasons.length > 0) return null;
  return { ...newest.advice, recordedAt: newest.recordedAt, byName: newest.byName };
};
