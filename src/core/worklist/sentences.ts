/** A matter in one plain sentence, as of a day. */
import { type Day, daysBetween } from '../day.ts';
import type { DueMatter } from './matter.ts';

type Told = Pick<DueMatter, 'kind' | 'joint' | 'facts'>;

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

const sentences: Readonly<Record<DueMatter['kind'], (matter: Told, today: Day) => string>> = {
  'red-flag': (matter) => `Reported a warning sign; all sessions are stopped${because(matter)}.`,
  pause: (matter) => `Paused for the ${joint(matter)}; only a clinician reopens it${because(matter)}.`,
  'same-day-contact': (matter) => `Needs a call today about the ${joint(matter)}${because(matter)}.`,
  'ease-back': (matter) => `Eased back for the ${joint(matter)}${because(matter)}.`,
  'override-ended': (matter) =>
    `The override for the ${joint(matter)} ended on ${matter.facts.until}; the engine’s decision stands again${because(matter)}.`,
  'eased-twice': exerciseSentence,
  'floor-reached': exerciseSentence,
  'routine-contact': (matter) =>
    matter.facts.exercise
      ? exerciseSentence(matter)
      : `A review is due for the ${joint(matter)}${because(matter)}.`,
  'entry-conflict': () => 'The same entry arrived twice with different content.',
  'awaiting-signature': () => 'A prescription awaits a signature.',
  'clock-doubtful': () =>
    'An entry came from a phone with a doubtful clock; it counts as missing until confirmed.',
  'missing-answers': (matter, today) => `No morning answers for ${days(matter.facts.from, today)}.`,
  'screening-due': (matter, today) => `Screening is ${days(matter.facts.from, today)} old; ask it again.`,
  'pressure-due': (matter, today) =>
    `The measured occlusion pressure is ${days(matter.facts.from, today)} old.`,
  'danger-passed': (matter) =>
    matter.facts.coveringClinician
      ? `Nobody has acknowledged the danger of the ${joint(matter)} in time; it passes to ${matter.facts.coveringClinician}.`
      : `Nobody has acknowledged the danger of the ${joint(matter)} in time, and no deputy is named.`,
  'event-review': (matter) =>
    `${aboutEvent[String(matter.facts.event)] ?? 'Something happened'} on ${matter.facts.day}; the screening has not been asked again.`,
  message: () => 'Wrote a message; nobody has written back.',
  'review-day': (matter) => `The review booked for ${matter.facts.from} is due.`,
  'reported-new': (matter) =>
    `Said before a session: ${[matter.facts.news, matter.facts.otherJoint ? 'another joint is worse' : '']
      .filter((text) => text !== '')
      .join('; ')}. Cuff work was left out that day; the screening has not been asked again.`,
  'pre-visit-answers': () => 'Answered the questions before a visit; nobody has confirmed them.',
  'limit-ended': (matter) =>
    `The limit for the ${joint(matter)} (${matter.facts.limit}, ${matter.facts.author}) ended on ${matter.facts.to}; it binds until asked again.`,
  'break-over': (matter) => `Expected back from a break on ${matter.facts.from}; no return is recorded.`,
  'baseline-due': (matter, today) =>
    `Usual values of the ${joint(matter)} were frozen ${days(matter.facts.from, today)} ago.`,
};

export const sentenceOf = (matter: Told, today: Day): string => sentences[matter.kind](matter, today);
