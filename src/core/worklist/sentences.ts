/** An item in one plain sentence, as of a day. */
import { aboutEvent } from '../episode/event-words.ts';
import { dayInWords } from '../review/plain-words.ts';
import { type Day, daysBetween } from '../time/day.ts';
import type { DueItem } from './item.ts';

type Told = Pick<DueItem, 'kind' | 'joint' | 'facts'>;

const joint = ({ joint: name }: Told): string => (name ?? 'joint').replaceAll('-', ' ');
/** The joint in brackets; nothing where the item is about no joint. */
const about = (item: Told): string => (item.joint ? ` (${joint(item)})` : '');
const because = ({ facts }: Told): string => (facts.rule ? ` (${facts.rule}: ${facts.threshold})` : '');

const days = (from: string | number | undefined, today: Day): string => {
  const count = typeof from === 'string' ? daysBetween(from, today) : 0;
  return count === 1 ? '1 day' : `${count} days`;
};

const on = (day: string | number | undefined, today: Day): string =>
  typeof day === 'string' ? dayInWords(day, today) : '';

const aboutExercise: Readonly<Record<string, string>> = {
  'two-ease-backs': 'was eased back twice in a row',
  'floor-reached': 'is at half of the last tolerated dose; it is not reduced further',
  'no-dose-within-limit': 'has no dose within the limit in force',
  'limit-expired': 'had a limit that ended; review it before prescribing',
};

/** How a sign stands: who told it, whether anybody was reached, and that everything is paused. */
const signSentence = ({ facts }: Told): string => {
  const tries = Number(facts.failedAttempts);
  const reached =
    tries === 0
      ? 'no contact recorded yet'
      : `${tries === 1 ? '1 contact' : `${tries} contacts`} tried, nobody reached`;
  return `Warning sign (${facts.sign}): everything is paused; ${reached}.`;
};

const pausedFor: Readonly<Record<string, string>> = {
  'warning-sign': 'Still paused after a warning sign that has ended',
  holiday: 'Paused for a holiday',
  operation: 'Paused for an operation',
  other: 'Paused by a clinician',
};

/** What is left of a dose. */
const leftOfDose: Readonly<Record<string, string>> = {
  nothing: 'stopped',
  easier: 'only the easier session is left',
  lowered: 'eased back from what was signed; write the dose anew',
};

const exerciseSentence = ({ facts }: Told): string =>
  `${facts.exercise} ${aboutExercise[String(facts.reason)] ?? 'needs a check'}.`;

const sentences: Readonly<Record<DueItem['kind'], (item: Told, today: Day) => string>> = {
  'red-flag': signSentence,
  'resume-due': (item) =>
    `${pausedFor[String(item.facts.cause)] ?? 'Paused'}${about(item)}; resume exercise by exercise, or leave it paused.`,
  'dose-stopped': ({ facts }) =>
    `${facts.exercise}: ${leftOfDose[String(facts.left)] ?? 'stopped'}. ${facts.why}`,
  pause: (item) => `Paused for the ${joint(item)}; only a clinician can resume it${because(item)}.`,
  'same-day-contact': (item) => `Needs a call today about the ${joint(item)}${because(item)}.`,
  'ease-back': (item) => `Eased back for the ${joint(item)}${because(item)}.`,
  'override-ended': (item, today) =>
    `The override for the ${joint(item)} ended on ${on(item.facts.until, today)}; the engine’s decision is in force again${because(item)}.`,
  'eased-twice': exerciseSentence,
  'floor-reached': exerciseSentence,
  'routine-contact': (item) =>
    item.facts.exercise ? exerciseSentence(item) : `A review is due for the ${joint(item)}${because(item)}.`,
  'entry-conflict': () => 'The same entry was received twice with different content.',
  'awaiting-signature': () => 'A prescription needs a signature.',
  'clock-doubtful': () =>
    'An entry has a time that may be wrong: the phone’s clock was off, or the session lasted over 4 hours. It counts as missing until confirmed.',
  'missing-answers': (item, today) => `No morning answers for ${days(item.facts.from, today)}.`,
  'screening-due': (item, today) =>
    item.facts.from
      ? `Screening is ${days(item.facts.from, today)} old; repeat it.`
      : 'A dose is in force and no screening is on record; screen again.',
  'pressure-due': (item, today) => `The measured occlusion pressure is ${days(item.facts.from, today)} old.`,
  'retest-due': ({ facts }, today) => `${facts.title}: to be measured again, due ${on(facts.from, today)}.`,
  'danger-passed': (item) =>
    item.facts.coveringClinician
      ? `Urgent item${about(item)} not acknowledged in time; passed to ${item.facts.coveringClinician}.`
      : `Urgent item${about(item)} not acknowledged in time; no covering clinician is named.`,
  'event-review': ({ facts }, today) =>
    `${(aboutEvent as Readonly<Record<string, string>>)[String(facts.event)] ?? 'Something happened'} on ${on(facts.day, today)}; ${
      facts.toAsk === undefined
        ? 'screening has not been repeated'
        : `${facts.toAsk} screening ${facts.toAsk === 1 ? 'question is' : 'questions are'} to be asked again`
    }.`,
  message: () => 'Sent a message; nobody has replied.',
  'review-day': (item, today) => `The review booked for ${on(item.facts.from, today)} is due.`,
  'reported-new': (item) =>
    `Reported before a session: ${[item.facts.news, item.facts.otherJoint ? 'another joint is worse' : '']
      .filter((text) => text !== '')
      .join('; ')}. Cuff work was left out that day; screening has not been repeated.`,
  'pre-visit-answers': () => 'Answered the pre-visit questions; nobody has confirmed them.',
  'phase-due': (item, today) =>
    item.facts.name === undefined
      ? `A protocol for the ${joint(item)} has no phase written; until one is, it bounds nothing.`
      : `Phase ${item.facts.place} (${item.facts.name}) for the ${joint(item)} was planned from ${on(item.facts.from, today)}; until a clinician confirms it, what held before goes on.`,
  'limit-ended': (item, today) =>
    `The limit for the ${joint(item)} (${item.facts.limit}, ${item.facts.author}) ended on ${on(item.facts.to, today)}; it still applies until reviewed.`,
  'break-over': (item, today) =>
    `Expected back from a break on ${on(item.facts.from, today)}; no return is recorded.`,
  'baseline-due': (item, today) =>
    `The baseline for the ${joint(item)} was set ${days(item.facts.from, today)} ago.`,
};

export const sentenceOf = (item: Told, today: Day): string => sentences[item.kind](item, today);
