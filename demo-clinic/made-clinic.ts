/**
 * Invented people by the hundred, for counting what a clinic's Monday asks of a clinician. Who they are, how often
 * they answer and what they answer is drawn; every share below is invented and says nothing about real people.
 */
import type { Joint } from '#core/exercises/joints.ts';
import {
  body,
  consentGiven,
  measures,
  plans,
  prescribes,
  pressure,
  screens,
  setsBaseline,
  signs,
  toFailure,
} from './acts.ts';
import { atHome, loads } from './home.ts';
import { morningOf, on, type Remark, type Story, type Visit, type Week, week } from './story.ts';

/** What is drawn, by whoever asks for the people. */
export interface Draw {
  readonly below: (limit: number) => number;
  readonly chance: (probability: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
}

const givenNames = [
  'Ailbhe',
  'Bartek',
  'Corinna',
  'Dunstan',
  'Eluned',
  'Fergal',
  'Gudrun',
  'Hamish',
  'Ismene',
];
const familyNames = [
  'Abberlow',
  'Brackwyn',
  'Cashelmoor',
  'Dunvarrow',
  'Eskermont',
  'Fallowby',
  'Garrandale',
];

const exercises = {
  knee: { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right', sessionsPerWeek: 3 },
  chair: {
    method: 'variation',
    exerciseId: 'sit-to-stand-chair',
    side: 'both',
    repetitionsLow: 8,
    repetitionsHigh: 12,
    sessionsPerWeek: 3,
  },
} as const;

/** How a person is with the phone, or how the last days went. */
const habits = ['steady', 'forgetful', 'gone-quiet', 'flared', 'warning-sign'] as const;
type Habit = (typeof habits)[number];
/** Of a hundred people; the rest are steady. */
const shares: Readonly<Record<Exclude<Habit, 'steady'>, number>> = {
  forgetful: 14,
  'gone-quiet': 5,
  flared: 7,
  'warning-sign': 1,
};

const habitOf = (draw: Draw): Habit => {
  let place = draw.below(100);
  for (const [habit, share] of Object.entries(shares)) {
    if (place < share) return habit as Habit;
    place -= share;
  }
  return 'steady';
};

interface Person {
  readonly habit: Habit;
  readonly usual: number;
  readonly days: number;
  readonly draw: Draw;
}

const quietDays = 7;
const flareDays = 2;
const flareRise = 4;

const isMissed = ({ habit, days, draw }: Person, day: number): boolean => {
  if (habit === 'gone-quiet' && day > days - quietDays) return true;
  return draw.chance(habit === 'forgetful' ? 0.35 : 0.05);
};

const painOn = ({ habit, usual, days, draw }: Person, day: number): number => {
  const rise = habit === 'flared' && day > days - flareDays ? flareRise : draw.pick([-1, 0, 0, 0, 0, 1]);
  return Math.min(10, Math.max(0, usual + rise));
};

/** The dose is signed on the morning of day 0, so the first answer is that of day 1. */
const morningsOf = (at: Person, from: number): string =>
  Array.from({ length: 7 }, (_, place) => from + place)
    .filter((day) => day <= at.days)
    .map((day) => (day === 0 || isMissed(at, day) ? '.' : String(painOn(at, day))))
    .join(' ');

const sessionsOf = (at: Person, from: number): string =>
  (['Mon', 'Wed', 'Fri'] as const)
    .map((name, place) => ({ name, day: from + place * 2 }))
    .filter(({ day }) => day < at.days && !isMissed(at, day))
    .map(({ name }) => `${name} ${at.usual} ${at.usual + at.draw.below(3)} ${at.usual + at.draw.below(2)}`)
    .join(', ');

const weeksOf = (at: Person, stiffness: number): readonly Week[] =>
  Array.from({ length: at.days / 7 + 1 }, (_, place) => place * 7).map((from) =>
    week(from, morningsOf(at, from), stiffness, sessionsOf(at, from)),
  );

const joint: Joint = 'right-knee';

const visitsOf = ({ usual, days, draw }: Person, stiffness: number): readonly Visit[] => {
  const items = draw.chance(0.6) ? (['knee', 'chair'] as const) : (['knee'] as const);
  const first = on(
    0,
    consentGiven('treatment', 'record-keeping', 'remote-monitoring'),
    screens(),
    measures(...body(55 + draw.below(40), 155 + draw.below(30)), pressure(128, 78)),
    measures(toFailure('knee-extension-seated', 'right', 6, 12 + draw.below(6))),
    ...items.map((item) => prescribes(item, exercises[item])),
    setsBaseline(joint, usual, stiffness, 'As told.'),
    plans(Object.fromEntries(items.map((item) => [item, 'Mon Wed Fri']))),
  );
  // What waits is signed every Monday, but for the one that is counted.
  const mondays = Array.from({ length: days / 7 - 1 }, (_, place) => on((place + 1) * 7, signs));
  return [first, ...mondays];
};

const remarksOf = ({ habit, days }: Person): readonly Remark[] =>
  habit === 'warning-sign' ? [morningOf(days, { redFlags: ['calf-pain-swelling'] })] : [];

const madePerson = (number: number, draw: Draw): Story => {
  const at: Person = { habit: habitOf(draw), usual: 1 + draw.below(4), days: 7 * (2 + draw.below(4)), draw };
  const stiffness = 5 * (1 + draw.below(4));
  return {
    id: `made-${number}`,
    email: null,
    shows: at.habit,
    person: {
      givenName: draw.pick(givenNames),
      familyName: `${draw.pick(familyNames)} ${number}`,
      birthDay: `${1940 + draw.below(50)}-06-01`,
      phone: null,
    },
    profile: {
      diagnosis: 'Knee osteoarthritis, right',
      inflammatoryArthritis: false,
      followedJoints: [joint],
      ownedLoadsKg: loads(2, 8, 0.5),
      ownedEquipment: atHome('ankle weight'),
      formulaSex: draw.pick(['female', 'male']),
    },
    days: at.days,
    visits: visitsOf(at, stiffness),
    weeks: weeksOf(at, stiffness),
    remarks: remarksOf(at),
    expected: [],
    disagreements: [],
  };
};

/** The same people for the same draw. */
export const madePeople = (people: number, draw: Draw): readonly Story[] =>
  Array.from({ length: people }, (_, number) => madePerson(number + 1, draw));
