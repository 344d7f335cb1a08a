/**
 * Looks at a patient's record after something arrived: the engine's answers per joint and the dose
 * that follows for each prescribed exercise. Runs inside the transaction of what arrived, so that no
 * entry stands without its decision. A reduction inside the signed dose acts at once, and so do
 * repetitions inside the signed band; every other increase is kept as an unsigned version and waits.
 */
import { renewedBaseline } from '#core/decision/baseline/renew.ts';
import type { MadeDecision } from '#core/decision/decisions-in-force.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { type Evaluation, evaluate, type JointEvaluation } from '#core/decision/scope.ts';
import { engineSettings, engineSettingValues, engineVersionOf } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { underPlan } from '#core/plan/under-plan.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { storeRenewed } from '../assessment/baselines.ts';
import { settingsOf } from '../clinic/clinic-settings.ts';
import { reportFoundSign } from '../danger/warning-signs.ts';
import { patientOf } from '../patients/people.ts';
import { recordOf } from '../patients/record.ts';
import { planOf } from '../plan/plan-of.ts';
import { proposeDoses } from '../prescribing/next-doses.ts';
import { candidateDecisions } from './candidate-decisions.ts';
import { onWholeRecord } from './decide-queries.ts';
import { type Decision, type NewDecision, newestDecisions, storeDecisions } from './decisions.ts';

export interface Cause {
  readonly cause: NewDecision['cause'];
  readonly sessionId: string | null;
  readonly morningId: string | null;
}

/** The engine's settings as the clinic has them, by all it had set at the instant a record is read at. */
export const engineValues = async (
  access: Pick<Access, 'store' | 'clinicId' | 'knownAt'>,
): Promise<SettingValues> => {
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
export const isAsked = (
  record: Pick<PatientRecord, 'followedJoints'>,
  one: Pick<JointEvaluation, 'joint' | 'sessionId'>,
): boolean => record.followedJoints.includes(one.joint) || one.sessionId !== null;

/** Before the facts are gathered: a baseline that no longer holds is written anew. */
const renewBaselines = async (
  access: Access,
  record: PatientRecord,
  settings: SettingValues,
): Promise<boolean> => {
  const at = { instant: access.now, day: access.day };
  let isRenewed = false;
  for (const joint of record.followedJoints) {
    const renewed = renewedBaseline(record, joint, at, settings);
    if (!renewed) continue;
    await storeRenewed(access, record.patientId, renewed);
    isRenewed = true;
  }
  return isRenewed;
};

const storeWhatIsNew = async (
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
  const fresh: NewDecision[] = [];
  for (const one of evaluation.joints.filter((joint) => isAsked(record, joint))) {
    const { joint, facts, answers } = one;
    const row = {
      joint,
      facts,
      answers,
      settings: settings,
      engineVersion: String(engineVersionOf(engineSettingValues(settings))),
      cause: cause.cause,
      sessionId: one.sessionId,
      morningId: one.morningId,
    };
    const before = newest.get(joint);
    const isSame = before !== undefined && trace(before) === trace({ ...row, ...answers });
    if (isSame) ids.set(joint, before.id);
    else fresh.push(row);
  }
  const stored = await storeDecisions(access, record.patientId, fresh);
  for (const [place, { joint }] of fresh.entries()) ids.set(joint, stored[place]!);
  return ids;
};

/** A fall told as an event and giving way told in a session: together a sign that no entry told. */
const fall: RedFlag = 'fall-with-injury';

/** A sign told within a day and a half before the session judged is the same one. */
const sameSignMs = 36 * 3_600_000;

const reportFall = async (access: Access, record: PatientRecord, { joints }: Evaluation): Promise<void> => {
  const fallen = joints
    .filter(({ facts }) => facts.redFlags?.includes(fall))
    .map(({ sessionId }) => sessionId);
  const judged = record.sessions.filter(({ id }) => fallen.includes(id)).map(({ beganAt }) => beganAt);
  if (judged.length > 0)
    await reportFoundSign(access, record.patientId, fall, Math.min(...judged) - sameSignMs);
};

/** The decisions the rules would make on the record as it stands, without keeping them. */
export const decisionsNow = async (access: Access, patientId: string): Promise<readonly MadeDecision[]> => {
  const record = await recordOf(access, patientId);
  if (!record) return [];
  const moment = { instant: access.now, day: access.day };
  const { joints } = evaluate(record, moment, await engineValues(access));
  return joints
    .filter((one) => isAsked(record, one))
    .map(({ joint, sessionId, morningId, answers }) => ({
      ...answers,
      id: `now-${joint}`,
      joint,
      sessionId,
      morningId,
      cause: 'clinician',
      evaluatedAt: access.now,
    }));
};

const evaluateWhatIsRead = async (access: Access, patientId: string, cause: Cause): Promise<void> => {
  const settings = await engineValues(access);
  let record = await recordOf(access, patientId);
  if (record && (await renewBaselines(access, record, settings))) record = await recordOf(access, patientId);
  if (!record) return;
  const evaluation = evaluate(record, { instant: access.now, day: access.day }, settings);
  const decisionIds = await storeWhatIsNew(access, record, evaluation, cause, settings);
  await reportFall(access, record, evaluation);
  const patient = await patientOf(access, patientId);
  if (!patient || evaluation.items.length === 0) return;
  const plan = await planOf(access, patient);
  await proposeDoses(access, record, underPlan(evaluation, plan), decisionIds, settings);
};

export const evaluateRecord = (access: Access, patientId: string, cause: Cause): Promise<void> =>
  onWholeRecord(access, patientId, () => evaluateWhatIsRead(access, patientId, cause));
