/**
 * The letter proposed when an episode of care ends. Every sentence repeats a row of the record; what is
 * missing is said to be missing. It claims no outcome and no cause, and defers to the licensed
 * clinician who signs it and to local rules.
 */

import type { LimitInForce } from '#core/decision/dose/limits.ts';
import { counted, dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import { degreesAllowed } from '../limit-degrees.ts';
import type { DocumentDecision, DocumentFacts, DocumentItem } from './document-facts.ts';
import {
  all,
  type CareDocument,
  type DocumentPart,
  type DoseWords,
  decisionWords,
  endWords,
  jointsInWords,
  limitWords,
  methodWords,
  sentence,
} from './document-words.ts';

const personPart = ({ episode, from, end }: DocumentFacts): DocumentPart => ({
  title: 'Care and period',
  lines: [
    `Diagnoses: ${sentence(episode.diagnoses.join('; '))}`,
    `Joints affected: ${jointsInWords(episode.joints)}. Asked about daily: ${jointsInWords(episode.followedJoints)}.`,
    episode.goals.length > 0
      ? `In the patient’s words: ${episode.goals.map((goal) => `“${goal}”`).join(' ')}`
      : 'No goal in the patient’s words is recorded.',
    `Referred by: ${sentence(episode.referrer ?? 'not recorded')}`,
    `From ${dayInWords(from)} to ${dayInWords(end.on)}, ${counted(daysBetween(from, end.on) + 1, 'day')}.`,
    sentence(`${endWords[end.state] ?? 'Closed'} on ${dayInWords(end.on)}: ${end.reason}`),
    `Recorded by ${end.by}.`,
  ],
});

const itemWords = ({ first, last, atEnd }: DocumentItem, words: DoseWords): readonly string[] => {
  const name = `${words.title(first.dose)} (${methodWords[first.dose.method]})`;
  const stop = atEnd
    ? 'In force when care ended.'
    : last.endedOn === null
      ? 'Not in force when care ended.'
      : `Ended ${dayInWords(last.endedOn)}.`;
  const begin = `${name}, signed ${dayInWords(first.signedOn)} by ${first.signedName}: ${words.dose(first.dose)}.`;
  if (first === last) return [`${begin} This is the only signed version. ${stop}`];
  const now = words.title(last.dose) === words.title(first.dose) ? '' : `${words.title(last.dose)}: `;
  return [
    begin,
    `Last signed ${dayInWords(last.signedOn)} by ${last.signedName}: ${now}${words.dose(last.dose)}. ${stop}`,
  ];
};

const workPart = ({ lines }: DocumentFacts, words: DoseWords): DocumentPart => ({
  title: 'Exercises, first and last dose',
  lines:
    lines.length === 0
      ? ['No exercise was signed in this period.']
      : lines.flatMap((item) => itemWords(item, words)),
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
    reasons.length === 0
      ? 'no rule stood against it'
      : all(reasons.map(({ rule, threshold }) => `${rule} (${threshold})`));
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

/** A limit with its figures, its days and who set it. */
export const limitLine = (limit: LimitInForce): string => {
  const { joint, kind, limitKg, from, to, author, isExpired } = limit;
  const most = limitKg === null ? degreesAllowed(limit) : ` to ${limitKg} kg`;
  const until = to === null ? 'until lifted' : `to ${dayInWords(to)}`;
  const over = isExpired ? ' Its last day has passed and nobody has lifted it.' : '';
  return `${jointInWords(joint)}: ${limitWords[kind]}${most}, from ${dayInWords(from)} ${until}. Set by ${author}.${over}`;
};

const limitPart = ({ limits }: DocumentFacts): DocumentPart => ({
  title: 'Limits when care ended',
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
      'Whether the work changed anything was not examined for this letter.',
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
  title: 'Letter at the end of care',
  adviceTitle: 'Advice of the clinic',
  signature: 'Read and signed by the clinician, with name and date:',
  parts: [
    personPart(facts),
    workPart(facts, words),
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
