/** One exercise as it stands today: planned or not, what the standing decisions and the holds leave of it. */

import { type Today, todays } from '#core/decision/answers.ts';
import type { DecisionInForce } from '#core/decision/decisions-in-force.ts';
import type { Suspension } from '#core/episode/suspensions.ts';
import { unplannedCuffDays } from '#core/prescribing/programme/cuff-days.ts';
import { plannedExercise } from '#core/prescribing/programme/planned-exercise.ts';
import {
  type Programme,
  type Weekday,
  weekdayOf,
  weekdaysOf,
} from '#core/prescribing/programme/planned-sessions.ts';
import { isNewDose } from '#core/prescribing/programme/urine-question.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { cautionText } from '#messages/cautions.ts';
import { exerciseName, exerciseSteps } from '#messages/exercises.ts';
import type { TodayExercise } from './today-view.ts';

const mostCareful = (all: readonly Today[]): Today =>
  all.reduce(
    (worst, next) => (todays.indexOf(next) < todays.indexOf(worst) ? next : worst),
    'as-planned' as Today,
  );

/** What stands for the joints an exercise loads; a pause everywhere reaches every exercise. */
const todayOf = (row: Prescription, decisions: readonly DecisionInForce[]): Today =>
  mostCareful(
    decisions.filter((one) => one.everywhere || row.joints.includes(one.joint)).map((one) => one.today),
  );

interface ExerciseState {
  readonly day: Day;
  /** null: every day. */
  readonly weekdays: readonly Weekday[] | null;
  readonly decisions: readonly DecisionInForce[];
  readonly isNewDose: boolean;
}

const exerciseView = (
  row: Prescription,
  { day, weekdays, decisions, ...rest }: ExerciseState,
): TodayExercise => ({
  prescriptionId: row.id,
  itemId: row.itemId,
  title: exerciseName(row.dose.exerciseId),
  instructions: exerciseSteps(row.dose.exerciseId),
  joints: row.joints,
  dose: row.dose,
  badDay: row.badDay,
  cautions: row.cautions.map((caution) => ({ id: caution.id, text: cautionText(caution.patient) })),
  planned: weekdays === null || weekdays.includes(weekdayOf(day)),
  weekdays,
  ...rest,
  today: todayOf(row, decisions),
  signedName: row.signedName ?? '',
});

/** What rests for a reason outside the engine rests at least; the engine may ask for more. */
const withSuspension = (view: TodayExercise, suspension: Suspension | undefined): TodayExercise =>
  suspension ? { ...view, today: mostCareful([view.today, suspension.today]) } : view;

/** Something new was told today: the cuff stays off for the day, also where a second session is begun. */
const withoutCuff = (view: TodayExercise, news: boolean): TodayExercise =>
  news && view.dose.method === 'occlusion' ? { ...view, today: 'none' } : view;

export interface ExerciseContext {
  readonly access: Access;
  /** Care is on a break or over: nothing is planned. */
  readonly isQuiet: boolean;
  readonly programmes: readonly Programme[];
  readonly decisions: readonly DecisionInForce[];
  readonly record: PatientRecord | null;
  readonly suspensions: ReadonlyMap<string, Suspension>;
  readonly news: boolean;
}

export const exercisesOn = (
  versions: readonly Prescription[],
  { access, isQuiet, programmes, decisions, record, suspensions, news }: ExerciseContext,
): readonly TodayExercise[] => {
  const cuffDays = unplannedCuffDays(versions.map(plannedExercise));
  return versions.map((row) => {
    const written = isQuiet ? [] : weekdaysOf(programmes, access.day, row.itemId);
    const weekdays = written ?? cuffDays.get(row.itemId) ?? null;
    const state = {
      day: access.day,
      weekdays,
      decisions,
      isNewDose: isNewDose(row, record?.sessions ?? []),
    };
    return withoutCuff(withSuspension(exerciseView(row, state), suspensions.get(row.id)), news);
  });
};
