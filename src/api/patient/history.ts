/** The patient's own history, newest first. */

import { explainToPatient } from '#core/decision/explain.ts';
import { leftOutRule } from '#core/decision/left-out.ts';
import { ruleSentence } from '#core/decision/patient-sentence.ts';
import type { RuleId } from '#core/decision/rules/table.ts';
import type { SessionRecord } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import { type Decision, decisionsOf } from '#data/decision/decisions.ts';
import { morningsOf, sessionsOf } from '#data/entries/logs.ts';
import { type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { decisionText, leftOutText, ruleText } from '#messages/decisions.ts';
import { exerciseName } from '#messages/exercises.ts';
import type { Text } from '#messages/text.ts';
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

const reasonText = (
  rule: RuleId,
  { joint, reasons }: Pick<Decision, 'joint' | 'reasons'>,
  session: SessionRecord | undefined,
  versions: readonly Prescription[],
): Text => {
  const open = session ? leftOutRule(rule, { session, joint, versions }) : null;
  if (open) return leftOutText(open);
  const reason = reasons.find((one) => one.rule === rule);
  return ruleText(reason ? ruleSentence(rule, reason) : rule);
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
              const judged = sessions.find(({ id }) => id === row.sessionId);
              return {
                joint: row.joint,
                text: decisionText(decision),
                because: because.map((rule) => reasonText(rule, row, judged, versions)),
              };
            }),
        }),
      ),
    };
  }),
});
