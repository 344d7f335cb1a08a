/**
 * One invented patient over 26 weeks, through the engine and the dose rules. A clinician is played by
 * fixed habits: sets a baseline when they are ready or expire, signs every increase the morning it is
 * proposed, sees a paused plan three days later and lets it go on. One joint, one low-load exercise.
 */
import { shareOf } from '#core/decision/dose/volume.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import { nextDoses } from '#core/decision/next-doses.ts';
import { preSessionCheck } from '#core/decision/pre-session-check.ts';
import { evaluate } from '#core/decision/scope.ts';
import { dayFromNumber } from '#core/time/day.ts';
import type { Seeded } from '../raises/seeded.ts';
import type { DiaryType } from './diary-types.ts';
import { asScore, type DayOfJoint, jointCourse } from './joint-course.ts';
import {
  dayMilliseconds,
  firstDay,
  joint,
  type Run,
  recordOf,
  type Simulated,
  type SimulationSettings,
  startDose,
  startVersion,
} from './run-state.ts';
import { setBaseline } from './set-baseline.ts';
import { writeMorning, writeSession } from './write-diary.ts';

const judge = (run: Run, day: number, course: DayOfJoint): void => {
  const record = recordOf(run);
  const at = { instant: day * dayMilliseconds + 12 * 3_600_000, day: dayFromNumber(day) };
  const { settings } = run.settings;
  const evaluation = evaluate(record, at, settings);
  const item = evaluation.items[0]!;
  const rules = item.reasons
    .filter((reason) => reason.effect.decision === item.decision)
    .map((reason) => reason.rule);
  run.decisions.push({ word: item.decision, isFlare: course.isFlare, rules });
  const ladder = { harder: () => null, easier: () => null };
  const proposal = nextDoses(record, evaluation, () => ({
    ladder,
    settings,
    easeBacksBefore: run.easeBacks,
  })).get('line')!;
  run.easeBacks = item.decision === 'ease-back' ? run.easeBacks + 1 : 0;
  if (item.decision === 'pause') run.pausedUntil = day + run.settings.pauseDays;
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
  const known = factsFor(recordOf(run), joint, at, run.settings.settings);
  const check = preSessionCheck(
    { ...known, painBefore: asScore(course.pain), redFlags: [] },
    run.settings.settings,
  );
  if (check.today === 'none' || check.today === 'rest-this-joint') {
    run.planned.pop();
    run.counts.none++;
    return;
  }
  const kind = check.today === 'bad-day' ? 'bad-day' : 'full';
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
    setBaseline(run, day);
    if (run.sessions.at(-1)?.day === dayFromNumber(day - 1)) judge(run, day, course);
    if (isTrainingDay(day)) trainOn(run, day, course);
  });
  const endShare = shareOf(run.prescriptions.at(-1)!.dose, startDose) ?? Number.NaN;
  return { decisions: run.decisions, endShare, sessions: run.counts };
};
