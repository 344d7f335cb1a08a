/** What the invented person writes down: a morning check, a session. */
import type { MorningRecord, SessionRecord, SetRecord } from '#core/record/record.ts';
import { dayFromNumber } from '#core/time/day.ts';
import type { PlannedWork } from './arm.ts';
import type { DrawnDay } from './drawn-days.ts';
import { figures } from './joint-settings.ts';
import { dayMilliseconds, joint } from './start.ts';
import { repetitionsToFailure, type WorkDone } from './work.ts';

const rated = (pain: number, noise: number): number =>
  Math.max(0, Math.min(10, Math.round(pain + figures.diaryNoise * noise)));

const unless = <T>(isLeftOut: boolean, value: T): T | null => (isLeftOut ? null : value);

export const morningEntry = (
  day: number,
  drawn: DrawnDay,
  pain: number,
  isFlare: boolean,
): MorningRecord => ({
  id: `morning-${day}`,
  day: dayFromNumber(day),
  recordedAt: day * dayMilliseconds + 8 * 3_600_000,
  joints: [
    {
      joint,
      pain: unless(drawn.leftOut.morning, rated(pain, drawn.noise.morning)),
      stiffnessMinutes: unless(
        drawn.leftOut.stiffness,
        isFlare ? figures.flareStiffness : figures.usualStiffness,
      ),
      swelling: unless(drawn.leftOut.swelling, 'none'),
      swellingQuestion: 'more-than-usual',
      flare: unless(drawn.leftOut.flare, isFlare),
    },
  ],
  redFlags: [],
  extraPainRelief: false,
  fatigue: 'not-applicable',
  clockDoubtful: false,
});

export const painBefore = (drawn: DrawnDay, pain: number): number | null =>
  unless(drawn.leftOut.before, rated(pain, drawn.noise.before));

export interface SessionDone {
  readonly planned: PlannedWork;
  readonly isEasier: boolean;
  readonly work: WorkDone;
  readonly strength: number;
  readonly pain: { readonly before: number | null; readonly during: number; readonly after: number };
}

const setEntries = (
  { planned, isEasier, work, strength }: SessionDone,
  drawn: DrawnDay,
): readonly SetRecord[] => {
  const asked = (isEasier ? planned.easier : planned.dose).repetitions.low;
  return work.sets.map((repetitions, place) => {
    const reserve = repetitionsToFailure(strength, work.loadKg) - repetitions;
    return {
      itemId: 'line',
      prescriptionId: planned.prescriptionId,
      set: place + 1,
      repetitions,
      loadKg: work.loadKg,
      reserve: unless(
        drawn.leftOut.reserve,
        Math.max(0, Math.round(reserve + figures.reserveMisjudged * drawn.noise.reserve)),
      ),
      stopReason: repetitions < asked ? 'tired' : 'none',
    };
  });
};

export const sessionEntry = (day: number, drawn: DrawnDay, done: SessionDone): SessionRecord => ({
  id: `session-${day}`,
  beganAt: day * dayMilliseconds + 17 * 3_600_000,
  recordedAt: day * dayMilliseconds + 18 * 3_600_000,
  day: dayFromNumber(day),
  kind: done.isEasier ? 'bad-day' : 'full',
  sets: setEntries(done, drawn),
  redFlags: [],
  extraPainRelief: false,
  didExtra: false,
  joints: [
    {
      joint,
      painBefore: done.pain.before,
      painDuring: unless(drawn.leftOut.during, rated(done.pain.during, drawn.noise.during)),
      painAfter: unless(drawn.leftOut.after, rated(done.pain.after, drawn.noise.after)),
      painTwoHours: 'not-applicable',
      gaveWay: false,
    },
  ],
  clockDoubtful: false,
});
