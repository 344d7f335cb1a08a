/** The note about a flare in words, what is asked first. */
import { type DocumentPart, sentence } from '#core/episode/documents/document-words.ts';
import type { JointMorningAnswers } from '#core/record/record.ts';
import { dayInWords, jointInWords, swellingInWords } from '#core/review/plain-words.ts';
import { daysBetween } from '#core/time/day.ts';
import { aboutEvent } from '#core/worklist/sentences.ts';
import { say as sayHandover } from '#messages/en/staff/handover.ts';
import { say } from '#messages/en/staff/papers/flare-note.ts';
import { say as saySheet } from '#messages/en/staff/papers/sheet.ts';
import { pageWord } from '#messages/page-words.ts';
import { letterSpeech } from '#messages/papers/letter-words.ts';
import { doseText, paperSpeech } from '#messages/papers/paper-speech.ts';
import { doseLines } from '../handover/handover-sheet.ts';
import type { SheetPaper } from '../sheet/sheet-paper.ts';
import { signsForColleagues } from '../sheet/signs-for-colleagues.ts';
import type { FlareNotePaper } from './flare-note-paper.ts';

const speech = paperSpeech('en');
const { say: sayLetter } = letterSpeech('en');

const flareLines = ({ joints, jointCounts, diagnoses, isInflammatory, since }: FlareNotePaper) => [
  say('diagnoses', { things: diagnoses.length > 0 ? diagnoses.join('; ') : say('not-recorded') }),
  say(isInflammatory ? 'inflammatory' : 'not-inflammatory'),
  ...(joints.length === 0 ? [say('no-joint')] : []),
  ...joints.map(({ joint, flare }) => {
    const where = jointInWords(joint);
    if (flare === null) return say('no-flare', { where, since: dayInWords(since) });
    const { first, last, isOpen } = flare;
    const days = say('days', { count: daysBetween(first, last) + 1 });
    return say(isOpen ? 'open' : 'over', { where, first: dayInWords(first), last: dayInWords(last), days });
  }),
  jointCounts
    ? say('counts', {
        on: dayInWords(jointCounts.day),
        tender: jointCounts.tender,
        swollen: jointCounts.swollen,
      })
    : say('no-counts'),
];

/** "not-applicable" was never asked; null was asked and not answered. */
const answered = <A>(answer: A | 'not-applicable' | null, inWords: (given: A) => string): string => {
  if (answer === 'not-applicable') return say('not-asked');
  return answer === null ? say('not-answered') : inWords(answer as A);
};

const rowOf = (answers: JointMorningAnswers, day: string): readonly string[] => [
  day,
  jointInWords(answers.joint),
  answered<number>(answers.pain, String),
  answered<number>(answers.stiffnessMinutes, (count) => say('minutes', { count })),
  answered(answers.swelling, (swelling) => swellingInWords(swelling, answers.swellingQuestion ?? 'absolute')),
  answered<boolean>(answers.flare, (isFlare) => say(isFlare ? 'yes' : 'no')),
];

const morningPart = ({ mornings, joints }: FlareNotePaper): SheetPaper['parts'][number] => {
  const followed = joints.map(({ joint }) => joint);
  const rows = mornings.flatMap(({ day, joints: told }) =>
    told.filter(({ joint }) => followed.includes(joint)).map((answers) => rowOf(answers, dayInWords(day))),
  );
  const heads = [say('day'), say('joint'), say('pain'), say('stiffness'), say('swelling'), say('flared')];
  const title = say('mornings');
  return rows.length > 0
    ? { title, lines: [], table: { heads, rows } }
    : { title, lines: [say('no-mornings')] };
};

const takenLines = ({ medicines, relief, since }: FlareNotePaper): readonly string[] => [
  ...(medicines.length === 0 ? [say('no-medicines')] : []),
  ...medicines.map(({ label, said, day }) => say('medicine', { label, said, on: dayInWords(day) })),
  say('relief', { ...relief, since: dayInWords(since) }),
  say('dose-not-recorded'),
];

const changeLines = ({ events, signs, signed }: FlareNotePaper): readonly string[] => {
  const all = [
    ...events.map(({ day, kind, joint, remark, medicine }) => {
      const what = [
        aboutEvent[kind] ?? kind,
        ...(medicine ? [medicine] : []),
        ...(remark ? [`“${remark}”`] : []),
      ].join(': ');
      const on = dayInWords(day);
      return {
        day,
        text: joint
          ? say('event-where', { on, what, where: jointInWords(joint) })
          : say('event', { on, what }),
      };
    }),
    ...signs.map(({ on, flags }) => ({
      day: on,
      text: say('sign', {
        on: dayInWords(on),
        what: sentence(
          flags.map((flag) => `“${pageWord('en', `flag.${flag}`)}”`).join('; ') || say('sign-unnamed'),
        ),
      }),
    })),
    ...signed.map(({ on, title, dose }) => ({
      day: on,
      text: say('signed', { on: dayInWords(on), exercise: title, dose: doseText(dose, speech) }),
    })),
  ];
  const lines = all.toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)).map(({ text }) => text);
  return [...(lines.length > 0 ? lines : [say('no-changes')]), say('not-other')];
};

const easedLines = ({ eased, since }: FlareNotePaper): readonly string[] =>
  eased.length === 0
    ? [say('nothing-eased', { since: dayInWords(since) })]
    : eased.map(({ joint, decision, first, last, days }) =>
        say('eased-line', {
          where: jointInWords(joint),
          what: say(`eased-${decision}`),
          days: say('days', { count: days }),
          first: dayInWords(first),
          last: dayInWords(last),
        }),
      );

const doneLines = (paper: FlareNotePaper): readonly string[] =>
  paper.inForce.length > 0 ? doseLines(paper) : [sayHandover('no-prescription-is-in-force')];

const exerciseParts = ({ inForce, cautions, clinic }: FlareNotePaper): readonly DocumentPart[] => {
  if (inForce.length === 0) return [];
  const hasCuff = inForce.some(({ dose }) => dose.method === 'occlusion');
  return [
    { title: sayLetter('cautions'), lines: cautions.length > 0 ? cautions : [saySheet('no-caution')] },
    signsForColleagues(clinic, hasCuff),
  ];
};

export const flareNoteSheet = (paper: FlareNotePaper): SheetPaper => {
  const { clinic, patient } = paper;
  return {
    clinic: clinic.name,
    from: [clinic.name, saySheet('telephone', { phone: clinic.phone }), say('to')],
    about: say('about', {
      name: patient.name,
      on: dayInWords(patient.birthDay),
      number: patient.patientNumber ?? say('not-recorded'),
    }),
    title: say('title'),
    parts: [
      { title: say('asked'), lines: [say('ask')] },
      { title: say('flare'), lines: flareLines(paper) },
      { title: say('eased'), lines: easedLines(paper) },
      { title: say('now'), lines: doneLines(paper) },
      { title: say('taken'), lines: takenLines(paper) },
      { title: say('changes'), lines: changeLines(paper) },
      morningPart(paper),
      ...exerciseParts(paper),
    ],
    adviceTitle: '',
    signature: say('signature'),
  };
};
