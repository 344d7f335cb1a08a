/** The warning signs in the patient's words, in the order of the engine's classes. */

import type { TodayExercise } from '#api/patient/today-view.ts';
import { signsListed } from '#core/danger/signs-asked.ts';
import { type RedFlag, redFlagClasses } from '#core/decision/facts/facts.ts';
import { t } from '#ui/language/words.ts';

export type FlagClass = keyof typeof redFlagClasses;

/** Worded when asked: the language of the page may come after this file was read. */
export const flagOptions = (
  hasCuff: boolean,
): readonly { readonly value: RedFlag; readonly label: string }[] =>
  signsListed(hasCuff).map((flag) => ({ value: flag, label: t(`flag.${flag}`) }));

/** Whether one of a day's exercises is done with a cuff or wrap, resting today or not; known without a network. */
export const hasCuffIn = (exercises: readonly Pick<TodayExercise, 'dose'>[]): boolean =>
  exercises.some(({ dose }) => dose.method === 'occlusion');

const classes: readonly FlagClass[] = ['emergency', 'same-day', 'routine'];

/** The most urgent class among the flags told. */
export const flagClassOf = (flags: readonly RedFlag[]): FlagClass =>
  classes.find((one) => flags.some((flag) => (redFlagClasses[one] as readonly RedFlag[]).includes(flag))) ??
  'emergency';
