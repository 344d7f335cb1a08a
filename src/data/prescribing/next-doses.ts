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
import { type Proposal, proposalsOf } from '../decision/decisions.ts';
import { patientOf } from '../patients/people.ts';
import type { NewVersion } from './prescribing.ts';
import { prescribingContextFor } from './prescribing-context.ts';
import { type Prescription, prescriptionsOf, unsigned } from './prescriptions.ts';
import { usablePreApprovals } from './usable-pre-approvals.ts';
import { type WrittenDose, writeDoses } from './write-doses.ts';

interface Context {
  readonly access: Access;
  readonly record: PatientRecord;
  readonly evaluation: Evaluation;
  readonly decisionIds: ReadonlyMap<Joint, string>;
  readonly prescribing: PrescribingContext;
  /** Newest first. */
  readonly earlier: readonly Proposal[];
  /** Every version of the patient. */
  readonly versions: readonly Prescription[];
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

/** An increase nobody has signed, from an earlier answer. */
const waitingFor = (at: Context, itemId: string): readonly Prescription[] =>
  unsigned(at.versions).filter((row) => row.itemId === itemId && row.origin !== 'clinician');

/** The same increase, already waiting for its signature, goes on waiting. */
const sameWaiting = (waiting: readonly Prescription[], proposal: DoseProposal): string | null => {
  if (proposal.effect !== 'awaits-signature') return null;
  const same = waiting.find((row) => JSON.stringify(row.dose) === JSON.stringify(proposal.dose));
  return same?.id ?? null;
};

/** Joints the proposed exercise loads; those of the present one stay, so that nothing drops out of sight. */
const jointsOf = (present: readonly Joint[], dose: Dose): readonly Joint[] => [
  ...new Set([
    ...present,
    ...(exerciseById(dose.exerciseId) ? jointsLoaded(dose.exerciseId, dose.side) : []),
  ]),
];

const versionOf = (
  at: Context,
  { itemId, version }: ItemEvaluation,
  proposal: DoseProposal,
  decisionId: string,
): NewVersion => {
  const joints = jointsOf(version.joints, proposal.dose);
  const { kind, dose, badDay } = proposal;
  return {
    itemId,
    dose,
    badDay,
    joints,
    cautions: cautionsOfDose(at.prescribing, dose, joints),
    working: changesForClinician(proposal),
    origin: kind === 'return' ? 'return' : kind === 'ease-back' ? 'ease-back' : 'progress',
    decisionId,
  };
};

const writtenFor = (at: Context, item: ItemEvaluation, proposal: DoseProposal): WrittenDose | null => {
  const decisionId = decisionOf(at, item);
  if (!decisionId || !isJudged(at.evaluation, item) || isKnown(at, item, proposal)) return null;
  const waiting = waitingFor(at, item.itemId);
  const same = sameWaiting(waiting, proposal);
  const isNew = same === null && proposal.effect !== 'repeat';
  const signed = at.versions.find((row) => row.id === item.version.id);
  return {
    withdrawn: same === null ? waiting.map(({ id }) => id) : [],
    version: isNew ? versionOf(at, item, proposal, decisionId) : null,
    signedName: isNew && proposal.effect === 'acts-at-once' ? (signed?.signedName ?? '') : null,
    proposal: {
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
      becameId: same,
      dose: proposal.dose,
      badDay: proposal.badDay,
      cautions: cautionsOfDose(at.prescribing, proposal.dose, jointsOf(item.version.joints, proposal.dose)),
      changes: changesForClinician(proposal),
      changeForPatient: doseChangeForPatient(proposal, item.version.dose.exerciseId),
    },
  };
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
  const versions = await prescriptionsOf(access, record.patientId);
  const at: Context = { access, record, evaluation, decisionIds, prescribing, earlier, versions };
  await writeDoses(
    access,
    record.patientId,
    evaluation.items.flatMap((item) => writtenFor(at, item, proposals.get(item.itemId)!) ?? []),
  );
};
