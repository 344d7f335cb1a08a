/**
 * The summary proposed when an episode of care ends, or is about to. Every sentence repeats a row of the
 * record; what is missing is said to be missing. It claims no cause, and defers to the licensed
 * clinician who signs it and to local rules.
 */

import { counted, dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import type { DocumentDecision, DocumentFacts, DocumentItem } from './document-facts.ts';
import {
  all,
  type CareDocument,
  type DocumentPart,
  type DoseWords,
  decisionWords,
  endWords,
  jointsInWords,
  methodWords,
  sentence,
} from './document-words.ts';
import { limitLine } from './limit-line.ts';
import { outcomePart } from './outcome-part.ts';

/** Up to the end, or to the day of writing where care goes on. */
const periodLines = ({ from, end }: DocumentFacts, today: Day): readonly string[] => {
  const to = end?.on ?? today;
  const period = `From ${dayInWords(from)} to ${dayInWords(to)}, ${counted(daysBetween(from, to) + 1, 'day')}.`;
  return end === null
    ? [period, 'Care goes on: no end of it is recorded. This is how the record stands today.']
    : [
        period,
        sentence(`${endWords[end.state] ?? 'Closed'} on ${dayInWords(end.on)}: ${end.reason}`),
        `Recorded by ${end.by}.`,
      ];
};

const personPart = (facts: DocumentFacts, today: Day): DocumentPart => {
  const { episode } = facts;
  return {
    title: 'Care and period',
    lines: [
      `Diagnoses: ${sentence(episode.diagnoses.join('; '))}`,
      `Joints affected: ${jointsInWords(episode.joints)}. Asked about daily: ${jointsInWords(episode.followedJoints)}.`,
      episode.goals.length > 0
        ? `In the patient’s words: ${episode.goals.map((goal) => `“${goal}”`).join(' ')}`
        : 'No goal in the patient’s words is recorded.',
      `Referred by: ${sentence(episode.referrer ?? 'not recorded')}`,
      ...periodLines(facts, today),
    ],
  };
};

/** What stood against doing it as signed. */
const leftOf = {
  'everything-rests': { ended: ' All exercise rested.', today: ' All exercise rests.' },
  'joint-rests': { ended: ' It rested.', today: ' It rests.' },
  'easier-only': {
    ended: ' Only the easier session was left of it.',
    today: ' Only the easier session is left of it.',
  },
} as const;

const itemWords = (
  { first, last, atEnd, suspended }: DocumentItem,
  words: DoseWords,
  isOver: boolean,
): readonly string[] => {
  const name = `${words.title(first.dose)} (${methodWords[first.dose.method]})`;
  const then = isOver ? 'when care ended' : 'today';
  const stop = atEnd
    ? `In force ${then}.${suspended === null ? '' : leftOf[suspended][isOver ? 'ended' : 'today']}`
    : last.endedOn === null
      ? `Not in force ${then}.`
      : `Ended ${dayInWords(last.endedOn)}.`;
  const begin = `${name}, signed ${dayInWords(first.signedOn)} by ${first.signedName}: ${words.dose(first.dose)}.`;
  if (first === last) return [`${begin} This is the only signed version. ${stop}`];
  const now = words.title(last.dose) === words.title(first.dose) ? '' : `${words.title(last.dose)}: `;
  return [
    begin,
    `Last signed ${dayInWords(last.signedOn)} by ${last.signedName}: ${now}${words.dose(last.dose)}. ${stop}`,
  ];
};

const workPart = ({ lines, end }: DocumentFacts, words: DoseWords): DocumentPart => ({
  title: 'Exercises, first and last dose',
  lines:
    lines.length === 0
      ? ['No exercise was signed in this period.']
      : lines.flatMap((item) => itemWords(item, words, end !== null)),
});

const logPart = ({ log }: DocumentFacts): DocumentPart => {
  const kinds = [
    log.easierSessions > 0 ? `${log.easierSessions} of them the easier session` : '',
    log.testSessions > 0 ? `${log.testSessions} a test` : '',
  ].filter(Boolean);
  return {
    title: 'What was logged',
    lines: [
      `${[`${counted(log.sessions, 'session')} logged`, ...kinds].join(', ')}.`,
      log.plannedDays === null
        ? 'No programme named days, so missing sessions cannot be counted.'
        : log.plannedDays === 0
          ? 'No day of this period was planned for a session.'
          : `${counted(log.plannedDays, 'planned day')}; on ${log.plannedDaysWithout} of them no session was logged.`,
      `Mornings logged on ${counted(log.mornings, 'day')}; missing on ${log.daysWithoutMorning} of ${counted(log.careDays, 'day')} of care.`,
      'Days of an agreed break count as neither. Sessions and mornings are the person’s, whichever episode of care they belong to.',
      'What was not logged is not known; it is not counted as zero.',
    ],
  };
};

const decisionLine = ({ joint, decision, day, reasons, answer }: DocumentDecision): string => {
  const why =
    reasons.length === 0 ? 'no rule stood against it' : all(reasons.map(({ threshold }) => threshold));
  const said =
    answer === null
      ? 'No clinician answered it.'
      : answer.kind === 'override' && answer.decision !== null
        ? sentence(`${answer.by} overrode it with “${decisionWords[answer.decision]}”: ${answer.reason}`)
        : `${answer.by} accepted it.`;
  return `${jointInWords(joint)}, ${dayInWords(day)}: ${decisionWords[decision]}; ${why}. ${said}`;
};

const decisionPart = ({ decisions }: DocumentFacts): DocumentPart => ({
  title: 'Last decision for each joint',
  lines: decisions.length === 0 ? ['No decision was made in this period.'] : decisions.map(decisionLine),
});

const limitPart = ({ limits, end }: DocumentFacts): DocumentPart => ({
  title: end === null ? 'Limits in force' : 'Limits when care ended',
  lines: limits.length === 0 ? ['No limit is recorded as in force.'] : limits.map(limitLine),
});

const named = (what: string, items: readonly string[]): string =>
  items.length === 0 ? `${what}: none.` : `${what}: ${sentence(items.join('; '))}`;

const checkPart = ({ checks }: DocumentFacts): DocumentPart => {
  const { screening, measured, notMeasured } = checks;
  return {
    title: 'What was checked, and what was not',
    lines: [
      ...(screening === null
        ? ['No screening is on record.']
        : [
            `Last screening ${dayInWords(screening.day)}: ${counted(screening.no, 'item')} answered no.`,
            named('Answered yes', screening.yes),
            named('Not known', screening.notKnown),
            named('Not asked', screening.notAsked),
          ]),
      named(
        'Measured, with the last day',
        measured.map(({ title, day }) => `${title} ${dayInWords(day)}`),
      ),
      named('No measurement on record', notMeasured),
    ],
  };
};

const cautionPart = ({ lines }: DocumentFacts): DocumentPart => {
  const texts = [...new Set(lines.flatMap(({ last }) => last.cautions.map(({ text }) => text)))];
  return {
    title: 'Cautions of the last signed doses',
    lines: texts.length === 0 ? ['None is recorded.'] : texts,
  };
};

export const letterOf = (facts: DocumentFacts, today: Day, words: DoseWords): CareDocument => ({
  from: [facts.clinic.name, `Telephone ${facts.clinic.phone}`],
  about: `${facts.patient.name}, born ${dayInWords(facts.patient.birthDay)}`,
  title: facts.end === null ? 'Summary of care so far' : 'Letter at the end of care',
  adviceTitle: 'Advice of the clinic',
  signature: 'Read and signed by the clinician, with name and date:',
  parts: [
    personPart(facts, today),
    workPart(facts, words),
    outcomePart(facts),
    logPart(facts),
    decisionPart(facts),
    limitPart(facts),
    checkPart(facts),
    cautionPart(facts),
    {
      title: 'Who decides',
      lines: [
        `Put together on ${dayInWords(today)} from the record of ${sentence(facts.clinic.name)}`,
        'It repeats what was recorded and decides nothing. What follows is for the licensed clinician, under local rules.',
      ],
    },
  ],
});
