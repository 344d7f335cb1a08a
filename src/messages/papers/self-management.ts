/** The sheet for the time after care, in the language it is printed in. */
import { type CareDocument, sentence } from '#core/episode/documents/document-words.ts';
import type { SelfManagement, SheetLine, SheetPart } from '#core/episode/documents/sheet-line.ts';
import { cautionText } from '../cautions.ts';
import { everyLanguage } from '../every-language.ts';
import { exerciseName } from '../exercises.ts';
import { hoursText } from '../hours.ts';
import type { Sentences } from '../language.ts';
import type { LanguageTag } from '../languages.ts';
import { translate, type Values } from '../translate.ts';
import { doseText, paperSpeech } from './paper-speech.ts';

type Said = (key: keyof Sentences['self-management'], values?: Values) => string;

const lineIn = (tag: LanguageTag, said: Said) => {
  const language = everyLanguage[tag];
  const speech = paperSpeech(tag);
  return (line: SheetLine): string => {
    switch (line.key) {
      case 'exercise':
        return exerciseName(line.exerciseId)[tag];
      case 'caution':
        return sentence(cautionText(line.caution.patient)[tag]);
      case 'flag':
        return sentence(translate(language.pages[`flag.${line.flag}`], {}, language));
      case 'dose':
        return sentence(doseText(line.dose, speech));
      case 'easier':
        return said('easier', { dose: doseText(line.dose, speech) });
      case 'usual-morning':
        return said('usual-morning', {
          minutes: line.minutes,
          swelling: said(`swelling-${line.swelling}`),
        });
      case 'hours':
        return sentence(said('hours', { hours: hoursText(line.hours)[tag] }));
      default: {
        const { key, ...values } = line;
        return said(key, values);
      }
    }
  };
};

export const selfManagementIn = (tag: LanguageTag, sheet: SelfManagement): CareDocument => {
  const language = everyLanguage[tag];
  const said: Said = (key, values = {}) =>
    translate(language.sentences['self-management'][key], values, language);
  const inWords = lineIn(tag, said);
  const partIn = ({ title, lines, advice }: SheetPart) => ({
    title: inWords(title),
    lines: lines.map(inWords),
    advice: advice.map(inWords),
  });
  return {
    from: [sheet.from, inWords(sheet.telephone)],
    about: inWords(sheet.about),
    title: inWords(sheet.title),
    parts: sheet.parts.map(partIn),
    adviceTitle: said('advice'),
    signature: said('signature'),
  };
};
