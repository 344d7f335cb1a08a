/** The note about a flare in words, what is asked first. */
import type { DocumentPart } from '#core/episode/documents/document-words.ts';
import type { JointMorningAnswers } from '#core/record/record.ts';
import { answerRemarks } from '#core/screening/answer-remarks.ts';
import { screeningItem } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { daysBetween } from '#core/time/day.ts';
import {
  type FlareNoteSpeech,
  flareNoteSpeech,
  letterSpeech,
  sheetWords,
} from '#messages/papers/colleague-words.ts';
import type { Look } from '../look.ts';
import { doseLines } from '../sheet/dose-lines.ts';
import type { SheetPaper } from '../sheet/sheet-paper.ts';
import { signsForColleagues } from '../sheet/signs-for-colleagues.ts';
import { changeLines } from './flare-note-changes.ts';
import type { FlareNotePaper } from './flare-note-paper.ts';

const flareLines = (
  { joints, jointCounts, diagnoses, isInflammatory, since }: FlareNotePaper,
  { say, day, joint: inWords }: FlareNoteSpeech,
): readonly string[] => [
  say('diagnoses', { things: diagnoses.length > 0 ? diagnoses.join('; ') : say('not-recorded') }),
  say(isInflammatory ? 'inflammatory' : 'not-inflammatory'),
  ...(joints.length === 0 ? [say('no-joint')] : []),
  ...joints.map(({ joint, flare }) => {
    const where = inWords(joint);
    if (flare === null) return say('no-flare', { where, since: day(since) });
    const { first, last, isOpen } = flare;
    const days = say('days', { count: daysBetween(first, last) + 1 });
    return say(isOpen ? 'open' : 'over', { where, first: day(first), last: day(last), days });
  }),
  jointCounts
    ? say('counts', { on: day(jointCounts.day), tender: jointCounts.tender, swollen: jointCounts.swollen })
    : say('no-counts'),
];

/** "not-applicable" was never asked; null was asked and not answered. */
const answered = <A>(
  answer: A | 'not-applicable' | null,
  { say }: FlareNoteSpeech,
  inWords: (given: A) => string,
): string => {
  if (answer === 'not-applicable') return say('not-asked');
  return answer === null ? say('not-answered') : inWords(answer as A);
};

const rowOf = (answers: JointMorningAnswers, on: string, speech: FlareNoteSpeech): readonly string[] => {
  const { say } = speech;
  return [
    on,
    speech.joint(answers.joint),
    answered<number>(answers.pain, speech, String),
    answered<number>(answers.stiffnessMinutes, speech, (count) => say('minutes', { count })),
    answered(answers.swelling, speech, (swelling) =>
      speech.swelling(swelling, answers.swellingQuestion ?? 'absolute'),
    ),
    answered<boolean>(answers.flare, speech, (isFlare) => say(isFlare ? 'yes' : 'no')),
  ];
};

/** Of the whole person, where it was asked. */
const wholeLines = (
  { mornings }: FlareNotePaper,
  { say, day: inWords }: FlareNoteSpeech,
): readonly string[] => {
  const tired = mornings.flatMap(({ fatigue }) => (fatigue === 'not-applicable' ? [] : [fatigue]));
  const others = mornings.filter(({ otherJoint }) => otherJoint === 'worse').map(({ day }) => inWords(day));
  return [
    ...(tired.length > 0
      ? [say('tiredness', { scores: tired.map((score) => score ?? say('not-answered')).join(', ') })]
      : []),
    ...(others.length > 0 ? [say('other-joint', { days: others.join(', ') })] : []),
  ];
};

/** More joints are told morning by morning only where they flared; the others are named. */
const allTold = 2;

const morningPart = (paper: FlareNotePaper, speech: FlareNoteSpeech): SheetPaper['parts'][number] => {
  const { mornings, joints } = paper;
  const { say } = speech;
  const flared = joints.filter(({ flare }) => flare !== null);
  const followed = (flared.length > 0 && joints.length > allTold ? flared : joints).map(({ joint }) => joint);
  const left = joints
    .filter(({ joint }) => !followed.includes(joint))
    .map(({ joint }) => speech.joint(joint));
  const lines = [
    ...(left.length > 0 ? [say('mornings-of-others', { joints: left.join(', ') })] : []),
    ...wholeLines(paper, speech),
  ];
  const rows = mornings.flatMap(({ day, joints: told }) =>
    told
      .filter(({ joint }) => followed.includes(joint))
      .map((answers) => rowOf(answers, speech.day(day), speech)),
  );
  const heads = [say('day'), say('joint'), say('pain'), say('stiffness'), say('swelling'), say('flared')];
  const title = say('mornings');
  return rows.length > 0 ? { title, lines, table: { heads, rows } } : { title, lines: [say('no-mornings')] };
};

const saidOf = (answer: ScreeningItemAnswer, { say, detail, remark }: FlareNoteSpeech): string =>
  [
    say(`answer-${answer.answer}`),
    ...(answer.details ?? []).map((one) => detail(answer.item, one)),
    ...answerRemarks(screeningItem(answer.item)?.asks ?? {}, answer).map(remark),
  ].join('; ');

const takenLines = (
  { medicines, relief, since }: FlareNotePaper,
  speech: FlareNoteSpeech,
): readonly string[] => {
  const { say, day, term } = speech;
  return [
    ...(medicines.length === 0 ? [say('no-medicines')] : []),
    ...medicines.map(({ answer, day: on }) =>
      say('medicine', {
        label: term(screeningItem(answer.item)?.clinicianLabel ?? answer.item),
        said: saidOf(answer, speech),
        on: day(on),
      }),
    ),
    say('relief', { ...relief, since: day(since) }),
    say('dose-not-recorded'),
  ];
};

const easedLines = (
  { eased, since }: FlareNotePaper,
  { say, day, joint: inWords }: FlareNoteSpeech,
): readonly string[] =>
  eased.length === 0
    ? [say('nothing-eased', { since: day(since) })]
    : eased.map(({ joint, decision, first, last, days }) =>
        say('eased-line', {
          where: inWords(joint),
          what: say(`eased-${decision}`),
          days: say('days', { count: days }),
          first: day(first),
          last: day(last),
        }),
      );

const exerciseParts = (
  { inForce, cautions, clinic }: FlareNotePaper,
  { tag, caution }: FlareNoteSpeech,
): readonly DocumentPart[] => {
  if (inForce.length === 0) return [];
  const hasCuff = inForce.some(({ dose }) => dose.method === 'occlusion');
  const lines = [...new Set(cautions.map(caution))];
  return [
    {
      title: letterSpeech(tag).say('cautions'),
      lines: lines.length > 0 ? lines : [sheetWords(tag)('no-caution')],
    },
    signsForColleagues(clinic, hasCuff, tag),
  ];
};

export const flareNoteSheet = (paper: FlareNotePaper, { language }: Pick<Look, 'language'>): SheetPaper => {
  const speech = flareNoteSpeech(language);
  const { clinic, patient, inForce } = paper;
  const { say, day, tag } = speech;
  return {
    clinic: clinic.name,
    from: [clinic.name, sheetWords(tag)('telephone', { phone: clinic.phone }), say('to')],
    about: say('about', {
      name: patient.name,
      on: day(patient.birthDay),
      number: patient.patientNumber ?? say('not-recorded'),
    }),
    title: say('title'),
    parts: [
      { title: say('asked'), lines: [say('ask')] },
      { title: say('flare'), lines: flareLines(paper, speech) },
      { title: say('eased'), lines: easedLines(paper, speech) },
      {
        title: say('now'),
        lines: inForce.length > 0 ? doseLines(paper, letterSpeech(tag)) : [say('none-in-force')],
      },
      { title: say('taken'), lines: takenLines(paper, speech) },
      { title: say('changes'), lines: changeLines(paper, speech) },
      morningPart(paper, speech),
      ...exerciseParts(paper, speech),
    ],
    adviceTitle: '',
    signature: say('signature'),
  };
};
