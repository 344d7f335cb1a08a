/** The letter to another doctor as a file: what is asked on one page, the record behind it on the next. */
import { letterSpeech } from '#messages/papers/colleague-words.ts';
import type { Look } from '../look.ts';
import { type Typeset, typeset } from '../typesetting/typeset.ts';
import { type LetterWords, letterWords } from './letter-data.ts';
import { unframed, type Voiding } from './letter-frame.ts';
import type { LetterPaper } from './letter-paper.ts';

const sizesPt = [11, 10.5, 10, 9.5, 9] as const;
const largeSizesPt = [16, 15, 14] as const;

/** In the language of its words, whatever else was asked for. */
export const printWords = (
  words: LetterWords,
  asked: Look,
  voided: Voiding | null = null,
): Promise<Typeset> => {
  const look = { ...asked, language: words.language };
  const { say, day } = letterSpeech(words.language);
  const data = {
    ...words,
    sayUnprintable: (names: string) => say('unprintable', { names }),
    footer: [words.draft, say('footer', { on: day(look.printedOn), clinic: words.author })]
      .filter(Boolean)
      .join('. '),
    voided: voided && {
      word: say('void'),
      line: say('voided-by', { on: day(voided.on), name: voided.by, reason: voided.reason }),
    },
  };
  return typeset('letter', data, look, {
    pt: look.isLarge ? largeSizesPt : sizesPt,
    mostPages: look.isLarge ? 2 : 1,
    counted: 'first-part',
  });
};

/** Straight from the record, as a draft to whoever referred the patient. */
export const printLetter = (letter: LetterPaper, look: Look): Promise<Typeset> =>
  printWords(
    letterWords(letter, unframed(letter.referrer), letterSpeech(look.language), look.printedOn),
    look,
  );

export const letterFileName = ({ printedOn }: Look): string => `letter-${printedOn}.pdf`;
