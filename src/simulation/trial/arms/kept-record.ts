/** The record an engine arm keeps of one person, as the product would. */
import type {
  Baseline,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
} from '#core/record/record.ts';
import { dayFromNumber } from '#core/time/day.ts';
import { dayMilliseconds, firstDay, joint, ownedLoadsKg, startDose, startEasier } from '../start.ts';

const startVersion: PrescriptionVersion = {
  id: 'line-1',
  itemId: 'line',
  version: 1,
  dose: startDose,
  badDay: startEasier,
  joints: [joint],
  signedAt: (firstDay - 1) * dayMilliseconds,
  endedAt: null,
  origin: 'clinician',
};

export interface KeptRecord {
  readonly prescriptions: PrescriptionVersion[];
  readonly sessions: SessionRecord[];
  readonly mornings: MorningRecord[];
  readonly baselines: Baseline[];
  readonly plannedDays: number[];
  readonly inflammatory: boolean;
}

export const keepRecord = (inflammatory: boolean, baselines: readonly Baseline[]): KeptRecord => ({
  prescriptions: [startVersion],
  sessions: [],
  mornings: [],
  baselines: [...baselines],
  plannedDays: [],
  inflammatory,
});

/** A fresh value each time, because the engine arranges a record once and never looks again. */
export const recordOf = (kept: KeptRecord): PatientRecord => ({
  patientId: 'invented',
  followedJoints: [joint],
  inflammatoryArthritis: kept.inflammatory,
  prescriptions: [...kept.prescriptions],
  sessions: kept.sessions,
  mornings: kept.mornings,
  effusions: [],
  baselines: [...kept.baselines],
  planned: kept.plannedDays.map((day) => ({ day: dayFromNumber(day) })),
  events: [],
  limits: [],
  ownedLoadsKg,
});

export const versionInForce = ({ prescriptions }: KeptRecord): PrescriptionVersion => prescriptions.at(-1)!;

export const addVersion = (
  kept: KeptRecord,
  next: Pick<PrescriptionVersion, 'dose' | 'badDay' | 'origin'>,
  instant: number,
): void => {
  const current = versionInForce(kept);
  kept.prescriptions[kept.prescriptions.length - 1] = { ...current, endedAt: instant };
  const version = current.version + 1;
  kept.prescriptions.push({ ...current, ...next, id: `line-${version}`, version, signedAt: instant });
};
