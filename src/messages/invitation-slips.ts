/** What the paper with an invitation says, in every language: nobody knows yet which one the phone will speak. */
import { everyLanguage } from './every-language.ts';
import { type LanguageTag, languages } from './languages.ts';
import { pageWord } from './page-words.ts';
import type { Sentence } from './sentence.ts';

export interface InvitationSlip {
  readonly tag: LanguageTag;
  readonly locale: string;
  readonly how: string;
  /** Until when the code works: "{date}". */
  readonly once: Sentence;
}

export const invitationSlips = (origin: string): readonly InvitationSlip[] =>
  languages.map(({ tag, locale }) => ({
    tag,
    locale,
    how: pageWord(tag, 'invite.how', { address: `${origin}/enrol` }),
    once: everyLanguage[tag].pages['invite.once'],
  }));
