/** The patient's own copy of the record in the patient's language; what people typed stays as typed. */

import { redFlagClasses, redFlagOfCuff } from '#core/decision/facts/facts.ts';
import { sentence } from '#core/episode/documents/document-words.ts';
import { limitTold } from '#core/episode/limit-cautions.ts';

import { cautionText } from '#messages/cautions.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { exerciseName } from '#messages/exercises.ts';
import { pageWord } from '#messages/page-words.ts';
import { doseText } from '#messages/papers/paper-speech.ts';
import { translate } from '#messages/translate.ts';
import type { Look } from '../look.ts';
import type { SheetPaper } from '../sheet/sheet-paper.ts';
import { healthParts, nutritionLines } from './record-health.ts';
import { logParts } from './record-logs.ts';
import type { RecordPaper, Written } from './record-paper.ts';
import { type RecordWords, recordWords } from './record-words.ts';

type Part = SheetPaper['parts'][number];

const part = (title: string, lines: readonly string[], { say }: RecordWords): Part => ({
  title,
  lines: lines.length > 0 ? lines : [say('none')],
});

const youLines = ({ patient, diagnoses }: RecordPaper, { say }: RecordWords): readonly string[] => [
  ...(patient.patientNumber ? [say('number', { number: patient.patientNumber })] : []),
  ...(patient.phone ? [say('ring', { phone: patient.phone })] : []),
  ...diagnoses.map((diagnosis) => say('diagnosis', { diagnosis })),
];

const careLines = ({ changes, goals }: RecordPaper, { say }: RecordWords): readonly string[] => [
  ...changes.map(({ to, on, reason }) => say(`care-${to}`, { day: on, reason: sentence(reason) })),
  ...goals.map((goal) => say('goal', { goal })),
];

const versionLines = ({ versions }: RecordPaper, { say, tag, speech }: RecordWords): readonly string[] => [
  ...(versions.length > 0 ? [say('not-a-plan')] : []),
  ...versions.map(({ dose, badDay, signedName, signedOn, endedOn }) =>
    [
      say('version', {
        exercise: exerciseName(dose.exerciseId)[tag],
        dose: doseText(dose, speech),
        easier: doseText(badDay, speech),
        name: signedName,
        day: signedOn,
      }),
      ...(endedOn ? [say('version-ended', { day: endedOn })] : []),
    ].join(' '),
  ),
];

const keepLines = ({ versions }: RecordPaper, { tag }: RecordWords): readonly string[] => [
  ...new Set(versions.flatMap(({ cautions }) => cautions.map(({ patient }) => cautionText(patient)[tag]))),
];

const usualLines = ({ baselines }: RecordPaper, { say }: RecordWords): readonly string[] =>
  baselines.map(({ joint, usualPain, acceptablePainLimit, usualStiffnessMinutes, setBy, setOn }) =>
    say('usual-line', {
      joint,
      pain: usualPain ?? say('not-set'),
      limit: acceptablePainLimit,
      minutes: usualStiffnessMinutes,
      name: setBy,
      day: setOn,
    }),
  );

const signLines = ({ signs }: RecordPaper, { say, tag }: RecordWords): readonly string[] =>
  signs.map(({ on, flags }) => {
    const what = flags.map((flag) => pageWord(tag, `flag.${flag}`)).join('; ');
    return say('sign-line', { day: on, what: sentence(what || say('sign-unnamed')) });
  });

const measuredLines = ({ measured }: RecordPaper, { say, shortDay }: RecordWords): readonly string[] =>
  measured.map(({ title, readings }) =>
    say('measured-line', {
      title,
      readings: readings
        .map(({ text, day, atDistance }) =>
          atDistance
            ? say(`measured-${atDistance}`, { text, on: shortDay(day) })
            : `${text} (${shortDay(day)})`,
        )
        .join(', '),
    }),
  );

const consentLines = ({ consents }: RecordPaper, { say, tag }: RecordWords): readonly string[] =>
  consents.map(({ act, kind, on }) =>
    say(`consent-${act}`, { day: on, what: pageWord(tag, `consent.${kind}`) }),
  );

const aroundLines = ({ limits, events }: RecordPaper, { say, tag }: RecordWords): readonly string[] => [
  ...limits.flatMap((limit) => {
    const [told, { from: day, to: end }] = [limitTold(limit), limit];
    const what = told && cautionText(told)[tag];
    return what ? [end ? say('limit-until', { day, end, what }) : say('limit', { day, what })] : [];
  }),
  ...events.map(({ day, kind, remark }) =>
    [say(`event-${kind}`, { day }), ...(remark ? [say('remark', { remark })] : [])].join(' '),
  ),
];

const written = (
  key: 'note' | 'message',
  rows: readonly Written[],
  { say }: RecordWords,
): readonly string[] => rows.map(({ on, by, text }) => say(key, { day: on, name: by, text }));

/** As the plan has them: a record that shows exercises names when to stop, and whom to ring. */
const stopPart = ({ clinic, versions }: RecordPaper, { tag }: RecordWords): readonly Part[] => {
  if (versions.length === 0) return [];
  const language = everyLanguage[tag];
  const sheet = language.sentences['self-management'];
  const hasCuff = versions.some(({ dose }) => dose.method === 'occlusion');
  const list = (name: keyof typeof redFlagClasses) =>
    redFlagClasses[name]
      .filter((flag) => hasCuff || flag !== redFlagOfCuff)
      .map((flag) => pageWord(tag, `flag.${flag}`))
      .join('; ');
  const { phone, emergencyNumber, urgentNumber } = clinic;
  const said = (key: 'ring-emergency' | 'speak-same-day' | 'nobody-there' | 'ring-clinic', number: string) =>
    translate(sheet[key], { number, phone: number }, language);
  return [
    {
      title: pageWord(tag, 'handout.stop'),
      lines: [
        `${said('ring-emergency', emergencyNumber)}: ${sentence(list('emergency'))}`,
        `${said('speak-same-day', phone)}: ${sentence(list('same-day'))} ${said('nobody-there', urgentNumber)}`,
        `${said('ring-clinic', phone)}: ${sentence(list('routine'))}`,
      ],
    },
  ];
};

const partsOf = (paper: RecordPaper, words: RecordWords): readonly Part[] => {
  const { say } = words;
  return [
    part(say('what-it-is'), [say('lead')], words),
    part(say('you'), youLines(paper, words), words),
    part(say('care'), careLines(paper, words), words),
    part(say('exercises'), versionLines(paper, words), words),
    part(say('keep'), keepLines(paper, words), words),
    ...stopPart(paper, words),
    part(say('usual'), usualLines(paper, words), words),
    part(say('measured'), measuredLines(paper, words), words),
    part(say('signs'), signLines(paper, words), words),
    part(say('around'), aroundLines(paper, words), words),
    part(say('consents'), consentLines(paper, words), words),
    part(pageWord(words.tag, 'handout.protein'), nutritionLines(paper, words), words),
    part(say('notes'), written('note', paper.notes, words), words),
    part(say('messages'), written('message', paper.messages, words), words),
    ...logParts(paper, words),
    ...healthParts(paper, words),
    part(say('left-out'), [say('left-out-list')], words),
  ];
};

export const recordSheet = (paper: RecordPaper, { language }: Pick<Look, 'language'>): SheetPaper => {
  const words = recordWords(language);
  const { clinic, patient } = paper;
  const tongue = everyLanguage[language];
  return {
    clinic: clinic.name,
    isLong: true,
    from: [clinic.name, words.say('telephone', { phone: clinic.phone })],
    about: translate(
      tongue.sentences['plan-paper'].about,
      { name: patient.name, day: patient.birthDay },
      tongue,
    ),
    title: words.say('title'),
    parts: partsOf(paper, words),
    adviceTitle: '',
    signature: null,
  };
};

export const recordFileName = ({ language, printedOn }: Pick<Look, 'language' | 'printedOn'>): string =>
  `${everyLanguage[language].sentences['record-paper'].file}-${printedOn}.pdf`;
