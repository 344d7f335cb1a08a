/** A paper of parts as a file. It may be as long as it has to be; a page less is taken where a size smaller gives it. */
import { everyLanguage } from '#messages/every-language.ts';
import { translate } from '#messages/translate.ts';
import type { Look } from '../look.ts';
import { type Typeset, typeset } from '../typesetting/typeset.ts';
import type { SheetPaper } from './sheet-paper.ts';

const sizesPt = [11, 10.5, 10] as const;
const largeSizesPt = [16] as const;
const longSizesPt = [10] as const;

const mostPages = 2;

const sheetData = (sheet: SheetPaper, { language, printedOn }: Look) => {
  const tongue = everyLanguage[language];
  const words = tongue.sentences['plan-paper'];
  const { title, clinic, about } = sheet;
  return {
    ...sheet,
    title: `${title}: ${about}`,
    heading: title,
    author: clinic,
    sayUnprintable: (names: string) => translate(words.unprintable, { names }, tongue),
    parts: sheet.parts.map(({ advice = [], table, ...part }) => ({
      ...part,
      advice,
      table: table ? { widths: null, ...table } : null,
    })),
    footer: `${about}. ${translate(words.printed, { day: printedOn }, tongue)}`,
  };
};

export const printSheet = (sheet: SheetPaper, look: Look): Promise<Typeset> =>
  typeset('sheet', sheetData(sheet, look), look, {
    pt: look.isLarge ? largeSizesPt : sheet.isLong ? longSizesPt : sizesPt,
    mostPages,
  });
