/** The record an engine arm keeps of one person, as the product would. */
import type { Baseline, PatientRecord, PrescriptionVersion } from '#core/record/record.ts';
import { type Day, dayFromNumber } from '#core/time/day.ts';
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
  /** A new value after each change and only then: the engine arranges a record once and never looks again. */
  now: PatientRecord;
}

export const keepRecord = (inflammatory: boolean, baselines: readonly Baseline[]): KeptRecord => ({
  now: {
    patientId: 'invented',
    followedJoints: [joint],
    inflammatoryArthritis: inflammatory,
    prescriptions: [startVersion],
    sessions: [],
    mornings: [],
    effusions: [],
    baselines,
    planned: [],
    events: [],
    limits: [],
    ownedLoadsKg,
  },
});

type Growing = 'sessions' | 'mornings' | 'baselines';

export const keep = <Name extends Growing>(
  kept: KeptRecord,
  name: Name,
  entry: PatientRecord[Name][number],
): void => {
  kept.now = { ...kept.now, [name]: [...kept.now[name], entry] };
};

export const plan = (kept: KeptRecord, day: number): void => {
  kept.now = { ...kept.now, planned: [...kept.now.planned, { day: dayFromNumber(day) }] };
};

/** Ordered rest is no planned session. */
export const takeFromPlan = (kept: KeptRecord, day: number): void => {
  const rested: Day = dayFromNumber(day);
  kept.now = { ...kept.now, planned: kept.now.planned.filter((one) => one.day !== rested) };
};

export const versionInForce = ({ now }: KeptRecord): PrescriptionVersion => now.prescriptions.at(-1)!;

export const addVersion = (
  kept: KeptRecord,
  next: Pick<PrescriptionVersion, 'dose' | 'badDay' | 'origin'>,
  instant: number,
): void => {
  const current = versionInForce(kept);
  const version = current.version + 1;
  const prescriptions = [
    ...kept.now.prescriptions.slice(0, -1),
    { ...current, endedAt: instant },
    { ...current, ...next, id: `line-${version}`, version, signedAt: instant },
  ];
  kept.now = { ...kept.now, prescriptions };
};
