/** The summary of a letter: four sentences made from the record, each of which a clinician may put into other words. */
import { isRest } from '#core/decision/left-of-today.ts';
import { type OwnSentences, type SummaryPart, summaryParts } from '#core/episode/letters/letter.ts';
import type { LetterSpeech } from '#messages/papers/colleague-words.ts';
import { capitalised } from '#messages/translate.ts';
import { outcomeSentence } from './letter-outcomes.ts';
import type { LetterPaper } from './letter-paper.ts';

const careIn = ({ since, exercises, log }: LetterPaper, { say, day }: LetterSpeech): string => {
  const methods = [...new Set(exercises.map(({ now }) => say(`method-${now.dose.method}`)))].join(', ');
  return [
    since === null ? say('no-care') : say('since', { on: day(since) }),
    exercises.length === 0 ? say('none-prescribed') : say('prescribed', { count: exercises.length, methods }),
    ...(log
      ? [
          say('logged', {
            sessions: say('sessions', { count: log.sessions }),
            mornings: say('mornings', { count: log.mornings }),
          }),
        ]
      : []),
  ].join(' ');
};

/** How the joints answered: what was advised, and the mornings at the start and now. */
const courseIn = (
  { mornings, advised: { eased, paused } }: LetterPaper,
  { say, joint: inWords }: LetterSpeech,
): string => {
  const spanOf = ({ low, high }: { readonly low: number; readonly high: number }) =>
    low === high ? String(low) : say('pain-span', { low, high });
  return [
    ...(eased + paused > 0
      ? [say('advised', { eased: say('days', { count: eased }), paused: say('days', { count: paused }) })]
      : []),
    ...mornings.map(({ joint, first, last }) =>
      say('morning-pain', { where: inWords(joint), first: spanOf(first), last: spanOf(last) }),
    ),
  ].join(' ');
};

/** Where everything rests, that is said and nothing of the dose. */
const nowIn = ({ exercises, decisions }: LetterPaper, { say, joint: inWords, day }: LetterSpeech): string =>
  exercises.length > 0 && exercises.every(({ today }) => isRest(today))
    ? say('all-rests')
    : decisions
        .map(({ joint, decision, setAnewOn }) => {
          const where = capitalised(inWords(joint));
          return setAnewOn === null
            ? say(`decision-${decision}`, { where })
            : say('set-anew', { where, on: day(setAnewOn) });
        })
        .join(' ');

/** As the record makes them; empty where it has nothing to say. */
export const madeSummary = (
  letter: LetterPaper,
  speech: LetterSpeech,
): Readonly<Record<SummaryPart, string>> => ({
  care: careIn(letter, speech),
  outcomes: outcomeSentence(letter, speech),
  course: courseIn(letter, speech),
  now: nowIn(letter, speech),
});

/** Whose words a sentence is stands behind it and under them all. */
export const summaryIn = (
  letter: LetterPaper,
  own: OwnSentences,
  speech: LetterSpeech,
): readonly string[] => {
  const made = madeSummary(letter, speech);
  const writers = [...new Set(summaryParts.flatMap((part) => own[part]?.by ?? []))];
  return [
    ...summaryParts.map((part) => (own[part] ? `${own[part].text} *` : made[part])).filter(Boolean),
    ...(writers.length > 0 ? [speech.say('own-words', { names: writers.join(', ') })] : []),
  ];
};
