/** The dose that follows for each prescribed exercise, stored with what it became. */
import { easedInARow } from '#core/decision/dose/eased-in-a-row.ts';
import type { DoseProposal } from '#core/decision/dose/proposal.ts';
import { type ItemContext, nextDoses } from '#core/decision/next-doses.ts';
import type { Evaluation, ItemEvaluation } from '#core/decision/scope.ts';
import { exerciseById, jointsLoaded } from '#core/exercises/catalogue.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { ladderAtHome } from '#core/exercises/ladder/ladder-at-home.ts';
import { changesForClinician } from '#core/prescribing/changes-in-words.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { doseChangeForPatient } from '#core/prescribing/dose-change-for-patient.ts';
import type { PrescribingContext } from '#core/prescribing/prescribing-context.ts';
import { cautionsOfDose } from '#core/prescribing/propose.ts';
import { anthropometryOf } from '#core/prescribing/variation/variation-for-patient.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { screenedUntil } from '#core/screening/screened-until.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Access } from '../access.ts';
import { type Proposal, proposalsOf, storeProposal } from '../decision/decisions.ts';
import { patientOf } from '../patients/people.ts';
import { addVersion, carrySignature, endPrescription } from './prescribing.ts';
import { prescribingContextFor } from './prescribing-context.ts';
import { prescriptionsOf, unsigned } from './prescriptions.ts';
import { usablePreApprovals } from './usable-pre-approvals.ts';

interface Context {
  readonly access: Access;
  readonly record: PatientRecord;
  readonly evaluation: Evaluation;
  readonly decisionIds: ReadonlyMap<Joint, string>;
  readonly prescribing: PrescribingContext;
  /** Newest first. */
  readonly earlier: readonly Proposal[];
}

/** Whether a line's joints have all they need to be judged, or something stops it now. */
const isJudged = (evaluation: Evaluation, item: ItemEvaluation): boolean =>
  item.decision === 'pause' ||
  item.decision === 'ease-back' ||
  item.limitingJoints.some((id) => evaluation.joints.find((one) => one.joint === id)?.state === 'complete');

/** The session a line's evaluation speaks of: the newest among its joints. */
const judgedSessionOf = (evaluation: Evaluation, item: ItemEvaluation): string | null =>
  evaluation.joints
    .filter((one) => item.limitingJoints.includes(one.joint))
    .map((one) => one.sessionId)
    .find((id) => id !== null) ?? null;

const easedBefore = (
  item: ItemEvaluation,
  at: Pick<Context, 'record' | 'evaluation' | 'earlier'> & { readonly settings: SettingValues },
): number =>
  easedInARow(
    at.earlier.filter(({ itemId }) => itemId === item.itemId),
    { ...at, joints: item.limitingJoints, judgedSessionId: judgedSessionOf(at.evaluation, item) },
  );

const decisionOf = (at: Context, item: ItemEvaluation): string | null => {
  const joints = [...item.reasons.map((reason) => reason.joint), ...item.limitingJoints];
  return joints.map((joint) => at.decisionIds.get(joint)).find((id) => id !== undefined) ?? null;
};

/** The same was said already of the same session: word, version, dose and what it tells the worklist. */
const isKnown = (at: Context, item: ItemEvaluation, proposal: DoseProposal): boolean => {
  const newest = at.earlier.find((row) => row.itemId === item.itemId);
  return (
    newest !== undefined &&
    newest.prescriptionId === item.version.id &&
    newest.sessionId === judgedSessionOf(at.evaluation, item) &&
    newest.decision === proposal.decision &&
    JSON.stringify([newest.dose, newest.worklist]) === JSON.stringify([proposal.dose, proposal.worklist])
  );
};

const waitingFor = async (at: Context, itemId: string) =>
  unsigned(await prescriptionsOf(at.access, at.record.patientId)).filter(
    (row) => row.itemId === itemId && row.origin !== 'clinician',
  );

/** An increase nobody has signed falls away when a later answer no longer carries it. */
const withdrawWaiting = async (at: Context, itemId: string): Promise<void> => {
  for (const row of await waitingFor(at, itemId)) {
    const reason = 'A later answer no longer carries this change.';
    await endPrescription(at.access, at.record.patientId, row.id, reason);
  }
};

/** The same increase, already waiting for its signature, goes on waiting. */
const sameWaiting = async (at: Context, itemId: string, proposal: DoseProposal): Promise<string | null> => {
  if (proposal.effect !== 'awaits-signature') return null;
  const same = (await waitingFor(at, itemId)).find(
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
  at: Context,
  item: ItemEvaluation,
  proposal: DoseProposal,
  decisionId: string,
): Promise<string | null> => {
  const { access, record, prescribing } = at;
  const waiting = await sameWaiting(at, item.itemId, proposal);
  if (waiting) return waiting;
  await withdrawWaiting(at, item.itemId);
  if (proposal.effect === 'repeat') return null;
  const { version } = item;
  const origin =
    proposal.kind === 'return' ? 'return' : proposal.kind === 'ease-back' ? 'ease-back' : 'progress';
  const id = await addVersion(access, record.patientId, {
    itemId: item.itemId,
    dose: proposal.dose,
    badDay: proposal.badDay,
    joints: jointsOf(version.joints, proposal.dose),
    cautions: cautionsOfDose(prescribing, proposal.dose, jointsOf(version.joints, proposal.dose)),
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

const storeItem = async (at: Context, item: ItemEvaluation, proposal: DoseProposal): Promise<void> => {
  const decisionId = decisionOf(at, item);
  if (!decisionId || !isJudged(at.evaluation, item) || isKnown(at, item, proposal)) return;
  const becameId = await becomes(at, item, proposal, decisionId);
  await storeProposal(at.access, at.record.patientId, {
    itemId: item.itemId,
    prescriptionId: item.version.id,
    decisionId,
    sessionId: judgedSessionOf(at.evaluation, item),
    decision: proposal.decision,
    kind: proposal.kind,
    effect: proposal.effect,
    contact: proposal.contact,
    worklist: proposal.worklist,
    preApprovalId: proposal.preApprovalId,
    becameId,
    dose: proposal.dose,
    badDay: proposal.badDay,
    cautions: cautionsOfDose(at.prescribing, proposal.dose, jointsOf(item.version.joints, proposal.dose)),
    changes: changesForClinician(proposal),
    changeForPatient: doseChangeForPatient(proposal, item.version.dose.exerciseId),
  });
};

export const proposeDoses = async (
  access: Access,
  record: PatientRecord,
  evaluation: Evaluation,
  decisionIds: ReadonlyMap<Joint, string>,
  settings: SettingValues,
): Promise<void> => {
  const patient = await patientOf(access, record.patientId);
  if (!patient || evaluation.items.length === 0) return;
  const prescribing = await prescribingContextFor(access, patient);
  const earlier = await proposalsOf(access, record.patientId);
  const approvals = await usablePreApprovals(access, record.patientId);
  const home = { equipment: patient.profile?.ownedEquipment ?? [], loadsKg: record.ownedLoadsKg };
  const ladder = ladderAtHome(anthropometryOf(prescribing), home);
  const contextOf = (itemId: string): ItemContext => {
    const item = evaluation.items.find((one) => one.itemId === itemId);
    const preApproval = approvals.filter((row) => row.itemId === itemId).at(-1) ?? null;
    const since = preApproval
      ? earlier.filter((row) => row.itemId === itemId && row.madeAt >= preApproval.signedAt)
      : [];
    return {
      ladder,
      settings,
      easeBacksBefore: item ? easedBefore(item, { record, evaluation, earlier, settings }) : 0,
      preApproval,
      decisionsSinceApproval: since.map((row) => row.decision),
      screeningUntil: item ? screenedUntil(prescribing, item.version.dose.method) : null,
    };
  };
  const proposals = nextDoses(record, evaluation, contextOf);
  const at: Context = { access, record, evaluation, decisionIds, prescribing, earlier };
  for (const item of evaluation.items) await storeItem(at, item, proposals.get(item.itemId)!);
};
