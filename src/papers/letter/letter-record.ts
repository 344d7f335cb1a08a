/** The record behind a letter: what its first page rests on, in full. */
import { sentence } from '#core/episode/documents/document-words.ts';
import { type Limb, limbs, type Side, sides } from '#core/exercises/joints.ts';
import type { Method } from '#core/prescribing/methods.ts';
import { say as sayNote } from '#messages/en/staff/episode/visit-notes.ts';
import { measuredLine, plannedLine, screeningLines } from '#messages/papers/checked.ts';
import type { LetterSpeech } from '#messages/papers/colleague-words.ts';
import { doseText } from '#messages/papers/paper-speech.ts';
import type { LetterPaper } from './letter-paper.ts';

const allLimbs = limbs.length * sides.length;

/** On which limbs: a method may be used on one and closed on another. */
export const onLimbs = (
  method: Method,
  on: readonly { readonly limb: Limb; readonly side: Side }[],
  { say, limb: inWords }: LetterSpeech,
): string => {
  const isEverywhere = on.length === 0 || on.length === allLimbs;
  const where = on.map(({ limb, side }) => inWords(`${side}-${limb}`)).join(', ');
  return isEverywhere ? say(`method-${method}`) : `${say(`method-${method}`)} (${where})`;
};

export const methodOn = ({ method, limbs: on }: LetterPaper['closed'][number], speech: LetterSpeech) =>
  onLimbs(method, on, speech);

const doseLines = ({ exercises }: LetterPaper, { say, day, exercise, dose }: LetterSpeech) =>
  exercises.flatMap(({ first, now }) => [
    say('first-dose', {
      exercise: exercise(first.dose.exerciseId),
      on: day(first.signedOn),
      dose: doseText(first.dose, dose),
    }),
    say(now.isWithinSigned ? 'present-dose-within' : 'present-dose', {
      exercise: exercise(now.dose.exerciseId),
      on: day(now.signedOn),
      name: now.signedName,
      dose: doseText(now.dose, dose),
    }),
  ]);

const logLines = ({ log }: LetterPaper, speech: LetterSpeech): readonly string[] => {
  const { say } = speech;
  if (!log) return [say('no-care')];
  const { careDays, sessions, mornings, plannedDays, plannedDaysWithout } = log;
  return [
    say('log-days', { sessions: say('sessions', { count: sessions }), days: careDays, mornings }),
    plannedLine(plannedDays, plannedDaysWithout, speech),
  ];
};

/** The headings of a note stay in the language it was written in. */
const noteLines = ({ notes }: LetterPaper, { say, day }: LetterSpeech): readonly string[] =>
  notes.map(({ on, by, parts }) =>
    say('note', {
      on: day(on),
      name: by,
      text: parts
        .map(({ part, text }) => (part === 'text' ? text : `${sayNote(`part.${part}`)}: ${text}`))
        .map(sentence)
        .join(' '),
    }),
  );

export const recordParts = (letter: LetterPaper, speech: LetterSpeech) => {
  const { say } = speech;
  const cautions = new Set(letter.exercises.flatMap(({ cautions: all }) => all.map(speech.caution)));
  const parts = [
    { title: say('doses'), lines: doseLines(letter, speech) },
    { title: say('cautions'), lines: [...cautions] },
    {
      title: say('cleared'),
      lines: letter.closed.map((line) =>
        say('cleared-line', { method: methodOn(line, speech), why: sentence(speech.reason(line)) }),
      ),
    },
    { title: say('dose'), lines: letter.limits.map(speech.limit) },
    { title: say('notes'), lines: noteLines(letter, speech) },
    { title: say('logs'), lines: logLines(letter, speech) },
    {
      title: say('measured'),
      lines: letter.outcomes.map((line) => measuredLine(line, line.readings, speech)),
    },
    { title: say('screening'), lines: screeningLines(letter.checks, speech) },
  ];
  return parts.filter(({ lines }) => lines.length > 0);
};
