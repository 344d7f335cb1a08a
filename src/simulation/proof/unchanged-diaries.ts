/**
 * Diaries in which nothing changes: pain strays about the same mean, all work is done as prescribed, nothing else is
 * told. Whatever a rule decides on them is scatter. Mean 2 to 4 and deviation 1 are invented, as are the people; usual
 * values are set as the product proposes them from four weeks of mornings, and six weeks are then decided on.
 */
import { proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import { evaluate } from '#core/decision/scope.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { Baseline, MorningRecord, PatientRecord, SessionRecord } from '#core/record/record.ts';
import { addDays, type Day, dayNumber } from '#core/time/day.ts';
import { type Seeded, seeded } from '../raises/seeded.ts';

const knee = 'left-knee';
/** A Monday. */
const firstDay: Day = '2026-01-05';
const settlingDays = 28;
const decidedDays = 42;
const deviation = 1;

const dayMs = 86_400_000;
const at = (day: Day, hour: number): number => dayNumber(day) * dayMs + hour * 3_600_000;

const dose: LowLoadDose = {
  ...{ method: 'low-load', exerciseId: 'knee-extension-seated', side: 'left', sets: 3 },
  ...{ repetitions: { low: 15, high: 20 }, reserve: 2, restSeconds: 60, secondsPerRepetition: 4 },
  ...{ sessionsPerWeek: 3, loadKg: 4, oneRepMaxKg: 12 },
};

const straying = (random: Seeded, mean: number): number =>
  Math.min(10, Math.max(0, Math.round(mean + deviation * random.normal())));

const morningOf = (day: Day, pain: number): MorningRecord => ({
  ...{ id: `m-${day}`, day, recordedAt: at(day, 8), redFlags: [], extraPainRelief: false },
  ...{ fatigue: 'not-applicable', clockDoubtful: false, localMinute: 8 * 60 },
  joints: [
    {
      ...{ joint: knee, pain, stiffnessMinutes: 10, swelling: 'none', swellingQuestion: 'more-than-usual' },
      flare: false,
    },
  ],
});

const sessionOf = (day: Day, pain: () => number): SessionRecord => ({
  ...{ id: `s-${day}`, day, beganAt: at(day, 17), recordedAt: at(day, 18), kind: 'full', redFlags: [] },
  ...{ extraPainRelief: false, didExtra: false, clockDoubtful: false },
  sets: [1, 2, 3].map((set) => ({
    ...{ itemId: 'knee', prescriptionId: 'knee-1', set, repetitions: 18, loadKg: 4, reserve: 2 },
    stopReason: 'none',
  })),
  joints: [
    {
      ...{ joint: knee, painBefore: pain(), painDuring: pain(), painAfter: pain() },
      ...{ painTwoHours: 'not-applicable', gaveWay: false },
    },
  ],
});

const isSessionDay = (day: Day): boolean => [0, 2, 4].includes((dayNumber(day) - dayNumber(firstDay)) % 7);

const daysFrom = (day: Day, count: number): readonly Day[] =>
  Array.from({ length: count }, (_, place) => addDays(day, place));

const begun: Day = addDays(firstDay, settlingDays);

const recordWith = (
  mornings: readonly MorningRecord[],
  sessions: readonly SessionRecord[],
  baselines: readonly Baseline[],
): PatientRecord => ({
  ...{ patientId: 'unchanged', followedJoints: [knee], inflammatoryArthritis: false, ownedLoadsKg: [4] },
  prescriptions: [
    {
      ...{ id: 'knee-1', itemId: 'knee', version: 1, dose, badDay: { ...dose, sets: 2 }, joints: [knee] },
      ...{ signedAt: at(begun, 9), endedAt: null, origin: 'clinician' },
    },
  ],
  ...{ sessions, mornings, baselines, effusions: [], events: [], limits: [] },
  planned: daysFrom(begun, decidedDays)
    .filter(isSessionDay)
    .map((day) => ({ day })),
});

const baselineFrom = (mornings: readonly MorningRecord[]): Baseline => {
  const answer = proposeBaseline(recordWith(mornings, [], []), knee, addDays(begun, -1));
  if (!answer.ready) throw new Error('Four weeks of mornings give usual values.');
  const { usualPain, usualPainTop, morningSpread } = answer.proposal;
  return {
    ...{ joint: knee, usualPain, usualPainTop, morningSpread, acceptablePainLimit: 5 },
    ...{ usualStiffnessMinutes: 10, usualSwelling: 'none', usualEffusion: 'zero', usualFatigue: null },
    ...{ setOn: begun, setBy: 'invented', dueForReview: false },
  };
};

export interface RuleLook {
  readonly decision: string;
  readonly fired: readonly { readonly rule: string; readonly caps: string | undefined }[];
}

/** One look at the knee on the morning after each session. */
const looksOfPerson = (seed: number): readonly RuleLook[] => {
  const random = seeded(seed);
  const mean = 2 + random.below(3);
  const pain = () => straying(random, mean);
  const mornings = daysFrom(firstDay, settlingDays + decidedDays).map((day) => morningOf(day, pain()));
  const sessions = daysFrom(begun, decidedDays - 1)
    .filter(isSessionDay)
    .map((day) => sessionOf(day, pain));
  const record = recordWith(mornings, sessions, [baselineFrom(mornings.slice(0, settlingDays))]);
  return sessions.map((session) => {
    const day = addDays(session.day, 1);
    const { joints } = evaluate(record, { instant: at(day, 10), day });
    const { answers } = joints.find(({ joint }) => joint === knee)!;
    return {
      decision: answers.decision,
      fired: answers.reasons.map(({ rule, effect }) => ({ rule, caps: effect.decision })),
    };
  });
};

export const looksAtUnchanged = (seed: number, people: number): readonly RuleLook[] =>
  Array.from({ length: people }, (_, person) => looksOfPerson(seed + person)).flat();
