/** Random histories of one patient: some weeks of sessions and mornings with gaps, late and doubtful entries. */
import { redFlags } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import {
  type Baseline,
  type EffusionRecord,
  effusions,
  type JointMorningAnswers,
  type JointSessionAnswers,
  type MorningRecord,
  type PatientRecord,
  type PrescriptionVersion,
  type SessionRecord,
  type SetRecord,
  stopReasons,
  swellings,
} from '#core/record/record.ts';
import { dayFromNumber } from '#core/time/day.ts';
import { firstDay, noonOf, versionsOf } from './random-prescriptions.ts';
import type { Seeded } from './seeded.ts';

const dayMilliseconds = 86_400_000;
const hour = 3_600_000;

export const endOf = (day: number): number => (day + 1) * dayMilliseconds - 1;

/** Sorest knees first; the arm is there to be left alone by them. */
const asked: readonly Joint[] = ['left-knee', 'right-knee', 'left-shoulder'];

const score = (random: Seeded, quiet: number): number | null =>
  random.chance(0.03) ? null : random.chance(quiet) ? random.below(3) : random.below(11);

const sessionAnswers = (joint: Joint, random: Seeded, quiet: number): JointSessionAnswers => ({
  joint,
  painBefore: score(random, quiet),
  painDuring: score(random, quiet),
  painAfter: score(random, quiet),
  painTwoHours: random.chance(0.5) ? 'not-applicable' : score(random, quiet),
  gaveWay: random.chance(0.02),
});

const setsOf = (version: PrescriptionVersion, random: Seeded): readonly SetRecord[] =>
  [1, 2, 3].map((set) => ({
    itemId: version.itemId,
    prescriptionId: version.id,
    set,
    repetitions: random.chance(0.02) ? null : random.chance(0.9) ? 25 : 6,
    loadKg: version.itemId === 'leg' ? (random.chance(0.01) ? null : 10) : null,
    reserve: random.chance(0.02) ? null : random.chance(0.9) ? 2 : 0,
    stopReason: random.chance(0.9) ? 'none' : random.pick(stopReasons),
  }));

const flagsOf = (random: Seeded): readonly string[] | null =>
  random.chance(0.02) ? null : random.chance(0.01) ? [random.pick(redFlags)] : [];

const sessionOn = (
  day: number,
  versions: readonly PrescriptionVersion[],
  random: Seeded,
  quiet: number,
): SessionRecord => {
  const beganAt = noonOf(day) + 5 * hour;
  const lines = random.chance(0.7) ? ['leg', 'arm'] : [random.pick(['leg', 'arm'])];
  const inForce = versions.filter(
    (version) =>
      lines.includes(version.itemId) &&
      version.signedAt <= beganAt &&
      (version.endedAt === null || version.endedAt > beganAt),
  );
  return {
    id: `session-${day}`,
    beganAt,
    recordedAt: beganAt + (random.chance(0.1) ? random.below(3) * dayMilliseconds : hour),
    day: dayFromNumber(day),
    kind: random.chance(0.9) ? 'full' : 'bad-day',
    sets: inForce.flatMap((version) => setsOf(version, random)),
    redFlags: flagsOf(random),
    extraPainRelief: random.chance(0.02) ? null : random.chance(0.03),
    didExtra: random.chance(0.02),
    joints: asked.map((joint) => sessionAnswers(joint, random, quiet)),
    clockDoubtful: random.chance(0.02),
  };
};

const morningAnswers = (joint: Joint, random: Seeded, quiet: number): JointMorningAnswers => ({
  joint,
  pain: score(random, quiet),
  stiffnessMinutes:
    joint === 'left-shoulder' ? 'not-applicable' : random.below(random.chance(quiet) ? 20 : 120),
  swelling:
    joint === 'left-shoulder' ? 'not-applicable' : random.chance(quiet) ? 'none' : random.pick(swellings),
  flare: random.chance(0.02) ? null : random.chance((1 - quiet) * 0.3),
});

const morningOn = (day: number, random: Seeded, quiet: number): MorningRecord => {
  const localMinute = random.chance(0.9) ? 240 + random.below(600) : random.below(1440);
  const answeredAt = day * dayMilliseconds + localMinute * 60_000;
  return {
    id: `morning-${day}`,
    day: dayFromNumber(day),
    recordedAt: answeredAt + (random.chance(0.1) ? random.below(3) * dayMilliseconds : 60_000),
    joints: asked.map((joint) => morningAnswers(joint, random, quiet)),
    redFlags: flagsOf(random),
    extraPainRelief: random.chance(0.02) ? null : random.chance(0.03),
    fatigue: random.chance(0.3) ? 'not-applicable' : random.below(6),
    clockDoubtful: random.chance(0.02),
    localMinute,
  };
};

const baselineOf = (joint: Joint, day: number, random: Seeded): Baseline => {
  const usualPain = random.below(4);
  return {
    joint,
    usualPain,
    usualPainTop: usualPain + random.below(3),
    acceptablePainLimit: 5 + random.below(2),
    usualStiffnessMinutes: 10,
    usualSwelling: 'none',
    usualEffusion: 'zero',
    usualFatigue: 3,
    setOn: dayFromNumber(day),
    setBy: 'clinician-1',
    dueForReview: random.chance(0.05),
    morningSpread: { standardDeviation: 0.8, values: 14 },
  };
};

const effusionsOf = (days: number, random: Seeded): readonly EffusionRecord[] =>
  random.chance(0.5)
    ? []
    : [7, 14, 21].map((after) => ({
        joint: 'left-knee',
        day: dayFromNumber(firstDay + Math.min(after, days)),
        grade: random.chance(0.8) ? random.pick(['zero', 'trace'] as const) : random.pick(effusions),
      }));

export const randomHistory = (random: Seeded, days = 30): PatientRecord => {
  const quiet = random.chance(0.5) ? 0.995 : 0.6 + random.next() * 0.4;
  const changeOn = firstDay + random.below(days);
  const prescriptions = [
    ...versionsOf('leg', ['left-knee', 'right-knee', 'left-hip'], changeOn),
    ...versionsOf('arm', ['left-shoulder'], changeOn),
  ];
  const all = Array.from({ length: days }, (_, place) => firstDay + place);
  const planned = all.filter((day) => day % 7 === 1 || day % 7 === 3 || day % 7 === 5);
  return {
    patientId: 'invented',
    followedJoints: asked,
    inflammatoryArthritis: random.chance(0.3),
    prescriptions,
    sessions: planned
      .filter(() => random.chance(0.92))
      .map((day) => sessionOn(day, prescriptions, random, quiet)),
    mornings: all.filter(() => random.chance(0.93)).map((day) => morningOn(day, random, quiet)),
    effusions: effusionsOf(days, random),
    baselines: asked.map((joint) => baselineOf(joint, firstDay - 1 + random.below(3), random)),
    planned: planned.map((day) => ({ day: dayFromNumber(day) })),
    events: random.chance(0.1)
      ? [{ day: dayFromNumber(firstDay + random.below(days)), kind: 'medicine-change', joint: null }]
      : [],
    limits: [],
    ownedLoadsKg: [8, 9, 10, 11, 12],
  };
};
