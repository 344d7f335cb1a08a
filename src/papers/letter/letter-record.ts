/** The record behind a letter: what its first page rests on, in full. */
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import { methodWords, sentence } from '#core/episode/documents/document-words.ts';
import { limitLine } from '#core/episode/documents/limit-line.ts';
import { limbs, sides } from '#core/exercises/joints.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say as sayNote } from '#messages/en/staff/episode/visit-notes.ts';
import { say } from '#messages/en/staff/papers/letter.ts';
import { doseText, paperSpeech } from '#messages/papers/paper-speech.ts';
import type { LetterPaper } from './letter-paper.ts';

const speech = paperSpeech('en');
const allLimbs = limbs.length * sides.length;

export const named = (things: readonly string[]): string =>
  things.length === 0 ? say('none') : things.join('; ');

/** On which limbs: a method may be used on one and closed on another. */
export const methodOn = ({ method, limbs: on }: LetterPaper['closed'][number]): string => {
  const isEverywhere = on.length === 0 || on.length === allLimbs;
  const where = on.map(({ limb, side }) => `${side} ${limb}`).join(', ');
  return isEverywhere ? methodWords[method] : `${methodWords[method]} (${where})`;
};

const measuredLine = ({ title, readings, change }: OutcomeLine): string =>
  say('measured-all', {
    title,
    readings: readings.map(({ text, day }) => say('reading', { text, on: dayInWords(day) })).join(', '),
    change: change.sentence,
  });

const doseLines = ({ exercises }: LetterPaper): readonly string[] =>
  exercises.flatMap(({ title, first, now }) => [
    say('first-dose', {
      exercise: first.title,
      on: dayInWords(first.signedOn),
      dose: doseText(first.dose, speech),
    }),
    say(now.isWithinSigned ? 'present-dose-within' : 'present-dose', {
      exercise: title,
      on: dayInWords(now.signedOn),
      name: now.signedName,
      dose: doseText(now.dose, speech),
    }),
  ]);

const logLines = ({ log }: LetterPaper): readonly string[] => {
  if (!log) return [say('no-care')];
  const { careDays, sessions, mornings, plannedDays, plannedDaysWithout } = log;
  return [
    say('log-days', { sessions: say('sessions', { count: sessions }), days: careDays, mornings }),
    plannedDays === null
      ? say('log-unplanned')
      : say('log-planned', { planned: plannedDays, without: plannedDaysWithout }),
  ];
};

const screeningLines = ({ checks: { screening } }: LetterPaper): readonly string[] =>
  screening === null
    ? [say('not-screened')]
    : [
        say('screened-on', {
          on: dayInWords(screening.day),
          notknown: named(screening.notKnown),
          notasked: named(screening.notAsked),
        }),
        say('yes', { things: named(screening.yes) }),
        say('no', { count: screening.no }),
      ];

const noteLines = ({ notes }: LetterPaper): readonly string[] =>
  notes.map(({ on, by, parts }) =>
    say('note', {
      on: dayInWords(on),
      name: by,
      text: parts
        .map(({ part, text }) => (part === 'text' ? text : `${sayNote(`part.${part}`)}: ${text}`))
        .map(sentence)
        .join(' '),
    }),
  );

export const recordParts = (letter: LetterPaper) => {
  const cautions = [...new Set(letter.exercises.flatMap((exercise) => exercise.cautions))];
  const parts = [
    { title: say('doses'), lines: doseLines(letter) },
    { title: say('cautions'), lines: cautions },
    {
      title: say('cleared'),
      lines: letter.closed.map((line) =>
        say('cleared-line', { method: methodOn(line), why: sentence(line.text) }),
      ),
    },
    { title: say('dose'), lines: letter.limits.map(limitLine) },
    { title: say('notes'), lines: noteLines(letter) },
    { title: say('logs'), lines: logLines(letter) },
    { title: say('measured'), lines: letter.outcomes.map(measuredLine) },
    {
      title: say('screening'),
      lines: [...screeningLines(letter), say('not-measured', { things: named(letter.checks.notMeasured) })],
    },
  ];
  return parts.filter(({ lines }) => lines.length > 0);
};
