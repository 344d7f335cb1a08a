/** The letter to another doctor in words: what is asked first, a page that is read in a minute, the record behind it. */
import { linesIn } from '#core/episode/letters/letter.ts';
import type { Day } from '#core/time/day.ts';
import { named } from '#messages/papers/checked.ts';
import type { LetterSpeech } from '#messages/papers/colleague-words.ts';
import { capitalised } from '#messages/translate.ts';
import { doseIn } from './letter-dose.ts';
import type { LetterFrame } from './letter-frame.ts';
import { outcomesIn } from './letter-outcomes.ts';
import type { LetterPaper } from './letter-paper.ts';
import { recordParts } from './letter-record.ts';
import { asksOf, risksIn } from './letter-risks.ts';
import { summaryIn } from './letter-summary.ts';

const goalsIn = ({ goals }: LetterPaper, { say }: LetterSpeech): readonly string[] =>
  goals.length === 0
    ? [say('no-goals')]
    : goals.map(({ goal, state }) => say('goal', { goal, state: say(`goal-${state}`) }));

/** The heading says already that it was not checked. */
const thingsIn = (sentence: string): string => capitalised(sentence.replace(/^[^:]+: /, ''));

/** What nobody examined for the present doses; it stands among their cautions as well. */
const notExamined = ({ exercises }: LetterPaper, { caution }: LetterSpeech): readonly string[] => [
  ...new Set(
    exercises.flatMap(({ cautions }) =>
      cautions.filter(({ patient }) => patient.key === 'not-checked').map((one) => thingsIn(caution(one))),
    ),
  ),
];

const screenedIn = ({ checks: { screening } }: LetterPaper, speech: LetterSpeech): string => {
  if (screening === null) return speech.say('not-screened');
  const { notKnown, notAsked } = screening;
  const on = speech.day(screening.day);
  return notKnown.length + notAsked.length === 0
    ? speech.say('screened-all', { on })
    : speech.say('screened-on', {
        on,
        notknown: named(notKnown, speech),
        notasked: named(notAsked, speech),
      });
};

const uncheckedIn = (letter: LetterPaper, speech: LetterSpeech): readonly string[] => [
  ...notExamined(letter, speech),
  screenedIn(letter, speech),
];

const beforeIn = (letter: LetterPaper, { own }: LetterFrame, speech: LetterSpeech) => {
  const { say } = speech;
  const asks = asksOf(letter, speech);
  return [
    { title: say('asked'), lines: asks.length > 0 ? asks : [say('nothing-asked')] },
    {
      title: say('diagnoses'),
      lines: letter.diagnoses.length > 0 ? letter.diagnoses : [say('not-recorded')],
    },
    { title: say('summary'), lines: summaryIn(letter, own, speech) },
  ];
};

const afterIn = (letter: LetterPaper, speech: LetterSpeech) => {
  const { say, day } = speech;
  const { nextVisit } = letter;
  return [
    { title: say('dose'), lines: doseIn(letter, speech) },
    { title: say('medicines'), lines: [say('medicines-not-reviewed')] },
    { title: say('risks'), lines: risksIn(letter, speech) },
    {
      title: say('plan'),
      lines: [nextVisit === null ? say('no-visit') : say('next-visit', { on: day(nextVisit) })],
    },
    { title: say('goals'), lines: goalsIn(letter, speech) },
    { title: say('unchecked'), lines: uncheckedIn(letter, speech) },
  ];
};

const toIn = ({ addressee }: LetterFrame, { say }: LetterSpeech): readonly string[] => {
  if (!addressee) return [say('no-addressee')];
  const { name, role, organisation, address } = addressee;
  const person = [say('to', { name }), ...(role ? [role] : [])].join(', ');
  const place = [...(organisation ? [organisation] : []), ...linesIn(address)];
  return place.length > 0 ? [person, place.join(', ')] : [person];
};

const copiesIn = ({ copies, toPatient }: LetterFrame, { say }: LetterSpeech): string => {
  const names = [...copies, ...(toPatient ? [say('copy-to-patient')] : [])];
  return names.length > 0 ? say('copies', { names: names.join('; ') }) : say('copies-none');
};

const signatureIn = ({ signed }: LetterFrame, written: string, { say }: LetterSpeech): string => {
  if (!signed) return say('not-signed');
  const { name, role, registration } = signed;
  return say('signed', { name, role, number: registration ?? say('not-recorded'), on: written });
};

const hasCuff = ({ exercises }: LetterPaper): boolean =>
  exercises.some(({ now }) => now.dose.method === 'occlusion');

/**
 * All that a letter says but for the day it is printed on. Kept whole when it is signed, so a change of its
 * shape has to read the one before as well.
 */
export const letterWords = (
  letter: LetterPaper,
  frame: LetterFrame,
  speech: LetterSpeech,
  writtenOn: Day,
) => {
  const { say, day } = speech;
  const { clinic, patient } = letter;
  const written = day(writtenOn);
  return {
    language: speech.tag,
    title: say('title', { name: patient.name }),
    author: clinic.name,
    draft: frame.signed ? null : say('draft'),
    from: say('from', { clinic: clinic.name, phone: clinic.phone }),
    written,
    to: toIn(frame, speech),
    about: say('about', {
      name: patient.name,
      on: day(patient.birthDay),
      number: patient.patientNumber ?? say('not-recorded'),
    }),
    before: beforeIn(letter, frame, speech),
    outcomes: outcomesIn(letter, speech),
    after: afterIn(letter, speech),
    signature: signatureIn(frame, written, speech),
    copies: copiesIn(frame, speech),
    reply: {
      title: say('reply'),
      boxes: [
        ...(asksOf(letter, speech).length > 0 ? [say('reply-answer')] : []),
        say('reply-medicine'),
        // Only where there is one to stop.
        ...(hasCuff(letter) ? [say('reply-cuff')] : []),
        say('reply-ring'),
        say('reply-none'),
      ],
    },
    record: { title: say('record'), parts: recordParts(letter, speech) },
  };
};

export type LetterWords = ReturnType<typeof letterWords>;
