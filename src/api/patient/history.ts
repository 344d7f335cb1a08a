/** The patient's own history, newest first. */

import { explainToPatient } from '#core/decision/explain.ts';
import type { SessionRecord } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { morningsOf, sessionsOf } from '#data/entries/logs.ts';
import { type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { decisionText, ruleText } from '#messages/decisions.ts';
import { exerciseName } from '#messages/exercises.ts';
import { patientProcedure, router } from '../trpc.ts';
import type { HistoryDay, HistoryView } from './history-view.ts';

const daysBack = 42;

const exercisesOf = (session: SessionRecord, versions: readonly Prescription[]) => {
  const lines = [...new Set(session.sets.map((set) => set.prescriptionId))];
  return lines.map((id) => {
    const exerciseId = versions.find((row) => row.id === id)?.dose.exerciseId ?? '';
    return {
      exerciseId,
      title: exerciseName(exerciseId),
      sets: session.sets
        .filter((set) => set.prescriptionId === id)
        .map(({ repetitions, loadKg }) => ({ repetitions, loadKg })),
    };
  });
};

export const historyRouter = router({
  get: patientProcedure.query(async ({ ctx }): Promise<HistoryView> => {
    const { access, patient } = ctx;
    const since = addDays(access.day, -daysBack);
    const sessions = await sessionsOf(access, patient.id, since);
    const mornings = await morningsOf(access, patient.id, since);
    const decisions = await decisionsOf(access, patient.id, since);
    const versions = await prescriptionsOf(access, patient.id);
    const days = [...new Set([...sessions, ...mornings, ...decisions].map((row) => row.day))]
      .sort()
      .reverse();
    return {
      today: access.day,
      days: days.map(
        (day): HistoryDay => ({
          day,
          sessions: sessions
            .filter((row) => row.day === day)
            .map((row) => ({ kind: row.kind, exercises: exercisesOf(row, versions), joints: row.joints })),
          mornings: mornings.filter((row) => row.day === day).map((row) => ({ joints: row.joints })),
          decisions: decisions
            .filter((row) => row.day === day)
            .map((row) => {
              const { decision, because } = explainToPatient(row);
              return { joint: row.joint, text: decisionText(decision), because: because.map(ruleText) };
            }),
        }),
      ),
    };
  }),
});
