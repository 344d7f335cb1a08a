/**
 * Looks at a patient's record after something arrived: the engine's answers per joint and the dose
 * that follows for each prescribed exercise. Runs inside the transaction of what arrived, so that no
 * entry stands without its decision. A reduction inside the signed dose acts at once; an increase is
 * kept as an unsigned version and waits.
 */
import { isBaselineDueForReview } from '#core/decision/baseline/propose-baseline.ts';
import { withDecisionsInForce } from '#core/decision/decisions-in-force.ts';
import { engineVersion } from '#core/decision/rules/table.ts';
import { type Evaluation, evaluate, type JointEvaluation } from '#core/decision/scope.ts';
import { engineSettings } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { flagBaselineForReview } from '../assessment/baselines.ts';
import { settingsOf } from '../clinic/clinic-settings.ts';
import { recordOf } from '../patients/record.ts';
import { proposeDoses } from '../prescribing/next-doses.ts';
import { candidateDecisions } from './candidate-decisions.ts';
import { type Decision, type NewDecision, newestDecisions, storeDecision } from './decisions.ts';
import { decisionsInForceOf } from './decisions-in-force.ts';

export interface Cause {
  readonly cause: NewDecision['cause'];
  readonly sessionId: string | null;
  readonly morningId: string | null;
}

const engineValues = async (access: Access): Promise<SettingValues> => {
  const own = await settingsOf(access);
  const defaults = defaultsOf(engineSettings);
  return Object.fromEntries(Object.keys(defaults).map((id) => [id, own[id] ?? defaults[id]!]));
};

const trace = (
  row: Pick<
    Decision,
    'sessionId' | 'morningId' | 'decision' | 'largestStep' | 'today' | 'contact' | 'reasons'
  >,
): string =>
  JSON.stringify([
    row.sessionId,
    row.morningId,
    row.decision,
    row.largestStep,
    row.today,
    row.contact,
    row.reasons.map((reason) => reason.rule),
  ]);

/** A joint worth a decision: followed, or asked about in a session. */
const isAsked = (record: PatientRecord, one: JointEvaluation): boolean =>
  record.followedJoints.includes(one.joint) || one.sessionId !== null;

/** A baseline once due for review stays so; it is marked here, before the facts are gathered. */
const flagStaleBaseline = async (
  access: Access,
  record: PatientRecord,
  settings: SettingValues,
): Promise<boolean> => {
  let dueForReview = false;
  for (const joint of record.followedJoints) {
    const newest = record.baselines.filter((row) => row.joint === joint).at(-1);
    // Values of two entries at once are nobody's baseline; what is marked is a row somebody set.
    if (!newest || newest.correctedPending) continue;
    if (isBaselineDueForReview(record, joint, { instant: access.now, day: access.day }, settings)) {
      await flagBaselineForReview(access, record.patientId, newest);
      dueForReview = true;
    }
  }
  return dueForReview;
};

const storeDecisions = async (
  access: Access,
  record: PatientRecord,
  evaluation: Evaluation,
  cause: Cause,
  settings: SettingValues,
): Promise<ReadonlyMap<Joint, string>> => {
  const since = addDays(access.day, -60);
  const newest = newestDecisions(
    (await candidateDecisions(access, record.patientId)).filter((row) => row.day >= since),
  );
  const ids = new Map<Joint, string>();
  for (const one of evaluation.joints.filter((joint) => isAsked(record, joint))) {
    const { joint, facts, answers } = one;
    const row = {
      joint,
      facts,
      answers,
      settings: settings,
      engineVersion,
      cause: cause.cause,
      sessionId: one.sessionId,
      morningId: one.morningId,
    };
    const before = newest.get(joint);
    const isSame = before !== undefined && trace(before) === trace({ ...row, ...answers });
    ids.set(joint, isSame ? before.id : await storeDecision(access, record.patientId, row));
  }
  return ids;
};

/** What the rules answer to the record as it stands, without keeping it. */
export const evaluationNow = async (access: Access, patientId: string): Promise<Evaluation | null> => {
  const record = await recordOf(access, patientId);
  return record && evaluate(record, { instant: access.now, day: access.day }, await engineValues(access));
};

export const evaluateRecord = async (access: Access, patientId: string, cause: Cause): Promise<void> => {
  const settings = await engineValues(access);
  let record = await recordOf(access, patientId);
  if (record && (await flagStaleBaseline(access, record, settings)))
    record = await recordOf(access, patientId);
  if (!record) return;
  const evaluation = evaluate(record, { instant: access.now, day: access.day }, settings);
  const decisionIds = await storeDecisions(access, record, evaluation, cause, settings);
  const newest = await decisionsInForceOf(access, patientId);
  await proposeDoses(access, record, withDecisionsInForce(evaluation, newest), decisionIds, settings);
};
