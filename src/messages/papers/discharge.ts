/**
 * The summary proposed when an episode of care ends, or is about to. Every sentence repeats a row of the
 * record; what is missing is said to be missing. It claims no cause, and defers to the licensed
 * clinician who signs it and to local rules.
 */

import type { DocumentDecision, DocumentFacts } from '#core/episode/documents/document-facts.ts';
import {
  type CareDocument,
  type DocumentPart,
  type DoseWords,
  sentence,
} from '#core/episode/documents/document-words.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import type { LanguageTag } from '../languages.ts';
import { measuredLine, plannedLine, screeningLines } from './checked.ts';
import { type DischargeSpeech, dischargeSpeech, letterSpeech, sheetWords } from './colleague-words.ts';
import { itemLines, type When } from './discharge-exercises.ts';
import { doseText } from './paper-speech.ts';

/** Up to the end, or to the day of writing where care goes on. */
const periodLines = (
  { from, end }: DocumentFacts,
  today: Day,
  { say, day }: DischargeSpeech,
): readonly string[] => {
  const to = end?.on ?? today;
  const days = say('days', { count: daysBetween(from, to) + 1 });
  const period = say('period', { from: day(from), to: day(to), days });
  if (end === null) return [period, say('goes-on')];
  const { state, on, reason, by } = end;
  const how = state === 'discharged' || state === 'transferred' ? state : 'otherwise';
  return [period, sentence(say(`ended-${how}`, { on: day(on), reason })), say('recorded', { name: by })];
};

const personPart = (facts: DocumentFacts, today: Day, speech: DischargeSpeech): DocumentPart => {
  const { say, tag, quoted, joint, dose } = speech;
  const { diagnoses, joints, followedJoints, goals, referrer } = facts.episode;
  const sayLetter = letterSpeech(tag).say;
  return {
    title: say('care'),
    lines: [
      say('diagnoses', { things: sentence(diagnoses.join('; ')) }),
      say('joints', {
        affected: dose.list(joints.map(joint)),
        followed: dose.list(followedJoints.map(joint)),
      }),
      goals.length > 0 ? say('goals', { goals: goals.map(quoted).join(' ') }) : say('no-goal'),
      say('referred', { name: sentence(referrer ?? sayLetter('not-recorded')) }),
      ...periodLines(facts, today, speech),
    ],
  };
};

const outcomeLines = ({ outcomes }: DocumentFacts, { tag }: DischargeSpeech): readonly string[] => {
  const letter = letterSpeech(tag);
  const twice = outcomes.filter(({ readings }) => readings.length > 1);
  return twice.length === 0
    ? [letter.say('nothing-twice')]
    : twice.map((line) => measuredLine(line, [line.readings[0]!, line.readings.at(-1)!], letter));
};

const sideLinesOf = (
  { sides }: DocumentFacts,
  { say, title, reading, day, sideDifference }: DischargeSpeech,
) =>
  sides.map((line) =>
    say('side-line', {
      title: title(line),
      left: reading(line, line.left.text),
      lefton: day(line.left.day),
      right: reading(line, line.right.text),
      righton: day(line.right.day),
      said: sideDifference(line),
    }),
  );

const logLines = ({ log }: DocumentFacts, { say, tag }: DischargeSpeech): readonly string[] => {
  const { sessions, easierSessions, testSessions, plannedDays, plannedDaysWithout, mornings } = log;
  const letter = letterSpeech(tag);
  const did = [
    say('logged', { sessions: letter.say('sessions', { count: sessions }) }),
    ...(easierSessions > 0 ? [say('easier-sessions', { count: easierSessions })] : []),
    ...(testSessions > 0 ? [say('test-sessions', { count: testSessions })] : []),
  ];
  return [
    `${did.join(', ')}.`,
    plannedDays === 0 ? say('none-planned') : plannedLine(plannedDays, plannedDaysWithout, letter),
    say('mornings-logged', {
      days: letter.say('days', { count: mornings }),
      missing: log.daysWithoutMorning,
      care: letter.say('days', { count: log.careDays }),
    }),
    say('breaks'),
    say('not-logged'),
  ];
};

const answerIn = (answer: DocumentDecision['answer'], { say, tag, quoted }: DischargeSpeech): string => {
  if (answer === null) return say('unanswered');
  const { kind, decision, by: name, reason } = answer;
  return kind === 'override' && decision !== null
    ? sentence(say('overrode', { name, word: quoted(sheetWords(tag)(`word-${decision}`)), reason }))
    : say('accepted', { name });
};

const decisionLine = (
  { joint, decision, day: on, reasons, answer }: DocumentDecision,
  speech: DischargeSpeech,
): string => {
  const { say, day, tag, joint: inWords, threshold: found } = speech;
  return say('decision-line', {
    where: inWords(joint),
    on: day(on),
    word: sheetWords(tag)(`word-${decision}`),
    why: reasons.length === 0 ? say('no-rule') : reasons.map(({ threshold }) => found(threshold)).join('; '),
    answer: answerIn(answer, speech),
  });
};

const checkLines = (
  { checks }: DocumentFacts,
  { say, day, tag, term }: DischargeSpeech,
): readonly string[] => {
  const letter = letterSpeech(tag);
  const things = checks.measured.map(({ title, day: on }) => `${term(title)} ${day(on)}`).join('; ');
  return [...screeningLines(checks, letter), say('measured-last', { things: things || letter.say('none') })];
};

/** A part without lines says so. */
const part = (title: string, lines: readonly string[], none: string): DocumentPart => ({
  title,
  lines: lines.length > 0 ? lines : [none],
});

const partsOf = (
  facts: DocumentFacts,
  today: Day,
  speech: DischargeSpeech,
  words: DoseWords,
): readonly DocumentPart[] => {
  const { say, day, tag } = speech;
  const { clinic, end, lines, decisions, limits } = facts;
  const when: When = end === null ? 'today' : 'ended';
  const work = lines.flatMap((item) => itemLines(item, words, speech, when));
  const told = decisions.map((one) => decisionLine(one, speech));
  const cautions = [...new Set(lines.flatMap(({ last }) => last.cautions.map(speech.caution)))];
  return [
    personPart(facts, today, speech),
    part(say('work'), work, say('no-work')),
    { title: say('outcomes'), lines: outcomeLines(facts, speech) },
    ...(facts.sides.length > 0 ? [{ title: say('sides'), lines: sideLinesOf(facts, speech) }] : []),
    { title: letterSpeech(tag).say('logs'), lines: logLines(facts, speech) },
    part(say('decisions'), told, say('no-decision')),
    part(say(`limits-${when}`), limits.map(speech.limit), say('no-limit')),
    { title: say('checks'), lines: checkLines(facts, speech) },
    part(say('last-cautions'), cautions, sheetWords(tag)('no-caution')),
    {
      title: say('decides'),
      lines: [sentence(say('put-together', { on: day(today), clinic: clinic.name })), say('decides-nothing')],
    },
  ];
};

/** Doses as paper says them: nobody has chosen a unit. */
const onPaper = (speech: DischargeSpeech): DoseWords => ({
  title: ({ exerciseId }) => speech.exercise(exerciseId),
  dose: (dose) => doseText(dose, speech.dose),
});

/** The screen gives its own words for a dose. */
export const dischargeIn = (
  tag: LanguageTag,
  facts: DocumentFacts,
  today: Day,
  words: DoseWords | null = null,
): CareDocument => {
  const speech = dischargeSpeech(tag);
  const { say, day } = speech;
  const { clinic, patient, end } = facts;
  const saySheet = sheetWords(tag);
  return {
    from: [clinic.name, saySheet('telephone', { phone: clinic.phone })],
    about: saySheet('about', { name: patient.name, on: day(patient.birthDay) }),
    title: say(end === null ? 'title-so-far' : 'title'),
    parts: partsOf(facts, today, speech, words ?? onPaper(speech)),
    adviceTitle: '',
    signature: say('signature'),
  };
};
