/** The page for the colleague who takes over, on paper: it repeats the record, in the order in which it is needed. */
import { isRest } from '#core/decision/left-of-today.ts';
import { type DocumentPart, decisionWords, sentence } from '#core/episode/documents/document-words.ts';
import { limitLine } from '#core/episode/documents/limit-line.ts';
import { dayInWords, jointInWords, listed } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/handover.ts';
import { type LetterSpeech, letterSpeech, sheetWords } from '#messages/papers/colleague-words.ts';
import { doseText, paperSpeech } from '#messages/papers/paper-speech.ts';
import { methodOn } from '../letter/letter-record.ts';
import type { SheetPaper } from '../sheet/sheet-paper.ts';
import { signsForColleagues } from '../sheet/signs-for-colleagues.ts';
import type { HandoverPaper } from './handover-paper.ts';

const speech = paperSpeech('en');
const english = letterSpeech('en');
const { say: sayLetter } = english;
const saySheet = sheetWords('en');

/** A part without lines says so. */
const part = (title: string, lines: readonly string[], none: string): DocumentPart => ({
  title,
  lines: lines.length > 0 ? lines : [none],
});

const careLine = ({ episodeStatus: { state, change } }: HandoverPaper): string =>
  state === 'not-recorded' || !change
    ? say('no-episode-of-care')
    : sentence(
        say('care-since', {
          state: saySheet(`state-${state}`),
          on: dayInWords(change.on),
          reason: change.reason,
        }),
      );

const dangerLines = ({ dangers }: HandoverPaper): readonly string[] =>
  dangers.map(({ sentence: what, since, acknowledgedBy, assignedName }) =>
    [
      sentence(what),
      say('since', { since: dayInWords(since) }),
      acknowledgedBy ? say('acknowledged-by', { name: acknowledgedBy }) : `${say('not-acknowledged')}.`,
      assignedName ? say('with', { name: assignedName }) : say('nobody-has-taken'),
    ].join(' '),
  );

const pauseLines = ({ clinicianPauses, pauses }: HandoverPaper): readonly string[] => [
  ...clinicianPauses.map(({ joint, cause, by, reason, since }) =>
    sentence(
      say('paused-by', {
        what: joint ? jointInWords(joint) : say('paused-all'),
        since: dayInWords(since),
        name: by,
        reason: cause === 'warning-sign' ? say('after-sign') : reason,
      }),
    ),
  ),
  ...pauses.map(
    ({ joint, since, owner }) =>
      `${jointInWords(joint)}, ${say('paused', { since: dayInWords(since) })} ${
        owner
          ? say(owner.isOver ? 'follows-up-over' : 'follows-up', {
              name: owner.name,
              until: dayInWords(owner.until),
            })
          : say('nobody-follows-it-up')
      }`,
  ),
];

const clearedWords = {
  clinician: say('a-clinician-may-clear'),
  physician: say('a-physician-must-clear'),
} as const;

const ineligibleLines = ({ closed }: HandoverPaper): readonly string[] =>
  closed.map(
    (line) =>
      `${methodOn(line, english)}: ${sentence(line.text)}${line.clearedBy ? ` ${clearedWords[line.clearedBy]}` : ''}`,
  );

const decisionLines = ({ decisions }: HandoverPaper): readonly string[] =>
  decisions.map(({ joint, decision, day, reasons, answeredName }) =>
    [
      `${jointInWords(joint)}, ${dayInWords(day)}: ${decisionWords[decision]}.`,
      reasons.length === 0
        ? say('no-rule-prevented-progress')
        : `${listed(reasons.map(({ rule, threshold }) => `${rule} (${threshold})`))}.`,
      answeredName ? say('answered-by', { name: answeredName }) : say('not-answered'),
    ].join(' '),
  );

const overrideLines = ({ overrides }: HandoverPaper): readonly string[] =>
  overrides.map(
    ({ joint, engine, instead, reason, by, until }) =>
      `${jointInWords(joint)}: ${say('override', {
        word: decisionWords[instead],
        proposed: decisionWords[engine],
        until: dayInWords(until),
      })} ${sentence(`${by}: ${reason}`)}`,
  );

/** Of what rests no dose is said; of what is eased the easier session alone. */
export const doseLines = (
  { inForce }: Pick<HandoverPaper, 'inForce'>,
  { say: sayIn, exercise: nameOf, dose: doseSpeech }: LetterSpeech,
): readonly string[] =>
  inForce.map(({ dose, easierSession, signedName, today }) => {
    const exercise = nameOf(dose.exerciseId);
    const signed = sayIn('signed-by', { name: signedName ?? '' });
    if (isRest(today)) return `${sayIn('dose-rests', { exercise })} ${signed}`;
    return today === 'bad-day'
      ? `${sayIn('dose-easier', { exercise })} ${sentence(doseText(easierSession, doseSpeech))} ${signed}`
      : `${exercise}: ${sentence(doseText(dose, doseSpeech))} ${signed}`;
  });

const partsOf = (paper: HandoverPaper): readonly DocumentPart[] => {
  const { coveringClinician, inForce, unsigned, limits, cautions, clinic } = paper;
  const passes = coveringClinician
    ? say('passes-to', { name: coveringClinician.name })
    : say('passes-to-nobody');
  const hasCuff = inForce.some(({ dose }) => dose.method === 'occlusion');
  return [
    { title: saySheet('care'), lines: [careLine(paper)] },
    {
      title: saySheet('urgent'),
      lines: [...(paper.dangers.length > 0 ? dangerLines(paper) : [say('none-open')]), passes],
    },
    part(say('pauses'), pauseLines(paper), say('nothing-is-paused')),
    part(saySheet('limits'), limits.map(limitLine), say('none-in-force')),
    part(say('methods'), ineligibleLines(paper), say('no-method')),
    part(say('last-three-decisions'), decisionLines(paper), say('none-yet')),
    part(saySheet('overrides'), overrideLines(paper), say('no-override-is-in-force')),
    part(
      say('not-signed-yet'),
      unsigned.map(({ dose }) => `${english.exercise(dose.exerciseId)}: ${sentence(doseText(dose, speech))}`),
      say('no-prescription-needs'),
    ),
    part(say('in-force'), doseLines(paper, english), say('no-prescription-is-in-force')),
    ...(inForce.length > 0
      ? [
          part(sayLetter('cautions'), [...new Set(cautions.map(english.caution))], saySheet('no-caution')),
          signsForColleagues(clinic, hasCuff, 'en'),
        ]
      : []),
  ];
};

export const handoverSheet = (paper: HandoverPaper): SheetPaper => {
  const { clinic, patient } = paper;
  return {
    clinic: clinic.name,
    from: [clinic.name, saySheet('telephone', { phone: clinic.phone })],
    about: saySheet('about', { name: patient.name, on: dayInWords(patient.birthDay) }),
    title: saySheet('handover'),
    parts: partsOf(paper),
    adviceTitle: '',
    signature: null,
  };
};
