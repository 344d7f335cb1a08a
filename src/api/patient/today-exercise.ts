/** One exercise as it stands today: planned or not, what the standing decisions and the holds leave of it. */
import type { Hold } from '#core/care/holds.ts';
import { exerciseById } from '#core/catalogue/catalogue.ts';
import type { Day } from '#core/day.ts';
import { type Today, todays } from '#core/engine/answers.ts';
import type { Standing } from '#core/engine/standing.ts';
import type { PatientRecord } from '#core/model/record.ts';
import { unplannedCuffDays } from '#core/programme/cuff-days.ts';
import { plannedExercise } from '#core/programme/planned-exercise.ts';
import { type Programme, type Weekday, weekdayOf, weekdaysOf } from '#core/programme/planned-sessions.ts';
import { isNewDose } from '#core/programme/urine-question.ts';
import type { Access } from '#data/access.ts';
import type { Prescription } from '#data/prescriptions.ts';
import type { TodayExercise } from './today-view.ts';

const mostCareful = (all: readonly Today[]): Today =>
  all.reduce(
    (worst, next) => (todays.indexOf(next) < todays.indexOf(worst) ? next : worst),
    'as-planned' as Today,
  );

/** What stands for the joints an exercise loads; a pause everywhere reaches every exercise. */
const todayOf = (row: Prescription, standing: readonly Standing[]): Today =>
  mostCareful(
    standing.filter((one) => one.everywhere || row.joints.includes(one.joint)).map((one) => one.today),
  );

interface Stand {
  readonly day: Day;
  /** null: every day. */
  readonly weekdays: readonly Weekday[] | null;
  readonly standing: readonly Standing[];
  readonly isNewDose: boolean;
}

const exerciseView = (row: Prescription, { day, weekdays, standing, ...rest }: Stand): TodayExercise => {
  const exercise = exerciseById(row.dose.exerciseId);
  return {
    prescriptionId: row.id,
    itemId: row.itemId,
    title: exercise?.title ?? row.dose.exerciseId,
    instructions: exercise?.instructions ?? [],
    joints: row.joints,
    dose: row.dose,
    badDay: row.badDay,
    cautions: row.cautions.map((caution) => ({ id: caution.id, text: caution.patientText })),
    planned: weekdays === null || weekdays.includes(weekdayOf(day)),
    weekdays,
    ...rest,
    today: todayOf(row, standing),
    signedName: row.signedName ?? '',
  };
};

/** What rests for a reason outside the engine rests at least; the engine may ask for more. */
const heldBack = (view: TodayExercise, hold: Hold | undefined): TodayExercise =>
  hold ? { ...view, today: mostCareful([view.today, hold.today]) } : view;

/** Something new was told today: the cuff stays off for the day, also where a second session is begun. */
const withoutCuff = (view: TodayExercise, isTold: boolean): TodayExercise =>
  isTold && view.dose.method === 'occlusion' ? { ...view, today: 'none' } : view;

export interface ExerciseGround {
  readonly access: Access;
  /** Care is on a break or over: nothing is planned. */
  readonly isQuiet: boolean;
  readonly programmes: readonly Programme[];
  readonly standing: readonly Standing[];
  readonly record: PatientRecord | null;
  readonly holds: ReadonlyMap<string, Hold>;
  readonly isTold: boolean;
}

export const exercisesToday = (
  versions: readonly Prescription[],
  { access, isQuiet, programmes, standing, record, holds, isTold }: ExerciseGround,
): readonly TodayExercise[] => {
  const cuffDays = unplannedCuffDays(versions.map(plannedExercise));
  return versions.map((row) => {
    const written = isQuiet ? [] : weekdaysOf(programmes, access.day, row.itemId);
    const weekdays = written ?? cuffDays.get(row.itemId) ?? null;
    const stand = { day: access.day, weekdays, standing, isNewDose: isNewDose(row, record?.sessions ?? []) };
    return withoutCuff(heldBack(exerciseView(row, stand), holds.get(row.id)), isTold);
  });
};
