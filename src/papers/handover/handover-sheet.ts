/** The page for the colleague who takes over, on paper: it repeats the record, in the order in which it is needed. */
import { type DocumentPart, sentence } from '#core/episode/documents/document-words.ts';
import {
  type HandoverSpeech,
  handoverSpeech,
  letterSpeech,
  sheetWords,
} from '#messages/papers/colleague-words.ts';
import { doseText } from '#messages/papers/paper-speech.ts';
import { methodOn } from '../letter/letter-record.ts';
import type { Look } from '../look.ts';
import { doseLines } from '../sheet/dose-lines.ts';
import type { SheetPaper } from '../sheet/sheet-paper.ts';
import { signsForColleagues } from '../sheet/signs-for-colleagues.ts';
import type { HandoverPaper } from './handover-paper.ts';

/** A part without lines says so. */
const part = (title: string, lines: readonly string[], none: string): DocumentPart => ({
  title,
  lines: lines.length > 0 ? lines : [none],
});

const careLine = (
  { episodeStatus: { state, change } }: HandoverPaper,
  { say, day, tag }: HandoverSpeech,
): string =>
  state === 'not-recorded' || !change
    ? say('no-episode-of-care')
    : sentence(
        say('care-since', {
          state: sheetWords(tag)(`state-${state}`),
          on: day(change.on),
          reason: change.reason,
        }),
      );

const dangerLines = (
  { dangers }: HandoverPaper,
  { say, day, danger: inWords }: HandoverSpeech,
): readonly string[] =>
  dangers.map((one) =>
    [
      sentence(inWords(one)),
      say('since', { since: day(one.since) }),
      one.acknowledgedBy
        ? say('acknowledged-by', { name: one.acknowledgedBy })
        : `${say('not-acknowledged')}.`,
      one.assignedName ? say('with', { name: one.assignedName }) : say('nobody-has-taken'),
    ].join(' '),
  );

const pauseLines = (
  { clinicianPauses, pauses }: HandoverPaper,
  { say, day, joint: inWords }: HandoverSpeech,
): readonly string[] => [
  ...clinicianPauses.map(({ joint, cause, by, reason, since }) =>
    sentence(
      say('paused-by', {
        what: joint ? inWords(joint) : say('paused-all'),
        since: day(since),
        name: by,
        reason: cause === 'warning-sign' ? say('after-sign') : reason,
      }),
    ),
  ),
  ...pauses.map(
    ({ joint, since, owner }) =>
      `${inWords(joint)}, ${say('paused', { since: day(since) })} ${
        owner
          ? say(owner.isOver ? 'follows-up-over' : 'follows-up', {
              name: owner.name,
              until: day(owner.until),
            })
          : say('nobody-follows-it-up')
      }`,
  ),
];

const clearedBy = { clinician: 'a-clinician-may-clear', physician: 'a-physician-must-clear' } as const;

const ineligibleLines = (
  { closed }: HandoverPaper,
  { say, tag, reason }: HandoverSpeech,
): readonly string[] =>
  closed.map((line) =>
    [
      `${methodOn(line, letterSpeech(tag))}: ${sentence(reason(line))}`,
      ...(line.clearedBy ? [say(clearedBy[line.clearedBy])] : []),
    ].join(' '),
  );

/** The rest of the reasons are counted: the page is to stay short. */
const reasonsTold = 4;

const reasonsIn = (
  reasons: HandoverPaper['decisions'][number]['reasons'],
  { say, threshold: found }: HandoverSpeech,
): string => {
  const told = reasons.slice(0, reasonsTold).map(({ rule, threshold }) => `${rule} (${found(threshold)})`);
  const more = reasons.length - told.length;
  return [...told, ...(more > 0 ? [say('more-reasons', { count: more })] : [])].join('; ');
};

const decisionLines = ({ decisions }: HandoverPaper, speech: HandoverSpeech): readonly string[] => {
  const { say, day, tag, joint: inWords } = speech;
  return decisions.map(({ joint, decision, day: on, reasons, answeredName }) =>
    [
      `${inWords(joint)}, ${day(on)}: ${sheetWords(tag)(`word-${decision}`)}.`,
      reasons.length === 0 ? say('no-rule-prevented-progress') : `${reasonsIn(reasons, speech)}.`,
      answeredName ? say('answered-by', { name: answeredName }) : say('not-answered'),
    ].join(' '),
  );
};

const overrideLines = (
  { overrides }: HandoverPaper,
  { say, day, tag, joint: inWords }: HandoverSpeech,
): readonly string[] => {
  const saySheet = sheetWords(tag);
  return overrides.map(
    ({ joint, engine, instead, reason, by, until }) =>
      `${inWords(joint)}: ${say('override', {
        word: saySheet(`word-${instead}`),
        proposed: saySheet(`word-${engine}`),
        until: day(until),
      })} ${sentence(`${by}: ${reason}`)}`,
  );
};

const cautionParts = (
  { inForce, cautions, clinic }: HandoverPaper,
  { tag, caution }: HandoverSpeech,
): readonly DocumentPart[] => {
  if (inForce.length === 0) return [];
  const hasCuff = inForce.some(({ dose }) => dose.method === 'occlusion');
  const lines = [...new Set(cautions.map(caution))];
  return [
    part(letterSpeech(tag).say('cautions'), lines, sheetWords(tag)('no-caution')),
    signsForColleagues(clinic, hasCuff, tag),
  ];
};

const partsOf = (paper: HandoverPaper, speech: HandoverSpeech): readonly DocumentPart[] => {
  const { say, tag, limit: limitInWords } = speech;
  const saySheet = sheetWords(tag);
  const { coveringClinician, unsigned, limits } = paper;
  const passes = coveringClinician
    ? say('passes-to', { name: coveringClinician.name })
    : say('passes-to-nobody');
  return [
    { title: saySheet('care'), lines: [careLine(paper, speech)] },
    {
      title: saySheet('urgent'),
      lines: [...(paper.dangers.length > 0 ? dangerLines(paper, speech) : [say('none-open')]), passes],
    },
    part(say('pauses'), pauseLines(paper, speech), say('nothing-is-paused')),
    part(saySheet('limits'), limits.map(limitInWords), say('none-in-force')),
    part(say('methods'), ineligibleLines(paper, speech), say('no-method')),
    part(say('last-three-decisions'), decisionLines(paper, speech), say('none-yet')),
    part(saySheet('overrides'), overrideLines(paper, speech), say('no-override-is-in-force')),
    part(
      say('not-signed-yet'),
      unsigned.map(
        ({ dose }) => `${speech.exercise(dose.exerciseId)}: ${sentence(doseText(dose, speech.dose))}`,
      ),
      say('no-prescription-needs'),
    ),
    part(say('in-force'), doseLines(paper, letterSpeech(tag)), say('no-prescription-is-in-force')),
    ...cautionParts(paper, speech),
  ];
};

export const handoverSheet = (paper: HandoverPaper, { language }: Pick<Look, 'language'>): SheetPaper => {
  const { clinic, patient } = paper;
  const speech = handoverSpeech(language);
  const saySheet = sheetWords(language);
  return {
    clinic: clinic.name,
    from: [clinic.name, saySheet('telephone', { phone: clinic.phone })],
    about: saySheet('about', { name: patient.name, on: speech.day(patient.birthDay) }),
    title: saySheet('handover'),
    parts: partsOf(paper, speech),
    adviceTitle: '',
    signature: null,
  };
};
