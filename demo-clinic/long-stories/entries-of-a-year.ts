/** A morning and a session of a long story as the record holds them. */
import type { Joint } from '#core/exercises/joints.ts';
import type { MorningRecord, PrescriptionVersion, SessionRecord } from '#core/record/record.ts';
import { pickedUpKg } from '../sets.ts';
import type { YearMorning, YearSession } from './long-story.ts';

export const morningRecord = (
  joint: Joint,
  usualStiffness: number,
  said: YearMorning,
  day: string,
  recordedAt: number,
): MorningRecord => ({
  id: `morning ${day}`,
  day,
  recordedAt,
  joints: [
    {
      joint,
      pain: said.pain,
      stiffnessMinutes: said.stiffness ?? usualStiffness,
      swelling: said.swelling ?? 'none',
      swellingQuestion: 'more-than-usual',
      flare: said.flare ?? false,
    },
  ],
  redFlags: [],
  extraPainRelief: said.relief ?? false,
  fatigue: 'not-applicable',
  clockDoubtful: false,
});

export const sessionRecord = (
  joint: Joint,
  version: PrescriptionVersion,
  said: YearSession,
  isEasierSession: boolean,
  day: string,
  recordedAt: number,
): SessionRecord => {
  const dose = isEasierSession ? version.badDay : version.dose;
  if (dose.method === 'occlusion') throw new TypeError('Long stories are told without a cuff.');
  return {
    id: `session ${day}`,
    beganAt: recordedAt - 1_500_000,
    recordedAt,
    day,
    kind: isEasierSession ? 'bad-day' : 'full',
    sets: Array.from({ length: dose.sets }, (_, place) => ({
      itemId: version.itemId,
      prescriptionId: version.id,
      set: place + 1,
      repetitions: dose.repetitions.low,
      loadKg: pickedUpKg(dose),
      reserve: said.reserveOpen ? null : dose.reserve,
      stopReason: 'none',
    })),
    redFlags: [],
    extraPainRelief: said.relief ?? false,
    didExtra: said.extra ?? false,
    joints: [
      {
        joint,
        painBefore: said.before,
        painDuring: said.during,
        painAfter: said.after,
        painTwoHours: 'not-applicable',
        gaveWay: said.gaveWay ?? false,
      },
    ],
    clockDoubtful: false,
  };
};
