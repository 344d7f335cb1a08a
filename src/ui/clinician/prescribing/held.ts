/** What holds exercises back now, beside what screening leaves of a method: open warning signs, and pauses. */
import { signsInWords } from '#core/danger/sign-words.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { openSigns } from '#core/plan/plan.ts';
import { dayInWords, jointInWords, listed } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import type { DangerAnswer } from '../answers.ts';
import { type ClinicClock, dayAt, today } from '../when.ts';

export interface Held {
  /** "the warning sign of 27 Nov". */
  readonly by: string;
  /** null = every exercise. */
  readonly joint: Joint | null;
}

/** `itemId`: the line a new version is written for; what was resumed for it holds it no longer. */
export const heldNow = (
  { plan }: Pick<DangerAnswer, 'plan'>,
  clock: ClinicClock,
  itemId: string | null,
): readonly Held[] => {
  const on = (instant: number) => dayInWords(dayAt(instant, clock.zone), today(clock));
  const signs = openSigns(plan).map(({ sign }) =>
    say('held.sign', { date: on(sign.reportedAt), sign: signsInWords(sign.flags) }),
  );
  const pauses = plan.pauses
    // One that an open sign made is said with the sign.
    .filter(({ isSignOpen, resumedItemIds }) => !isSignOpen && !resumedItemIds.has(itemId ?? ''))
    .map(
      ({ pause }): Held => ({
        by:
          pause.joint === null
            ? say('held.pause', { date: on(pause.at) })
            : say('held.joint-pause', { date: on(pause.at), 'joint-name': jointInWords(pause.joint) }),
        joint: pause.joint,
      }),
    );
  return [...[...new Set(signs)].map((by): Held => ({ by, joint: null })), ...pauses];
};

/** Of those that reach an exercise, in words; without joints of those that reach every exercise. null = none. */
export const heldInWords = (held: readonly Held[], loaded: readonly Joint[] = []): string | null => {
  const reaching = held.filter(({ joint }) => joint === null || loaded.includes(joint));
  const by = reaching.map((one) => one.by);
  return by.length > 0 ? listed(by, by.length) : null;
};
