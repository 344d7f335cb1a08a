/** What the invented patient writes down: a morning each day, a session when one is done. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { dayFromNumber } from '#core/time/day.ts';
import { asScore, type DayOfJoint } from './joint-course.ts';
import { dayMilliseconds, joint, type Run } from './run-state.ts';

const answered = <T>(run: Run, value: T): T | null => (run.random.chance(run.type.missed) ? null : value);

export const writeMorning = (run: Run, day: number, course: DayOfJoint): void => {
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

export const writeSession = (run: Run, day: number, course: DayOfJoint, kind: 'full' | 'bad-day'): void => {
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
      itemId: version.itemId,
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
