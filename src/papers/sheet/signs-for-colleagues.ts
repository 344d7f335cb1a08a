/** The warning signs in the patient's words, each class with whom to ring: on every paper that speaks of exercise. */
import { redFlagClasses, redFlagOfCuff } from '#core/decision/facts/facts.ts';
import { type DocumentPart, sentence } from '#core/episode/documents/document-words.ts';
import { type ClinicNumbers, urgentNumberOf } from '#core/episode/urgent-number.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import { sheetWords } from '#messages/papers/colleague-words.ts';

export interface RungClinic extends ClinicNumbers {
  readonly phone: string;
}

export const signsForColleagues = (clinic: RungClinic, hasCuff: boolean, tag: LanguageTag): DocumentPart => {
  const say = sheetWords(tag);
  const { phone, emergencyNumber } = clinic;
  const list = (name: keyof typeof redFlagClasses): string =>
    sentence(
      redFlagClasses[name]
        .filter((flag) => hasCuff || flag !== redFlagOfCuff)
        .map((flag) => pageWord(tag, `flag.${flag}`))
        .join('; '),
    );
  return {
    title: say('signs'),
    lines: [
      say('signs-emergency', { number: emergencyNumber, what: list('emergency') }),
      say('signs-same-day', { phone, number: urgentNumberOf(clinic), what: list('same-day') }),
      say('signs-routine', { phone, what: list('routine') }),
    ],
  };
};
