/** The dose that follows for each prescribed exercise, stored with what it became. */

import { screenedUntil } from '#core/care/screened-until.ts';
import { exerciseById, jointsLoaded } from '#core/catalogue/catalogue.ts';
import type { ChoiceValues } from '#core/clinic-choice.ts';
import type { DoseProposal } from '#core/engine/dose/proposal.ts';
import { type LineContext, nextDoses } from '#core/engine/next-doses.ts';
import type { Evaluation, LineEvaluation } from '#core/engine/scope.ts';
import type { Joint } from '#core/joints.ts';
import type { Dose } from '#core/model/dose.ts';
import type { PatientRecord } from '#core/model/record.ts';
import { changesForClinician, changesForPatient } from '#core/prescribing/changes-in-words.ts';
import type { Ground } from '#core/prescribing/ground.ts';
import { ladderAtHome } from '#core/prescribing/ladder-at-home.ts';
import { cautionsOfDose } from '#core/prescribing/propose.ts';
import { anthropometryOf } from '#core/prescribing/variation.ts';
import type { Access } from './access.ts';
import { preApprovalsOf } from './care.ts';
import { type Proposal, proposalsOf, storeProposal } from './decisions.ts';
import { groundFor } from './ground.ts';
import { patientOf } from './people.ts';
import { addVersion, carrySignature, endPrescription } from './prescribing.ts';
import { prescriptionsOf, unsigned } from './prescriptions.ts';

interface Look {
  readonly access: Access;
  readonly record: PatientRecord;
  readonly evaluation: Evaluation;
  readonly decisionIds: ReadonlyMap<Joint, string>;
  readonly ground: Ground;
  /** Newest first. */
  readonly earlier: readonly Proposal[];
}

/** Whether a line's joints have all they need to be judged, or something stops it now. */
const isJudged = (evaluation: Evaluation, line: LineEvaluation): boolean =>
  line.decision === 'pause' ||
  line.decision === 'ease-back' ||
  line.gatedBy.some((joint) => evaluation.joints.find((one) => one.joint === joint)?.state === 'complete');

/**
 * Ease-backs on a line directly before now, over the sessions judged. A session looked at twice, in
 * the evening and the morning after, counts once, and the session now judged does not count.
 */
const easeBacksBefore = (earlier: readonly Proposal[], itemId: string, sessionId: string | null): number => {
  const lastWords = new Map<string | null, string>();
  for (const row of earlier) {
    if (row.itemId === itemId && row.sessionId !== sessionId && !lastWords.has(row.sessionId))
      lastWords.set(row.sessionId, row.decision);
  }
  const words = [...lastWords.values()];
  const end = words.findIndex((word) => word !== 'ease-back');
  return end < 0 ? words.length : end;
};

/** The session a line's evaluation speaks of: the newest among its joints. */
const judgedSessionOf = (evaluation: Evaluation, line: LineEvaluation): string | null =>
  evaluation.joints
    .filter((one) => line.gatedBy.includes(one.joint))
    .map((one) => one.sessionId)
    .find((id) => id !== null) ?? null;

const decisionOf = (look: Look, line: LineEvaluation): string | null => {
  const joints = [...line.reasons.map((reason) => reason.joint), ...line.gatedBy];
  return joints.map((joint) => look.decisionIds.get(joint)).find((id) => id !== undefined) ?? null;
};

/** The same was said already of the same session: word, version, dose and what it tells the worklist. */
const isKnown = (look: Look, line: LineEvaluation, proposal: DoseProposal): boolean => {
  const newest = look.earlier.find((row) => row.itemId === line.itemId);
  return (
    newest !== undefined &&
    newest.prescriptionId === line.version.id &&
    newest.sessionId === judgedSessionOf(look.evaluation, line) &&
    newest.decision === proposal.decision &&
    JSON.stringify([newest.dose, newest.worklist]) === JSON.stringify([proposal.dose, proposal.worklist])
  );
};

const waitingFor = async (look: Look, itemId: string) =>
  unsigned(await prescriptionsOf(look.access, look.record.patientId)).filter(
    (row) => row.itemId === itemId && row.origin !== 'clinician',
  );

/** An increase nobody has signed falls away when a later answer no longer carries it. */
const withdrawWaiting = async (look: Look, itemId: string): Promise<void> => {
  for (const row of await waitingFor(look, itemId)) {
    const reason = 'A later answer no longer carries this change.';
    await endPrescription(look.access, look.record.patientId, row.id, reason);
  }
};

/** The same increase, already waiting for its signature, goes on waiting. */
const alreadyWaiting = async (look: Look, itemId: string, proposal: DoseProposal): Promise<string | null> => {
  if (proposal.effect !== 'awaits-signature') return null;
  const same = (await waitingFor(look, itemId)).find(
    (row) => JSON.stringify(row.dose) === JSON.stringify(proposal.dose),
  );
  return same?.id ?? null;
};

/** Joints the proposed exercise loads; those of the present one stay, so that nothing drops out of sight. */
const jointsOf = (present: readonly Joint[], dose: Dose): readonly Joint[] => [
  ...new Set([
    ...present,
    ...(exerciseById(dose.exerciseId) ? jointsLoaded(dose.exerciseId, dose.side) : []),
  ]),
];

const becomes = async (
  look: Look,
  line: LineEvaluation,
  proposal: DoseProposal,
  decisionId: string,
): Promise<string | null> => {
  const { access, record, ground } = look;
  const waiting = await alreadyWaiting(look, line.itemId, proposal);
  if (waiting) return waiting;
  await withdrawWaiting(look, line.itemId);
  if (proposal.effect === 'repeat') return null;
  const { version } = line;
  const origin =
    proposal.kind === 'return' ? 'return' : proposal.kind === 'ease-back' ? 'ease-back' : 'progress';
  const id = await addVersion(access, record.patientId, {
    itemId: line.itemId,
    dose: proposal.dose,
    badDay: proposal.badDay,
    joints: jointsOf(version.joints, proposal.dose),
    cautions: cautionsOfDose(ground, proposal.dose, jointsOf(version.joints, proposal.dose)),
    working: changesForClinician(proposal),
    origin,
    decisionId,
  });
  if (proposal.effect === 'acts-at-once') {
    const signed = (await prescriptionsOf(access, record.patientId)).find((row) => row.id === version.id);
    await carrySignature(access, record.patientId, id, signed?.signedName ?? '');
  }
  return id;
};

const storeLine = async (look: Look, line: LineEvaluation, proposal: DoseProposal): Promise<void> => {
  const decisionId = decisionOf(look, line);
  if (!decisionId || !isJudged(look.evaluation, line) || isKnown(look, line, proposal)) return;
  const title = exerciseById(line.version.dose.exerciseId)?.title ?? line.version.dose.exerciseId;
  const becameId = await becomes(look, line, proposal, decisionId);
  await storeProposal(look.access, look.record.patientId, {
    itemId: line.itemId,
    prescriptionId: line.version.id,
    decisionId,
    sessionId: judgedSessionOf(look.evaluation, line),
    decision: proposal.decision,
    kind: proposal.kind,
    effect: proposal.effect,
    contact: proposal.contact,
    worklist: proposal.worklist,
    preApprovalId: proposal.preApprovalId,
    becameId,
    dose: proposal.dose,
    badDay: proposal.badDay,
    cautions: cautionsOfDose(look.ground, proposal.dose, jointsOf(line.version.joints, proposal.dose)),
    changes: changesForClinician(proposal),
    patientText: changesForPatient(proposal, title),
  });
};

export const proposeDoses = async (
  access: Access,
  record: PatientRecord,
  evaluation: Evaluation,
  decisionIds: ReadonlyMap<Joint, string>,
  choices: ChoiceValues,
): Promise<void> => {
  const patient = await patientOf(access, record.patientId);
  if (!patient || evaluation.lines.length === 0) return;
  const ground = await groundFor(access, patient);
  const earlier = await proposalsOf(access, record.patientId);
  const approvals = await preApprovalsOf(access, record.patientId);
  const home = { equipment: patient.profile?.ownedEquipment ?? [], loadsKg: record.ownedLoadsKg };
  const ladder = ladderAtHome(anthropometryOf(ground), home);
  const contextOf = (itemId: string): LineContext => {
    const line = evaluation.lines.find((one) => one.itemId === itemId);
    const preApproval = approvals.filter((row) => row.itemId === itemId).at(-1) ?? null;
    const since = preApproval
      ? earlier.filter((row) => row.itemId === itemId && row.madeAt >= preApproval.signedAt)
      : [];
    return {
      ladder,
      choices,
      easeBacksBefore: easeBacksBefore(earlier, itemId, line ? judgedSessionOf(evaluation, line) : null),
      preApproval,
      decisionsSinceApproval: since.map((row) => row.decision),
      screeningUntil: line ? screenedUntil(ground, line.version.dose.method) : null,
    };
  };
  const proposals = nextDoses(record, evaluation, contextOf);
  const look: Look = { access, record, evaluation, decisionIds, ground, earlier };
  for (const line of evaluation.lines) await storeLine(look, line, proposals.get(line.itemId)!);
};
