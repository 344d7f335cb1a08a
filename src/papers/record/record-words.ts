/** The words of the own copy of the record in one language. */
import type { Day } from '#core/time/day.ts';
import type { recordPaper } from '#messages/en/sentences/papers/record.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { dateFormat } from '#messages/formats.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { paperSpeech } from '#messages/papers/paper-speech.ts';
import type { Args } from '#messages/sentence.ts';
import { translate } from '#messages/translate.ts';

type Words = typeof recordPaper;

export const recordWords = (tag: LanguageTag) => {
  const language = everyLanguage[tag];
  return {
    tag,
    speech: paperSpeech(tag),
    /** As it stands in a table. */
    shortDay: (day: Day): string =>
      dateFormat(language.locale, {
        day: 'numeric',
        month: 'short',
        year: 'numeric',
        timeZone: 'UTC',
      }).format(new Date(day)),
    say: <Key extends keyof Words>(key: Key, ...[values]: Args<Words[Key]>): string =>
      translate(language.sentences['record-paper'][key], values ?? {}, language),
  };
};
export type RecordWords = ReturnType<typeof recordWords>;
