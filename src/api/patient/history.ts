/** The patient's own history, newest first. */

import { z } from 'zod';
import { isHeld } from '#core/prescribing/variation/held.ts';
import type { SessionRecord } from '#core/record/record.ts';
import { addDays, type Day, isDay } from '#core/time/day.ts';
import { type Decision, decisionsOf } from '#data/decision/decisions.ts';
import { morningsOf, sessionsOf } from '#data/entries/logs.ts';
import { type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { decisionText } from '#messages/decisions.ts';
import { exerciseName } from '#messages/exercises.ts';
import { patientProcedure, router } from '../trpc.ts';
import type { HistoryDay, HistoryView } from './history-view.ts';
import { reasonsTold } from './reasons-told.ts';

/** Twelve weeks on one page; a year of them would be a page nobody reaches the end of. */
const daysAtOnce = 84;
/** Before any record. */
const firstDay: Day = '1970-01-01';

const exercisesOf = (session: SessionRecord, versions: readonly Prescription[]) => {
  const lines = [...new Set(session.sets.map((set) => set.prescriptionId))];
  return lines.map((id) => {
    const exerciseId = versions.find((row) => row.id === id)?.dose.exerciseId ?? '';
    return {
      exerciseId,
      title: exerciseName(exerciseId),
      ...(isHeld(exerciseId) ? { isHeld: true as const } : {}),
      sets: session.sets
        .filter((set) => set.prescriptionId === id)
        .map(({ repetitions, loadKg }) => ({ repetitions, loadKg })),
    };
  });
};

interface Recorded {
  readonly day: Day;
}

/** Whatever was ever sent is reached from the newest on, a span of weeks at a time. */
const spanOf = (days: readonly Day[], before: Day | undefined) => {
  const to = days.findLast((day) => before === undefined || day < before);
  if (to === undefined) return null;
  const from = addDays(to, -daysAtOnce);
  return {
    days: days.filter((day) => day >= from && day <= to).reverse(),
    earlierThan: days[0]! < from ? from : null,
  };
};

const decisionView = (
  row: Decision,
  sessions: readonly SessionRecord[],
  versions: readonly Prescription[],
): HistoryDay['decisions'][number] => {
  return {
    joint: row.joint,
    text: decisionText(row.decision),
    because: reasonsTold(row, sessions, versions),
  };
};

export const historyRouter = router({
  get: patientProcedure
    .input(z.object({ before: z.string().refine(isDay).optional() }).optional())
    .query(async ({ ctx, input }): Promise<HistoryView> => {
      const { access, patient } = ctx;
      const all = {
        sessions: await sessionsOf(access, patient.id, firstDay),
        mornings: await morningsOf(access, patient.id, firstDay),
        decisions: await decisionsOf(access, patient.id, firstDay),
      };
      const recorded = [...new Set(Object.values(all).flatMap((rows) => rows.map(({ day }) => day)))].sort();
      const span = spanOf(recorded, input?.before);
      if (!span) return { today: access.day, days: [], earlierThan: null };
      const versions = await prescriptionsOf(access, patient.id);
      const on = <R extends Recorded>(rows: readonly R[], day: Day) => rows.filter((row) => row.day === day);
      return {
        today: access.day,
        earlierThan: span.earlierThan,
        days: span.days.map(
          (day): HistoryDay => ({
            day,
            sessions: on(all.sessions, day).map((row) => ({
              kind: row.kind,
              exercises: exercisesOf(row, versions),
              joints: row.joints,
            })),
            mornings: on(all.mornings, day).map(({ joints, fatigue, otherJoint }) => ({
              joints,
              fatigue,
              ...(otherJoint ? { otherJoint } : {}),
            })),
            decisions: on(all.decisions, day).map((row) => decisionView(row, all.sessions, versions)),
          }),
        ),
      };
    }),
});
