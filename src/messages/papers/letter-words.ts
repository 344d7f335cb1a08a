/** The letter to another doctor, in every language it is written in. */
import { words as german } from '../de/colleagues/letter.ts';
import { words as english } from '../en/colleagues/letter.ts';
import type { LanguageTag } from '../languages.ts';
import { type ColleagueSpeech, colleagueSpeech, sayFrom } from './colleague-speech.ts';

const sayIn = sayFrom<typeof english>({ en: english, de: german });

export interface LetterSpeech extends ColleagueSpeech {
  readonly say: ReturnType<typeof sayIn>;
}

export const letterSpeech = (tag: LanguageTag): LetterSpeech => ({
  ...colleagueSpeech(tag),
  say: sayIn(tag),
});
