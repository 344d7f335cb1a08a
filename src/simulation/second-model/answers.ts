/** How the person fills in the two forms. */
import type { MorningRecord, SessionRecord } from '#core/record/record.ts';
import type { PlannedWork } from '../trial/arm.ts';
import { morningForm, sessionForm } from '../trial/forms.ts';
import type { SecondDay } from './drawn.ts';
import { conduct, muscle as figures, flares, ratings } from './figures.ts';
import type { Muscle, SessionWork } from './muscle.ts';
import type { Extra } from './session.ts';

/** A whole number 0–10. */
export const rated = (pain: number, noise: number): number =>
  Math.max(0, Math.min(10, Math.round(pain + ratings.diaryNoise * noise)));

const unless = <T>(isLeftOut: boolean, value: T): T | null => (isLeftOut ? null : value);

/** Whatever set it off, a flare is one to the person. */
export const morningOf = (
  day: number,
  { leftOut, noise, at, isFirstOfFlare, isMorningMissing }: SecondDay,
  pain: number,
  isInFlare: boolean,
): MorningRecord | null => {
  if (isMorningMissing) return null;
  const noticed = isInFlare && at.notices < (isFirstOfFlare ? flares.noticedFirstDay : flares.noticed);
  const swells = at.swelling < (isInFlare ? flares.swelling : flares.swellingElse);
  return morningForm(day, {
    pain: unless(leftOut.pain, rated(pain, noise.morning)),
    stiffnessMinutes: unless(
      leftOut.stiffness,
      isInFlare ? flares.stiffnessInFlare : flares.stiffnessMinutes,
    ),
    swelling: unless(leftOut.swelling, swells ? 'slight' : 'none'),
    flare: unless(leftOut.flare, noticed),
  });
};

export const beforeOf = ({ leftOut, noise }: SecondDay, pain: number): number | null =>
  unless(leftOut.before, rated(pain, noise.before));

export interface DoneSession {
  readonly planned: PlannedWork;
  readonly isEasier: boolean;
  readonly extra: Extra;
  readonly work: SessionWork;
  readonly pain: { readonly before: number | null; readonly during: number; readonly after: number };
}

/** `muscle` as it was before the session trained it. */
export const sessionOf = (
  day: number,
  { leftOut, noise, at }: SecondDay,
  { planned, isEasier, extra, work, pain }: DoneSession,
  muscle: Muscle,
): SessionRecord => {
  const able = muscle.repetitionsToFailure(work.loadKg);
  const asked = (isEasier ? planned.easier : planned.dose).repetitions.low;
  const misjudged = figures.reserveMisjudged * noise.reserve;
  return sessionForm(day, {
    isEasier,
    didExtra: extra !== 'none' && at.says < conduct.saysExtra,
    sets: work.sets.map((repetitions, set) => ({
      prescriptionId: planned.prescriptionId,
      repetitions,
      loadKg: work.loadKg,
      reserve: unless(
        leftOut.reserve,
        Math.max(0, Math.round(able * (1 - figures.setFatigue * set) - repetitions + misjudged)),
      ),
      stopReason: repetitions < asked ? 'tired' : 'none',
    })),
    painBefore: pain.before,
    painDuring: unless(leftOut.during, rated(pain.during, noise.during)),
    painAfter: unless(leftOut.after, rated(pain.after, noise.after)),
  });
};
