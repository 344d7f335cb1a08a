/** One exercise as the plan leaves it today, in the words and numbers the phone shows. */

import { cautionsOn } from '#core/episode/limit-cautions.ts';
import type { Plan, PlanItem } from '#core/plan/plan.ts';
import { machineOf } from '#core/prescribing/place-of-dose.ts';
import { exerciseWeekdays } from '#core/prescribing/programme/exercise-weekdays.ts';
import { type Programme, type Weekday, weekdayOf } from '#core/prescribing/programme/planned-sessions.ts';
import { isNewDose } from '#core/prescribing/programme/urine-question.ts';
import type { Limit } from '#core/record/limit.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { cautionText } from '#messages/cautions.ts';
import { exerciseName, exerciseSteps } from '#messages/exercises.ts';
import type { TodayExercise, TodayView } from './today-view.ts';

/** Sessions after which nobody has to be shown again how an exercise goes; clinic choice, no source. */
const familiarAfter = 3;

const timesDone = (itemId: string, sessions: PatientRecord['sessions']): number =>
  sessions.filter(({ sets }) => sets.some((set) => set.itemId === itemId)).length;

interface ExerciseState {
  readonly day: Day;
  /** null: every day. */
  readonly weekdays: readonly Weekday[] | null;
  readonly limits: readonly Limit[];
  readonly isNewDose: boolean;
  readonly isFamiliar: boolean;
}

/** A phone shows a dose within every limit, or rests the exercise and shows none. */
const exerciseView = (
  row: Prescription,
  { dose, easierSession, today }: PlanItem,
  { day, weekdays, limits, ...rest }: ExerciseState,
): TodayExercise => ({
  prescriptionId: row.id,
  itemId: row.itemId,
  title: exerciseName(row.dose.exerciseId),
  instructions: exerciseSteps(row.dose.exerciseId),
  joints: row.joints,
  dose: dose ?? easierSession ?? row.dose,
  badDay: easierSession ?? dose ?? row.badDay,
  cautions: cautionsOn(row.cautions, limits, dose ?? easierSession ?? row.dose, day).map(
    ({ id, patient }) => ({
      id,
      text: cautionText(patient),
      ...(patient.key === 'limit' ? { isLimit: true } : {}),
    }),
  ),
  planned: weekdays === null || weekdays.includes(weekdayOf(day)),
  weekdays,
  ...rest,
  today,
  signedName: row.signedName ?? '',
});

export interface ExerciseContext {
  readonly access: Access;
  /** Of the clinic. */
  readonly zone: string;
  /** Care is on a break or over: nothing is planned. */
  readonly isQuiet: boolean;
  readonly programmes: readonly Programme[];
  readonly plan: Plan;
  readonly record: PatientRecord | null;
}

const exercisesOn = (
  versions: readonly Prescription[],
  { access, zone, isQuiet, programmes, plan, record }: ExerciseContext,
): readonly TodayExercise[] => {
  const signed = versions.map(({ itemId, dose, signedAt, recordedAt }) => ({
    itemId,
    dose,
    signedOn: dayAt(signedAt ?? recordedAt, zone),
  }));
  const weekdaysOn = exerciseWeekdays(signed, programmes, access.day);
  return versions.flatMap((row) => {
    const item = plan.items.find(({ prescriptionId }) => prescriptionId === row.id);
    if (!item) return [];
    const weekdays = isQuiet ? [] : weekdaysOn(row.itemId, access.day);
    const sessions = record?.sessions ?? [];
    const state = {
      day: access.day,
      weekdays,
      limits: record?.limits ?? [],
      isNewDose: isNewDose(row, sessions),
      isFamiliar: timesDone(row.itemId, sessions) >= familiarAfter,
    };
    return [exerciseView(row, item, state)];
  });
};

/** Where the patient is today. */
export type Whereabouts = 'home' | 'clinic';

/**
 * At home what is done there, and beside it what is for the clinic alone: that is told and never begun on a phone.
 * At the clinic, somebody of it beside the patient, all of it is done.
 */
export const exercisesByPlace = (
  where: Whereabouts,
  versions: readonly Prescription[],
  context: ExerciseContext,
): Pick<TodayView, 'exercises' | 'atClinic'> => {
  if (where === 'clinic') return { exercises: exercisesOn(versions, context) };
  const atClinic = exercisesOn(
    versions.filter(({ dose }) => machineOf(dose)),
    context,
  );
  return {
    exercises: exercisesOn(
      versions.filter(({ dose }) => !machineOf(dose)),
      context,
    ),
    ...(atClinic.length > 0
      ? {
          atClinic: atClinic.map(({ itemId, title, dose, badDay, cautions, today }) => ({
            ...{ itemId, title, dose, badDay, cautions, today },
          })),
        }
      : {}),
  };
};
