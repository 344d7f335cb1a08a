/** The letter to another doctor as a file: what is asked on one page, the record behind it on the next. */
import type { Look } from '../look.ts';
import { type Typeset, typeset } from '../typesetting/typeset.ts';
import { letterData } from './letter-data.ts';
import type { LetterPaper } from './letter-paper.ts';

const sizesPt = [11, 10.5, 10, 9.5, 9] as const;
const largeSizesPt = [16, 15, 14] as const;

export const printLetter = (letter: LetterPaper, look: Look): Typeset =>
  typeset('letter', letterData(letter, look), look, {
    pt: look.isLarge ? largeSizesPt : sizesPt,
    mostPages: look.isLarge ? 2 : 1,
    counted: 'first-part',
  });

export const letterFileName = ({ printedOn }: Look): string => `letter-${printedOn}.pdf`;
