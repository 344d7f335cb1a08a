/** What the invented person writes down: a morning check, a session. */
import type { MorningRecord, SessionRecord } from '#core/record/record.ts';
import type { PlannedWork } from './arm.ts';
import type { DrawnDay } from './drawn-days.ts';
import { morningForm, type SessionAnswers, sessionForm } from './forms.ts';
import { figures } from './joint-settings.ts';
import { repetitionsToFailure, type WorkDone } from './work.ts';

const rated = (pain: number, noise: number): number =>
  Math.max(0, Math.min(10, Math.round(pain + figures.diaryNoise * noise)));

const unless = <T>(isLeftOut: boolean, value: T): T | null => (isLeftOut ? null : value);

export const morningEntry = (day: number, drawn: DrawnDay, pain: number, isFlare: boolean): MorningRecord =>
  morningForm(day, {
    pain: unless(drawn.leftOut.morning, rated(pain, drawn.noise.morning)),
    stiffnessMinutes: unless(
      drawn.leftOut.stiffness,
      isFlare ? figures.flareStiffness : figures.usualStiffness,
    ),
    swelling: unless(drawn.leftOut.swelling, 'none'),
    flare: unless(drawn.leftOut.flare, isFlare),
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

const setAnswers = (
  { planned, isEasier, work, strength }: SessionDone,
  drawn: DrawnDay,
): SessionAnswers['sets'] => {
  const asked = (isEasier ? planned.easier : planned.dose).repetitions.low;
  return work.sets.map((repetitions) => {
    const reserve = repetitionsToFailure(strength, work.loadKg) - repetitions;
    return {
      prescriptionId: planned.prescriptionId,
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

export const sessionEntry = (day: number, drawn: DrawnDay, done: SessionDone): SessionRecord =>
  sessionForm(day, {
    isEasier: done.isEasier,
    didExtra: false,
    sets: setAnswers(done, drawn),
    painBefore: done.pain.before,
    painDuring: unless(drawn.leftOut.during, rated(done.pain.during, drawn.noise.during)),
    painAfter: unless(drawn.leftOut.after, rated(done.pain.after, drawn.noise.after)),
  });
