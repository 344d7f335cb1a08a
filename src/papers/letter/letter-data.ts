/** The letter to another doctor in words: what is asked first, a page that is read in a minute, the record behind it. */

import { isRest } from '#core/decision/left-of-today.ts';
import { methodWords, sentence } from '#core/episode/documents/document-words.ts';
import { limitLine } from '#core/episode/documents/limit-line.ts';
import { goalStateWords } from '#core/episode/goals.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { doseInHand, doseTitle } from '#messages/doses.ts';
import { say } from '#messages/en/staff/papers/letter.ts';
import { pageWord } from '#messages/page-words.ts';
import { paperSpeech } from '#messages/papers/paper-speech.ts';
import type { Look } from '../look.ts';
import { outcomeSentence, outcomesIn } from './letter-outcomes.ts';
import type { LetterPaper } from './letter-paper.ts';
import { methodOn, named, recordParts } from './letter-record.ts';

const speech = paperSpeech('en');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const askedIn = ({ closed, openSigns }: LetterPaper): readonly string[] => {
  const lines = [
    ...openSigns.map(({ flags, reportedOn }) =>
      say('sign-open', {
        on: dayInWords(reportedOn),
        what: sentence(
          flags.map((flag) => `“${pageWord('en', `flag.${flag}`)}”`).join('; ') || say('sign-unnamed'),
        ),
      }),
    ),
    ...closed
      .filter(({ clearedBy }) => clearedBy === 'physician')
      .map((line) => say('clear', { method: methodOn(line), why: sentence(line.text) })),
  ];
  return lines.length > 0 ? lines : [say('nothing-asked')];
};

const spanOf = ({ low, high }: { readonly low: number; readonly high: number }): string =>
  low === high ? String(low) : say('pain-span', { low, high });

/** How the joints answered: what was advised, and the mornings at the start and now. */
const courseIn = ({ mornings, advised: { eased, paused } }: LetterPaper): readonly string[] => [
  ...(eased + paused > 0
    ? [say('advised', { eased: say('days', { count: eased }), paused: say('days', { count: paused }) })]
    : []),
  ...mornings.map(({ joint, first, last }) =>
    say('morning-pain', { where: jointInWords(joint), first: spanOf(first), last: spanOf(last) }),
  ),
];

/** Where everything rests, that is said and nothing of the dose. */
const nowIn = ({ exercises, decisions }: LetterPaper): string =>
  exercises.length > 0 && exercises.every(({ today }) => isRest(today))
    ? say('all-rests')
    : decisions
        .map(({ joint, decision, setAnewOn }) => {
          const where = capital(jointInWords(joint));
          return setAnewOn === null
            ? say(`decision-${decision}`, { where })
            : say('set-anew', { where, on: dayInWords(setAnewOn) });
        })
        .join(' ');

const summaryIn = (letter: LetterPaper): readonly string[] => {
  const { since, log, exercises } = letter;
  const methods = [...new Set(exercises.map(({ now }) => methodWords[now.dose.method]))].join(', ');
  return [
    [
      since === null ? say('no-care') : say('since', { on: dayInWords(since) }),
      exercises.length === 0
        ? say('none-prescribed')
        : say('prescribed', { count: exercises.length, methods }),
    ].join(' '),
    ...(log
      ? [
          say('logged', {
            sessions: say('sessions', { count: log.sessions }),
            mornings: say('mornings', { count: log.mornings }),
          }),
        ]
      : []),
    outcomeSentence(letter),
    ...courseIn(letter),
    nowIn(letter),
  ].filter((text) => text !== '');
};

/** Without its rest and tempo, which stand in the record behind. */
const inShort = (dose: Dose): string => [doseTitle(dose, speech), ...doseInHand(dose, speech)].join(', ');

const doseIn = (letter: LetterPaper): readonly string[] => [
  ...letter.exercises.map(({ title, now, today }) => {
    const signed = { exercise: title, on: dayInWords(now.signedOn) };
    if (isRest(today)) return say('dose-rests', { exercise: title });
    return today === 'bad-day'
      ? say('dose-easier', { exercise: title })
      : say('dose-now', { ...signed, dose: inShort(now.dose) });
  }),
  ...(letter.exercises.length === 0 ? [say('no-dose')] : []),
  ...letter.painLimits.map(({ joint, limit }) =>
    limit === null
      ? say('no-pain-limit', { where: jointInWords(joint) })
      : say('pain-limit', { where: jointInWords(joint), limit }),
  ),
  ...(letter.limits.length === 0 ? [say('no-limits')] : letter.limits.map(limitLine)),
];

const risksIn = ({ openSigns, isPaused, closed }: LetterPaper): readonly string[] => [
  ...(openSigns.length === 0 ? [say('no-sign')] : []),
  ...(isPaused ? [say('is-paused')] : []),
  ...closed
    .filter(({ clearedBy }) => clearedBy === 'clinician')
    .map((line) => say('closed', { method: methodOn(line), why: sentence(line.text) })),
];

const goalsIn = ({ goals }: LetterPaper): readonly string[] =>
  goals.length === 0
    ? [say('no-goals')]
    : goals.map(({ goal, state }) => say('goal', { goal, state: goalStateWords[state] }));

const uncheckedIn = ({ checks: { screening } }: LetterPaper): readonly string[] => [
  screening === null
    ? say('not-screened')
    : say('screened-on', {
        on: dayInWords(screening.day),
        notknown: named(screening.notKnown),
        notasked: named(screening.notAsked),
      }),
];

const beforeIn = (letter: LetterPaper) => [
  { title: say('asked'), lines: askedIn(letter) },
  {
    title: say('diagnoses'),
    lines: letter.diagnoses.length > 0 ? letter.diagnoses : [say('not-recorded')],
  },
  { title: say('summary'), lines: summaryIn(letter) },
];

const afterIn = (letter: LetterPaper) => [
  { title: say('dose'), lines: doseIn(letter) },
  { title: say('medicines'), lines: [say('medicines-not-reviewed')] },
  { title: say('risks'), lines: risksIn(letter) },
  {
    title: say('plan'),
    lines: [
      letter.nextVisit === null ? say('no-visit') : say('next-visit', { on: dayInWords(letter.nextVisit) }),
    ],
  },
  { title: say('goals'), lines: goalsIn(letter) },
  { title: say('unchecked'), lines: uncheckedIn(letter) },
];

export const letterData = (letter: LetterPaper, { printedOn }: Look) => {
  const { clinic, patient } = letter;
  const missing = say('not-recorded');
  const day = dayInWords(printedOn);
  return {
    title: say('title', { name: patient.name }),
    author: clinic.name,
    sayUnprintable: (names: string) => say('unprintable', { names }),
    draft: say('draft'),
    from: say('from', { clinic: clinic.name, phone: clinic.phone }),
    written: day,
    to: letter.referrer ? say('to', { name: letter.referrer }) : say('no-addressee'),
    about: say('about', {
      name: patient.name,
      on: dayInWords(patient.birthDay),
      number: patient.patientNumber ?? missing,
    }),
    before: beforeIn(letter),
    outcomes: outcomesIn(letter),
    after: afterIn(letter),
    signature: say('signature'),
    copies: say('copies'),
    reply: {
      title: say('reply'),
      boxes: [say('reply-medicine'), say('reply-cuff'), say('reply-ring'), say('reply-none')],
    },
    record: { title: say('record'), parts: recordParts(letter) },
    footer: say('footer', { on: day, clinic: clinic.name }),
  };
};
