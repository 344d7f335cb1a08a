/**
 * One invented patient over 26 weeks, through the engine and the dose rules. A clinician is played by
 * fixed habits: freezes usual values when they are ready or expire, signs every increase the morning it is
 * proposed, sees a paused plan three days later and lets it go on. One joint, one low-load exercise.
 */
import { dayFromNumber } from '#core/day.ts';
import type { DecisionWord } from '#core/engine/answers.ts';
import { beforeGate } from '#core/engine/before-gate.ts';
import type { EngineChoiceValues } from '#core/engine/choices.ts';
import { shareOf } from '#core/engine/dose/volume.ts';
import { factsFor } from '#core/engine/facts-from-record.ts';
import { nextDoses } from '#core/engine/next-dose.ts';
import { mustLatchBaseline, proposeBaseline } from '#core/engine/propose-baseline.ts';
import { evaluate } from '#core/engine/scope.ts';
import type { Joint } from '#core/joints.ts';
import type { LowLoadDose } from '#core/model/dose.ts';
import type {
  Baseline,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
} from '#core/model/record.ts';
import type { Seeded } from '../engine-trials/seeded.ts';
import type { DiaryType } from './diary-types.ts';
import { asScore, type DayOfJoint, jointCourse } from './joint-course.ts';

export interface SimulationSettings {
  readonly weeks: number;
  readonly choices: EngineChoiceValues;
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

const joint: Joint = 'left-knee';
const firstDay = 20_454;
const dayMilliseconds = 86_400_000;
const settlingDays = 14;

const startDose: LowLoadDose = {
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

const startVersion: PrescriptionVersion = {
  id: 'line-1',
  lineId: 'line',
  version: 1,
  dose: startDose,
  badDay: { ...startDose, sets: 2, repetitions: { low: 10, high: 10 }, reserve: 3 },
  joints: [joint],
  signedAt: (firstDay - 1) * dayMilliseconds,
  endedAt: null,
  origin: 'clinician',
};

interface Run {
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
const recordOf = (run: Run): PatientRecord => ({
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

const answered = <T>(run: Run, value: T): T | null => (run.random.chance(run.type.missed) ? null : value);

const writeMorning = (run: Run, day: number, course: DayOfJoint): void => {
  run.mornings.push({
    id: `morning-${day}`,
    day: dayFromNumber(day),
    recordedAt: day * dayMilliseconds + 8 * 3_600_000,
    joints: [
      {
        joint,
        pain: answered(run, asScore(course.pain)),
        stiffnessMinutes: answered(run, course.isFlare ? 25 : 10),
        swelling: answered(run, 'none' as const),
        flare: answered(run, course.isFlare),
      },
    ],
    redFlags: [],
    extraPainRelief: false,
    fatigue: 'not-applicable',
    clockDoubtful: false,
  });
};

const writeSession = (run: Run, day: number, course: DayOfJoint, kind: 'full' | 'bad-day'): void => {
  const version = run.prescriptions.at(-1)!;
  const dose = (kind === 'full' ? version.dose : version.badDay) as LowLoadDose;
  const score = (rise: number): number | null =>
    answered(run, asScore(course.pain + rise + 0.4 * run.random.normal()));
  const painBefore = score(0);
  run.sessions.push({
    id: `session-${day}`,
    beganAt: day * dayMilliseconds + 17 * 3_600_000,
    recordedAt: day * dayMilliseconds + 18 * 3_600_000,
    day: dayFromNumber(day),
    kind,
    sets: Array.from({ length: dose.sets }, (_, place) => ({
      lineId: version.lineId,
      prescriptionId: version.id,
      set: place + 1,
      repetitions: run.random.chance(0.03) ? dose.repetitions.low - 2 : dose.repetitions.low,
      loadKg: dose.loadKg,
      reserve: dose.reserve,
      stopReason: 'none',
    })),
    redFlags: [],
    extraPainRelief: false,
    didExtra: false,
    joints: [
      {
        joint,
        painBefore,
        painDuring: score(run.type.sessionRise),
        painAfter: score(run.type.sessionRise / 2),
        painTwoHours: 'not-applicable',
        gaveWay: false,
      },
    ],
    clockDoubtful: false,
  });
};

/** Frozen once ready, again on the day it expires or is found stale; kept while the diary offers none. */
const freeze = (run: Run, day: number): void => {
  if (day - firstDay < settlingDays) return;
  const record = recordOf(run);
  const current = run.baselines.at(-1);
  const at = { instant: day * dayMilliseconds + 9 * 3_600_000, day: dayFromNumber(day) };
  const age = current ? day - firstDay - Number(current.frozenBy.slice(3)) : Number.POSITIVE_INFINITY;
  const isStale = current !== undefined && mustLatchBaseline(record, joint, at, run.settings.choices);
  if (age < run.settings.choices['baseline-expiry'] && !isStale) return;
  const proposed = proposeBaseline(record, joint, at.day, run.settings.choices);
  if (!proposed.ready) return;
  const { usualPain, widestUsualPainTop, morningSpread } = proposed.proposal;
  run.baselines.push({
    joint,
    usualPain,
    usualPainTop: Math.min(widestUsualPainTop, usualPain + run.settings.widenedBy),
    painCeiling: 5,
    usualStiffnessMinutes: 10,
    usualSwelling: 'none',
    usualEffusion: 'zero',
    usualFatigue: null,
    frozenOn: at.day,
    frozenBy: `day${day - firstDay}`,
    latched: false,
    morningSpread,
  });
};

const judge = (run: Run, day: number, course: DayOfJoint): void => {
  const record = recordOf(run);
  const at = { instant: day * dayMilliseconds + 12 * 3_600_000, day: dayFromNumber(day) };
  const { choices } = run.settings;
  const evaluation = evaluate(record, at, choices);
  const line = evaluation.lines[0]!;
  const rules = line.reasons
    .filter((reason) => reason.effect.decision === line.decision)
    .map((reason) => reason.rule);
  run.decisions.push({ word: line.decision, isFlare: course.isFlare, rules });
  const ladder = { harder: () => null, easier: () => null };
  const proposal = nextDoses(record, evaluation, () => ({
    ladder,
    choices,
    easeBacksBefore: run.easeBacks,
  })).get('line')!;
  run.easeBacks = line.decision === 'ease-back' ? run.easeBacks + 1 : 0;
  if (line.decision === 'pause') run.pausedUntil = day + run.settings.pauseDays;
  if (proposal.effect === 'repeat') return;
  const current = run.prescriptions.at(-1)!;
  const origin = proposal.kind === 'step' ? 'progress' : proposal.kind === 'return' ? 'return' : 'ease-back';
  run.prescriptions[run.prescriptions.length - 1] = { ...current, endedAt: at.instant };
  run.prescriptions.push({
    ...current,
    id: `line-${current.version + 1}`,
    version: current.version + 1,
    dose: proposal.dose,
    badDay: proposal.badDay,
    signedAt: at.instant,
    endedAt: null,
    origin,
  });
};

const trainOn = (run: Run, day: number, course: DayOfJoint): void => {
  if (day < run.pausedUntil) {
    run.counts.none++;
    return;
  }
  run.planned.push({ day: dayFromNumber(day) });
  const at = { instant: day * dayMilliseconds + 16 * 3_600_000, day: dayFromNumber(day) };
  const known = factsFor(recordOf(run), joint, at, run.settings.choices);
  const gate = beforeGate({ ...known, painBefore: asScore(course.pain), redFlags: [] }, run.settings.choices);
  if (gate.today === 'none' || gate.today === 'rest-this-joint') {
    run.planned.pop();
    run.counts.none++;
    return;
  }
  const kind = gate.today === 'bad-day' ? 'bad-day' : 'full';
  run.counts[kind === 'full' ? 'full' : 'easier']++;
  writeSession(run, day, course, kind);
};

const isTrainingDay = (day: number): boolean => [0, 2, 4].includes((day - firstDay) % 7);

export const simulatePatient = (type: DiaryType, settings: SimulationSettings, random: Seeded): Simulated => {
  const run: Run = {
    type,
    settings,
    random,
    prescriptions: [startVersion],
    sessions: [],
    mornings: [],
    baselines: [],
    planned: [],
    decisions: [],
    counts: { full: 0, easier: 0, none: 0 },
    easeBacks: 0,
    pausedUntil: 0,
  };
  const days = settings.weeks * 7;
  jointCourse(type, days, random).forEach((course, place) => {
    const day = firstDay + place;
    writeMorning(run, day, course);
    freeze(run, day);
    if (run.sessions.at(-1)?.day === dayFromNumber(day - 1)) judge(run, day, course);
    if (isTrainingDay(day)) trainOn(run, day, course);
  });
  const endShare = shareOf(run.prescriptions.at(-1)!.dose, startDose) ?? Number.NaN;
  return { decisions: run.decisions, endShare, sessions: run.counts };
};
