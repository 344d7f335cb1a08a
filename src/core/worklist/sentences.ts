/** An item in one plain sentence, as of a day. */
import { type Day, daysBetween } from '../time/day.ts';
import type { DueItem } from './item.ts';

type Told = Pick<DueItem, 'kind' | 'joint' | 'facts'>;

const joint = ({ joint: name }: Told): string => (name ?? 'joint').replace('-', ' ');
const because = ({ facts }: Told): string => (facts.rule ? ` (${facts.rule}: ${facts.threshold})` : '');

const days = (from: string | number | undefined, today: Day): string => {
  const count = typeof from === 'string' ? daysBetween(from, today) : 0;
  return count === 1 ? '1 day' : `${count} days`;
};

const aboutExercise: Readonly<Record<string, string>> = {
  'two-ease-backs': 'was eased back twice in a row',
  'floor-reached': 'is at half of what was last tolerated; no further cut',
  'no-dose-within-limit': 'has no dose within a limit that holds',
  'limit-expired': 'had a limit that ended; ask again before anything opens',
};

const aboutEvent: Readonly<Record<string, string>> = {
  'medicine-change': 'A medicine was changed',
  'joint-injection': 'A joint was injected',
  surgery: 'There was an operation',
  fall: 'There was a fall',
  illness: 'There was an illness',
};

const exerciseSentence = ({ facts }: Told): string =>
  `${facts.exercise} ${aboutExercise[String(facts.reason)] ?? 'needs a look'}.`;

const sentences: Readonly<Record<DueItem['kind'], (item: Told, today: Day) => string>> = {
  'red-flag': (item) => `Reported a warning sign; all sessions are stopped${because(item)}.`,
  pause: (item) => `Paused for the ${joint(item)}; only a clinician reopens it${because(item)}.`,
  'same-day-contact': (item) => `Needs a call today about the ${joint(item)}${because(item)}.`,
  'ease-back': (item) => `Eased back for the ${joint(item)}${because(item)}.`,
  'override-ended': (item) =>
    `The override for the ${joint(item)} ended on ${item.facts.until}; the engine’s decision stands again${because(item)}.`,
  'eased-twice': exerciseSentence,
  'floor-reached': exerciseSentence,
  'routine-contact': (item) =>
    item.facts.exercise ? exerciseSentence(item) : `A review is due for the ${joint(item)}${because(item)}.`,
  'entry-conflict': () => 'The same entry arrived twice with different content.',
  'awaiting-signature': () => 'A prescription awaits a signature.',
  'clock-doubtful': () =>
    'An entry came from a phone with a doubtful clock; it counts as missing until confirmed.',
  'missing-answers': (item, today) => `No morning answers for ${days(item.facts.from, today)}.`,
  'screening-due': (item, today) => `Screening is ${days(item.facts.from, today)} old; ask it again.`,
  'pressure-due': (item, today) => `The measured occlusion pressure is ${days(item.facts.from, today)} old.`,
  'danger-passed': (item) =>
    item.facts.coveringClinician
      ? `Nobody has acknowledged the danger of the ${joint(item)} in time; it passes to ${item.facts.coveringClinician}.`
      : `Nobody has acknowledged the danger of the ${joint(item)} in time, and no deputy is named.`,
  'event-review': (item) =>
    `${aboutEvent[String(item.facts.event)] ?? 'Something happened'} on ${item.facts.day}; the screening has not been asked again.`,
  message: () => 'Wrote a message; nobody has written back.',
  'review-day': (item) => `The review booked for ${item.facts.from} is due.`,
  'reported-new': (item) =>
    `Said before a session: ${[item.facts.news, item.facts.otherJoint ? 'another joint is worse' : '']
      .filter((text) => text !== '')
      .join('; ')}. Cuff work was left out that day; the screening has not been asked again.`,
  'pre-visit-answers': () => 'Answered the questions before a visit; nobody has confirmed them.',
  'limit-ended': (item) =>
    `The limit for the ${joint(item)} (${item.facts.limit}, ${item.facts.author}) ended on ${item.facts.to}; it binds until asked again.`,
  'break-over': (item) => `Expected back from a break on ${item.facts.from}; no return is recorded.`,
  'baseline-due': (item, today) =>
    `Usual values of the ${joint(item)} were frozen ${days(item.facts.from, today)} ago.`,
};

export const sentenceOf = (item: Told, today: Day): string => sentences[item.kind](item, today);
