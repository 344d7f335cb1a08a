/** Both papers with the words of the screens: the clinic's for the letter, the patient's for the sheet. */
import type { DocumentFacts } from '#core/episode/documents/document-facts.ts';
import type { CareDocument } from '#core/episode/documents/document-words.ts';
import { letterOf } from '#core/episode/documents/letter.ts';
import { selfManagementOf } from '#core/episode/documents/self-management.ts';
import type { Day } from '#core/time/day.ts';
import { cautionText } from '#messages/cautions.ts';
import { exerciseName } from '#messages/exercises.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { doseInWords, doseTitle } from '#ui/clinician/dose-words.ts';
import { doseTitle as countInWords, doseLines } from '#ui/language/dose-text.ts';
import { t } from '#ui/language/words.ts';

export const letterInWords = (facts: DocumentFacts | null, day: Day): CareDocument | null =>
  facts === null ? null : letterOf(facts, day, { title: doseTitle, dose: doseInWords });

type Translate = (text: string) => string;

/** A paper in another language, line by line. What somebody typed stays as typed; nothing is spoken here. */
const told = (document: CareDocument, translate: Translate): CareDocument => ({
  from: document.from.map(translate),
  about: translate(document.about),
  title: translate(document.title),
  parts: document.parts.map(({ title, lines, advice }) => ({
    title: translate(title),
    lines: lines.map(translate),
    advice: advice?.map(translate),
  })),
});

/** For those who were discharged; who is handed to others gets the new clinic's word. */
export const summaryInWords = (
  facts: DocumentFacts | null,
  translate: Translate = (text) => text,
  tag: LanguageTag = 'en',
): CareDocument | null =>
  facts?.end.state === 'discharged'
    ? told(
        selfManagementOf(facts, {
          title: (dose) => exerciseName(dose.exerciseId)[tag],
          dose: (dose) => [countInWords(dose), ...doseLines(dose)],
          flag: (flag) => t(`flag.${flag}`),
          caution: ({ patient }) => cautionText(patient)[tag],
        }),
        translate,
      )
    : null;
