/** What a simulated patient carries from day to day: one joint, one low-load exercise, and the record so far. */
import type { DecisionWord } from '#core/decision/answers.ts';
import type { EngineSettingValues } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type {
  Baseline,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
} from '#core/record/record.ts';
import type { Seeded } from '../raises/seeded.ts';
import type { DiaryType } from './diary-types.ts';

export interface SimulationSettings {
  readonly weeks: number;
  readonly settings: EngineSettingValues;
  /** Points a clinician widens the usual band by, where the diary proposes as much; 0 = the default. */
  readonly widenedBy: number;
  /** Days until a clinician has seen a paused plan. */
  readonly pauseDays: number;
}

export interface Simulated {
  readonly decisions: readonly {
    readonly word: DecisionWord;
    readonly isFlare: boolean;
    readonly rules: readonly string[];
  }[];
  /** Volume of the last dose as a share of the first. */
  readonly endShare: number;
  readonly sessions: { readonly full: number; readonly easier: number; readonly none: number };
}

export const joint: Joint = 'left-knee';
export const firstDay = 20_454;
export const dayMilliseconds = 86_400_000;
export const settlingDays = 14;

export const startDose: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'invented-leg-exercise',
  side: 'left',
  sets: 3,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  repetitions: { low: 15, high: 25 },
  reserve: 2,
  loadKg: 10,
  oneRepMaxKg: 40,
};

export const startVersion: PrescriptionVersion = {
  id: 'line-1',
  itemId: 'line',
  version: 1,
  dose: startDose,
  badDay: { ...startDose, sets: 2, repetitions: { low: 10, high: 10 }, reserve: 3 },
  joints: [joint],
  signedAt: (firstDay - 1) * dayMilliseconds,
  endedAt: null,
  origin: 'clinician',
};

export interface Run {
  readonly type: DiaryType;
  readonly settings: SimulationSettings;
  readonly random: Seeded;
  readonly prescriptions: PrescriptionVersion[];
  readonly sessions: SessionRecord[];
  readonly mornings: MorningRecord[];
  readonly baselines: Baseline[];
  readonly planned: { day: string }[];
  readonly decisions: Simulated['decisions'][number][];
  readonly counts: { full: number; easier: number; none: number };
  easeBacks: number;
  pausedUntil: number;
}

/** A fresh value each time, because the engine arranges a record once and never looks again. */
export const recordOf = (run: Run): PatientRecord => ({
  patientId: 'invented',
  followedJoints: [joint],
  inflammatoryArthritis: run.type.inflammatory,
  prescriptions: [...run.prescriptions],
  sessions: run.sessions,
  mornings: run.mornings,
  effusions: [],
  baselines: [...run.baselines],
  planned: run.planned,
  events: [],
  limits: [],
  ownedLoadsKg: Array.from({ length: 41 }, (_, step) => 5 + step * 0.5),
});
