/** The warning signs in the patient's words, in the order of the engine's classes. */
import { type RedFlag, redFlagClasses, redFlags } from '#core/decision/facts/facts.ts';
import { t } from '#ui/language/words.ts';

export type FlagClass = keyof typeof redFlagClasses;

/** Worded when asked: the language of the page may come after this file was read. */
export const flagOptions = (): readonly { readonly value: RedFlag; readonly label: string }[] =>
  redFlags.map((flag) => ({ value: flag, label: t(`flag.${flag}`) }));

const classes: readonly FlagClass[] = ['emergency', 'same-day', 'routine'];

/** The most urgent class among the flags told. */
export const flagClassOf = (flags: readonly RedFlag[]): FlagClass =>
  classes.find((one) => flags.some((flag) => (redFlagClasses[one] as readonly RedFlag[]).includes(flag))) ??
  'emergency';
