/** Each exercise of an episode of care, with its first and its last signed dose, and what became of it. */
import type { DocumentItem } from '#core/episode/documents/document-facts.ts';
import type { DoseWords } from '#core/episode/documents/document-words.ts';
import { type DischargeSpeech, letterSpeech } from './colleague-words.ts';

/** As care ended, or as it stands today. */
export type When = 'ended' | 'today';

/** What became of it, and what stood against doing it as signed. */
const standLine = (
  { last, atEnd, suspended }: DocumentItem,
  { say, day }: DischargeSpeech,
  when: When,
): string => {
  if (!atEnd)
    return last.endedOn === null ? say(`not-stood-${when}`) : say('stopped-on', { on: day(last.endedOn) });
  return [say(`stood-${when}`), ...(suspended === null ? [] : [say(`left-${suspended}-${when}`)])].join(' ');
};

export const itemLines = (
  item: DocumentItem,
  words: DoseWords,
  speech: DischargeSpeech,
  when: When,
): readonly string[] => {
  const { say, day, tag } = speech;
  const { first, last } = item;
  const stand = standLine(item, speech, when);
  const begin = say('first-signed', {
    exercise: words.title(first.dose),
    method: letterSpeech(tag).say(`method-${first.dose.method}`),
    on: day(first.signedOn),
    name: first.signedName,
    dose: words.dose(first.dose),
  });
  if (first === last) return [`${begin} ${say('only-version')} ${stand}`];
  const title = words.title(last.dose);
  const dose = `${title === words.title(first.dose) ? '' : `${title}: `}${words.dose(last.dose)}`;
  return [begin, `${say('last-signed', { on: day(last.signedOn), name: last.signedName, dose })} ${stand}`];
};
