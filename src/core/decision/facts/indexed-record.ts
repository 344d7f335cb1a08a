/** What looking back at a patient's history reads: `record-index.ts` arranges it. */
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type {
  Baseline,
  EffusionRecord,
  JointMorningAnswers,
  JointSessionAnswers,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
  SetRecord,
} from '#core/record/record.ts';

/** What a session did of one line, against the version it was done at; `item-work.ts` works it out. */
export interface ItemWork {
  readonly version: PrescriptionVersion;
  /** The dose meant for that day: the prescribed one or the signed easier session. */
  readonly dose: Dose;
  /** The easier session was done of this line. */
  readonly isEasier: boolean;
  readonly sets: readonly SetRecord[];
  /** Share of the floor done; null where it is unknown. */
  readonly donePercent: number | null;
}

export interface IndexedSession {
  readonly session: SessionRecord;
  /** Instant used for order: a doubtful clock says nothing, so the arrival stands in for it. */
  readonly began: number;
  readonly day: number;
  /** Of every line; filled when first asked for. */
  work: readonly ItemWork[] | null;
}

export interface JointSession extends Omit<IndexedSession, 'work'> {
  readonly whole: IndexedSession;
  /** null when the joint was loaded and not asked about. */
  readonly answers: JointSessionAnswers | null;
  /** Of the lines that load the joint; filled when first asked for. */
  work: readonly ItemWork[] | null;
}

export interface IndexedMorning {
  readonly morning: MorningRecord;
  readonly day: number;
}

export interface JointMorning extends IndexedMorning {
  readonly answers: JointMorningAnswers;
}

export interface RecordIndex {
  readonly record: PatientRecord;
  readonly versions: ReadonlyMap<string, PrescriptionVersion>;
  readonly sessions: readonly IndexedSession[];
  readonly mornings: readonly IndexedMorning[];
  /** Mornings whose day cannot be trusted; few, and looked at for danger only. */
  readonly doubtfulMornings: readonly MorningRecord[];
  readonly sessionsOf: ReadonlyMap<Joint, readonly JointSession[]>;
  readonly morningsOf: ReadonlyMap<Joint, readonly JointMorning[]>;
  readonly baselinesOf: ReadonlyMap<Joint, readonly (Baseline & { readonly setDay: number })[]>;
  readonly effusionsOf: ReadonlyMap<Joint, readonly (EffusionRecord & { readonly number: number })[]>;
  /** Day numbers, sorted, each once. */
  readonly plannedDays: readonly number[];
  readonly sessionDays: readonly number[];
}
