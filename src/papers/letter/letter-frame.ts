/** What a letter has beside the record: to whom it goes, who wrote what of it, and who signed. */
import type { Addressee, OwnSentences } from '#core/episode/letters/letter.ts';
import type { Day } from '#core/time/day.ts';

export interface LetterFrame {
  /** null = nobody is named. */
  readonly addressee: Addressee | null;
  readonly copies: readonly string[];
  readonly toPatient: boolean;
  readonly own: OwnSentences;
  /** null while it is a draft. */
  readonly signed: {
    readonly name: string;
    readonly role: string;
    readonly registration: string | null;
  } | null;
}

/** Straight from the record: to nobody yet, and unsigned. */
export const unframed = (referrer: string | null): LetterFrame => ({
  addressee: referrer ? { name: referrer, role: null, organisation: null, address: null } : null,
  copies: [],
  toPatient: false,
  own: {},
  signed: null,
});

/** Marked void since it was signed. */
export interface Voiding {
  readonly on: Day;
  readonly by: string;
  readonly reason: string;
}
