/**
 * The dose after a decision, whole, for one prescribed exercise. The engine proposes: a reduction acts at
 * once, and repetitions inside the signed band; every other increase waits for a signature or leans on a signed
 * pre-approval, and unsigned means the last dose again. Cautions are generated anew for the proposed dose by
 * whoever stores it.
 */

import type { Dose } from '../prescribing/dose.ts';
import { loadsFor } from '../prescribing/loads-at-place.ts';
import type { PatientRecord, PrescriptionVersion } from '../record/record.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { dayMilliseconds, dayNumber } from '../time/day.ts';
import type { Contact, DecisionWord } from './answers.ts';
import { contactRank } from './decide.ts';
import { boundByLimits, keptFromClosed } from './dose/bound.ts';
import { cutWaits } from './dose/cut-waits.ts';
import { easeBack } from './dose/ease-back.ts';
import { flareEndedSince, wasInFlare } from './dose/flares.ts';
import { stepInBand } from './dose/in-band.ts';
import { type LimitInForce, limitsInForce } from './dose/limits.ts';
import { type ApprovalContext, approvalEnd, type PreApproval } from './dose/pre-approval.ts';
import type { Candidate, DoseProposal, Ladder } from './dose/proposal.ts';
import { type StepContext, stepLowLoad, stepOcclusion, stepVariation } from './dose/steps.ts';
import { historyOf, signedDose } from './dose/versions-of-item.ts';
import { changesBetween, easierSession } from './dose/volume.ts';
import { floorDose, returnStep, type ToleratedDose } from './dose/way-back.ts';
import type { Moment } from './facts/judged-session.ts';
import type { ItemEvaluation } from './scope.ts';
import { engineSettingValues, isOnSinceVersion2 } from './settings.ts';

export interface DoseQuestion {
  readonly record: PatientRecord;
  readonly item: ItemEvaluation;
  readonly at: Moment;
  /** Longest flare among the joints that gate the line. */
  readonly flareDays: number;
  /** Ease-back decisions on the line directly before this one; since version 2 those in a reported flare are passed over. */
  readonly easeBacksBefore: number;
  readonly tolerated: readonly ToleratedDose[];
  readonly ladder: Ladder;
  /** Scheme an occlusion dose is on its way to; the one last signed by a clinician when left out. */
  readonly targetScheme?: readonly number[];
  readonly preApproval?: PreApproval | null;
  readonly decisionsSinceApproval?: readonly DecisionWord[];
  /** Last day number on which the screening is current; null = not screened, left out = not followed here. */
  readonly screeningUntil?: number | null;
  readonly settings?: SettingValues;
}

/** Those that exist where the dose in force is done. */
const loadsAt = ({ record, item }: DoseQuestion): readonly number[] => loadsFor(record, item.version.dose);

const stepUp = (question: DoseQuestion, limits: readonly LimitInForce[], signed: Dose): Candidate => {
  const { item, ladder } = question;
  const settings = engineSettingValues(question.settings);
  const dose = item.version.dose;
  const context: StepContext = {
    largestStep: item.largestStep ?? 'repetitions',
    settings,
    loadsKg: loadsAt(question),
    limits,
    ladder,
    signed,
  };
  if (dose.method === 'low-load') return stepLowLoad(dose, context);
  if (dose.method === 'variation') return stepVariation(dose, context);
  const target = question.targetScheme ?? (signed.method === 'occlusion' ? signed.scheme : dose.scheme);
  return stepOcclusion(dose, target, context);
};

/** A dose nobody has done yet is not raised again, however well the dose before it went. */
const isTried = (record: PatientRecord, version: PrescriptionVersion): boolean =>
  record.sessions.some((session) => session.sets.some((set) => set.prescriptionId === version.id));

const lastCutDay = (history: readonly PrescriptionVersion[]): number | null => {
  const cut = history.filter((one) => one.origin === 'ease-back').at(-1);
  return cut ? Math.floor(cut.signedAt / dayMilliseconds) : null;
};

const candidateFor = (
  question: DoseQuestion,
  history: readonly PrescriptionVersion[],
  limits: readonly LimitInForce[],
): Candidate => {
  const { item, record, at } = question;
  const { version } = item;
  const settings = engineSettingValues(question.settings);
  const signed = signedDose(history, version);
  const day = dayNumber(at.day);
  if (item.decision === 'pause') return { kind: 'stop', dose: version.dose };
  if (item.decision === 'hold') return { kind: 'same', dose: version.dose };
  if (item.decision === 'ease-back') {
    const afterFlare = isOnSinceVersion2('after-flare-days', settings) ? settings['after-flare-days'] : 0;
    return easeBack({
      version,
      history,
      instant: at.instant,
      flareDays: question.flareDays,
      flareEnded: flareEndedSince(record, item.limitingJoints, day, at.instant, afterFlare),
      floorDose: floorDose(question.tolerated, version.dose, signed, day, settings),
      easeBacksBefore: question.easeBacksBefore,
      waits: cutWaits({ ...question, settings }),
      loadsKg: loadsAt(question),
      ladder: question.ladder,
      settings,
    });
  }
  if (!isTried(record, version)) return { kind: 'same', dose: version.dose };
  return (
    returnStep(version.dose, question.tolerated, day, lastCutDay(history), loadsAt(question), settings) ??
    stepUp(question, limits, signed)
  );
};

/** An easier exercise the patient was never signed for is new to them and waits, although it is a reduction. */
const isSignedExercise = (dose: Dose, history: readonly PrescriptionVersion[]): boolean =>
  history.some(
    (version) => version.dose.exerciseId === dose.exerciseId || version.badDay.exerciseId === dose.exerciseId,
  );

const moreUrgent = (a: Contact, b: Contact): Contact => (contactRank[a] < contactRank[b] ? a : b);

const effectOf = (
  candidate: Candidate,
  history: readonly PrescriptionVersion[],
  needsNoSignature: boolean,
): DoseProposal['effect'] => {
  if (candidate.kind === 'same' || candidate.kind === 'stop') return 'repeat';
  if (candidate.kind === 'ease-back') {
    return isSignedExercise(candidate.dose, history) ? 'acts-at-once' : 'awaits-signature';
  }
  return needsNoSignature ? 'acts-at-once' : 'awaits-signature';
};

/** Where a clinician lets a dose progress against the rules, the step waits for that signature. */
const inBand = (
  candidate: Candidate,
  { item, record, at, screeningUntil, settings }: DoseQuestion,
  history: readonly PrescriptionVersion[],
): ReturnType<typeof stepInBand> =>
  item.isOverruled
    ? null
    : stepInBand(candidate, {
        present: item.version.dose,
        signed: signedDose(history, item.version),
        history,
        at,
        screeningUntil,
        wasInFlare: (cut) => wasInFlare(record, item.limitingJoints, cut.signedAt),
        settings: engineSettingValues(settings),
      });

export const nextDose = (question: DoseQuestion): DoseProposal => {
  const { item, record, at } = question;
  const { version } = item;
  const day = dayNumber(at.day);
  const history = historyOf(record, version);
  const limits = limitsInForce(record.limits, version.joints, day);
  const present = version.dose;
  const found = boundByLimits(candidateFor(question, history, limits), present, limits, loadsAt(question));
  const wanted = keptFromClosed(found, present, record.limits, at.day);
  const approval = question.preApproval ?? null;
  const approvalContext: ApprovalContext = {
    instant: at.instant,
    day,
    history,
    decisionsSince: question.decisionsSinceApproval ?? [],
    limits,
    screeningUntil: question.screeningUntil ?? null,
    settings: engineSettingValues(question.settings),
  };
  const isApproved =
    approval !== null && approvalEnd(approval, wanted, version.itemId, approvalContext) === null;
  const band = inBand(wanted, question, history);
  const candidate: Candidate =
    band === 'too-soon' && !isApproved ? { kind: 'same', dose: present, withheld: 'step-this-week' } : wanted;
  const worklist = [
    ...(candidate.worklist ?? []),
    ...(limits.some((limit) => limit.isExpired) ? (['limit-expired'] as const) : []),
  ];
  const needsContact = worklist.includes('floor-reached') || worklist.includes('no-dose-within-limit');
  return {
    decision: item.decision,
    kind: candidate.kind,
    effect: effectOf(candidate, history, isApproved || band === 'acts'),
    dose: candidate.dose,
    badDay: easierSession(version.badDay, version.dose, candidate.dose, candidate.kind === 'ease-back'),
    changes: changesBetween(version.dose, candidate.dose),
    named: candidate.named ?? [],
    withheld: candidate.withheld ?? null,
    contact: needsContact ? moreUrgent(item.contact, 'routine') : item.contact,
    worklist,
    limits,
    preApprovalId: isApproved ? (approval?.id ?? null) : null,
  };
};
