/** A dose in the language and the unit of weight of this phone. */
import type { Dose } from '#core/prescribing/dose.ts';
import * as doses from '#messages/doses.ts';
import { words } from '#messages/en/pages/dose.ts';
import { addEnglish, listText, t } from '#ui/language/words.ts';
import { weightText } from './weight-text.ts';

// In another language they come with the pages that show a dose.
addEnglish(words);

export const speech: doses.DoseSpeech = { say: t, weight: weightText, list: listText };

export const doseTitle = (dose: Dose): string => doses.doseTitle(dose, speech);

export const loadText = (dose: Dose): string => doses.loadText(dose, speech);

export const doseInHand = (dose: Dose): readonly string[] => doses.doseInHand(dose, speech);

export const restLines = (dose: Dose): readonly string[] => doses.restLines(dose, speech);

export const doseLines = (dose: Dose): readonly string[] => doses.doseLines(dose, speech);
