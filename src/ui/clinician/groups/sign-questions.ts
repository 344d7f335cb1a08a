/** Warning signs in the very words the phone asks in, in English. */
import { familiesAsked, signsListed } from '#core/danger/signs-asked.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { words as questionWords } from '#messages/en/pages/questions.ts';
import { words as signWords } from '#messages/en/pages/warning-signs.ts';
import { askIn } from '#messages/say.ts';

export const sayQuestion = askIn(questionWords);
const saySign = askIn(signWords);

export const familyLines = (hasCuff: boolean): readonly string[] =>
  familiesAsked(hasCuff).map((family) => saySign(`family.${family}`));

export const signOptions = (
  hasCuff: boolean,
): readonly { readonly value: RedFlag; readonly label: string }[] =>
  signsListed(hasCuff).map((flag) => ({ value: flag, label: saySign(`flag.${flag}`) }));
