/** The sheet for the time after care, in the language it is printed in. */
import { type CareDocument, sentence } from '#core/episode/documents/document-words.ts';
import type { SelfManagement, SheetLine, SheetPart } from '#core/episode/documents/self-management.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { cautionText } from './cautions.ts';
import { type DoseSpeech, doseLines, doseTitle } from './doses.ts';
import { everyLanguage, type SpokenLanguage } from './every-language.ts';
import { exerciseName } from './exercises.ts';
import { listed } from './formats.ts';
import { hoursText } from './hours.ts';
import type { Sentences } from './language.ts';
import type { LanguageTag } from './languages.ts';
import { translate, type Values } from './translate.ts';

/** On paper nobody has chosen a unit: weights are in kilograms. */
const speechIn = (language: SpokenLanguage): DoseSpeech => {
  const say = (key: keyof SpokenLanguage['pages'], values: Values = {}) =>
    translate(language.pages[key], values, language);
  return {
    say,
    weight: (kg) => say('weight.kg', { number: Number(kg.toFixed(2)) }),
    list: (parts) => listed(parts, language.locale),
  };
};

const doseText = (dose: Dose, speech: DoseSpeech): string =>
  [doseTitle(dose, speech), ...doseLines(dose, speech)].join('; ');

type Said = (key: keyof Sentences['self-management'], values?: Values) => string;

const lineIn = (tag: LanguageTag, said: Said) => {
  const language = everyLanguage[tag];
  const speech = speechIn(language);
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
