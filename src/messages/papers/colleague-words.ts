/** The papers that go to colleagues, in every language they are written in. */
import { words as germanDischarge } from '../de/colleagues/discharge.ts';
import { words as germanFlareNote } from '../de/colleagues/flare-note.ts';
import { words as germanHandover } from '../de/colleagues/handover.ts';
import { words as germanLetter } from '../de/colleagues/letter.ts';
import { words as germanSheet } from '../de/colleagues/sheet.ts';
import { words as discharge } from '../en/colleagues/discharge.ts';
import { words as flareNote } from '../en/colleagues/flare-note.ts';
import { words as handover } from '../en/colleagues/handover.ts';
import { words as letter } from '../en/colleagues/letter.ts';
import { words as sheet } from '../en/colleagues/sheet.ts';
import type { LanguageTag } from '../languages.ts';
import { type ColleagueSpeech, colleagueSpeech, sayFrom } from './colleague-speech.ts';

const sayLetter = sayFrom<typeof letter>({ en: letter, de: germanLetter });
const sayFlareNote = sayFrom<typeof flareNote>({ en: flareNote, de: germanFlareNote });
const sayDischarge = sayFrom<typeof discharge>({ en: discharge, de: germanDischarge });
const sayHandover = sayFrom<typeof handover>({ en: handover, de: germanHandover });

/** Words that any paper of parts may need. */
export const sheetWords = sayFrom<typeof sheet>({ en: sheet, de: germanSheet });

export interface LetterSpeech extends ColleagueSpeech {
  readonly say: ReturnType<typeof sayLetter>;
}

export const letterSpeech = (tag: LanguageTag): LetterSpeech => ({
  ...colleagueSpeech(tag),
  say: sayLetter(tag),
});

export interface FlareNoteSpeech extends ColleagueSpeech {
  readonly say: ReturnType<typeof sayFlareNote>;
}

export const flareNoteSpeech = (tag: LanguageTag): FlareNoteSpeech => ({
  ...colleagueSpeech(tag),
  say: sayFlareNote(tag),
});

export interface HandoverSpeech extends ColleagueSpeech {
  readonly say: ReturnType<typeof sayHandover>;
}

export const handoverSpeech = (tag: LanguageTag): HandoverSpeech => ({
  ...colleagueSpeech(tag),
  say: sayHandover(tag),
});

export interface DischargeSpeech extends ColleagueSpeech {
  readonly say: ReturnType<typeof sayDischarge>;
}

export const dischargeSpeech = (tag: LanguageTag): DischargeSpeech => ({
  ...colleagueSpeech(tag),
  say: sayDischarge(tag),
});
