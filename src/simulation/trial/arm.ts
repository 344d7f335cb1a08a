/**
 * What an arm of the trial is. It is told what a clinic is told and answers with a dose; it knows nothing of
 * how the people are made, so another model of people can be put in its place.
 */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { MorningRecord, SessionRecord } from '#core/record/record.ts';

export interface PersonAtStart {
  /** As told at the first visit, whole 0–10. */
  readonly usualPain: number;
  readonly inflammatory: boolean;
}

/** The joint as it is. Only an arm that claims to see it may ask. */
export interface TrueJoint {
  /** What a dose done now would give the muscle (1 = in full) and add to the joint (points of pain). */
  readonly outlook: (dose: LowLoadDose) => { readonly stimulus: number; readonly overload: number };
}

export interface PlannedWork {
  readonly kind: 'full' | 'bad-day';
  /** The prescription version both doses belong to. */
  readonly prescriptionId: string;
  readonly dose: LowLoadDose;
  readonly easier: LowLoadDose;
}

/** What an arm did since it was last asked. */
export interface Acts {
  /** Increases a clinician signed. */
  readonly signed: number;
  readonly contacts: number;
  /** Of the contacts, those of the same day. */
  readonly sameDay: number;
  /** Usual values set by a clinician. */
  readonly baselines: number;
  /** Signatures, contacts and usual values; a weekly look of its own counts once, whatever is signed in it. */
  readonly clinicianActions: number;
  readonly raises: number;
  readonly cuts: number;
  readonly decisions: number;
  /** Of the decisions, those that said progress. */
  readonly progress: number;
  readonly talkedAboutOverdoing: boolean;
}

export const noActs: Acts = {
  signed: 0,
  contacts: 0,
  sameDay: 0,
  baselines: 0,
  clinicianActions: 0,
  raises: 0,
  cuts: 0,
  decisions: 0,
  progress: 0,
  talkedAboutOverdoing: false,
};

/** One person treated. Days are day numbers; each call comes in the order of the day. */
export interface Treatment {
  readonly morning: (day: number, entry: MorningRecord | null) => void;
  /** The clinician's weekly day. */
  readonly look: (day: number) => void;
  /** A session stands in the plan today; called before it is known whether the person comes. */
  readonly planned: (day: number) => void;
  /** The person is ready; null = no session today, by the arm's own rule. */
  readonly work: (day: number, painBefore: number | null, joint: TrueJoint) => PlannedWork | null;
  readonly session: (day: number, entry: SessionRecord) => void;
  /** The full dose now in force. */
  readonly dose: () => LowLoadDose;
  readonly acts: () => Acts;
}

export interface Arm {
  readonly id: string;
  readonly title: string;
  readonly treat: (person: PersonAtStart) => Treatment;
}
