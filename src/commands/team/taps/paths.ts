/** The paths that are counted: what is pressed, how often at most, and what then stands in the file. */
import { sixJoints } from './people.ts';
import type { Press } from './walk-path.ts';

export interface Path {
  readonly path: string;
  readonly who: string;
  readonly bar: number;
  readonly presses: readonly Press[];
  readonly kind: 'morning' | 'session';
  /** As the engine reads it; every field of it was answered by a press. */
  readonly stored: Readonly<Record<string, unknown>>;
}

const none = 'No, none of these';
const send = 'No, none of these. Send';
const score = (value: number): RegExp => new RegExp(`^${value}$`);

const quietMorning = { redFlags: [], relief: 0, form: 'short', otherJoint: null };

const quietJoint = { pain: 2, stiffness: 10, swelling: 'none', flare: 0 };
const flaringJoint = { stiffness: 60, swelling: 'slight', flare: 1 };

const set = (load: number | null) => ({ load, hasCount: 1, hasReserve: 1 });

const before: readonly Press[] = ['Start the session', none, score(2), 'Yes, as usual'];
/** Three sets, each "As planned" and how many more would have gone. */
const exercise: readonly Press[] = [
  'Start set 1',
  ...[1, 2, 3].flatMap((): readonly Press[] => [/^As planned: \d+$/, '2 more']),
];
const after: readonly Press[] = [score(3), score(2), score(4)];
const end: readonly Press[] = ['Yes, all of this is right', 'Send to the clinic'];

const quietSession = {
  redFlags: [],
  relief: 0,
  news: [],
  otherJointWorse: 0,
  didExtraUnanswered: 0,
  didExtra: 0,
  forms: ['short', 'statement'],
};
const joint = { before: 2, during: 3, after: 2, burn: 4, gaveWay: 0, gaveWayUnanswered: 0 };

const session = (name: string, who: string, bar: number, count: number): Path => ({
  path: name,
  who,
  bar,
  kind: 'session',
  presses: [...before, ...Array.from({ length: count }, () => exercise).flat(), ...after, ...end],
  stored: {
    ...quietSession,
    limb: null,
    joints: [{ joint: 'right-knee', cuff: null, ...joint }],
    sets: Array.from({ length: count * 3 }, () => set(1)),
  },
});

export const paths: readonly Path[] = [
  {
    path: 'morning-as-usual-one-joint',
    who: 'taps-two',
    bar: 3,
    kind: 'morning',
    presses: [score(2), 'Yes, all as yesterday', send],
    stored: {
      ...quietMorning,
      via: 'as-yesterday',
      joints: [{ joint: 'right-knee', pain: 2, stiffness: 10, swelling: 'none', flare: 0 }],
    },
  },
  {
    path: 'morning-flare-two-joints',
    who: 'taps-flare',
    bar: 9,
    kind: 'morning',
    presses: [
      score(6),
      score(5),
      '1 hour',
      '45 minutes',
      'The left knee',
      'A little more than usual',
      'Both',
      'No',
      send,
    ],
    stored: {
      ...quietMorning,
      via: 'asked',
      joints: [
        { joint: 'left-knee', pain: 6, stiffness: 60, swelling: 'slight', flare: 1 },
        { joint: 'right-knee', pain: 5, stiffness: 45, swelling: 'none', flare: 1 },
      ],
    },
  },
  {
    path: 'morning-as-usual-six-joints',
    who: 'taps-six',
    bar: 8,
    kind: 'morning',
    presses: [...Array.from({ length: 6 }, () => score(2)), 'Yes, all as yesterday', send],
    stored: {
      ...quietMorning,
      otherJoint: 'not-worse',
      via: 'as-yesterday',
      joints: sixJoints.toSorted().map((joint) => ({ joint, ...quietJoint })),
    },
  },
  {
    path: 'morning-flare-three-of-six-joints',
    who: 'taps-six-flare',
    bar: 15,
    kind: 'morning',
    presses: [
      ...[6, 5, 7, 2, 2, 2].map(score),
      'Yes, all as yesterday',
      '1 hour',
      'A little more than usual',
      'Yes, all of these',
      send,
    ],
    stored: {
      ...quietMorning,
      otherJoint: 'not-worse',
      via: 'partly',
      joints: [
        { joint: 'left-hand', pain: 6, ...flaringJoint },
        { joint: 'left-knee', ...quietJoint },
        { joint: 'left-wrist', pain: 7, ...flaringJoint },
        { joint: 'right-hand', pain: 5, ...flaringJoint },
        { joint: 'right-knee', ...quietJoint },
        { joint: 'right-wrist', ...quietJoint },
      ],
    },
  },
  {
    path: 'morning-flare-three-of-six-joints-not-alike',
    who: 'taps-six-apart',
    bar: 15,
    kind: 'morning',
    presses: [
      ...[6, 5, 7, 2, 2, 2].map(score),
      'Yes, all as yesterday',
      'Left hand: 1 hour',
      'Right hand: 30 minutes',
      'Left wrist: 45 minutes',
      'Left hand: A little more than usual',
      'Right hand: No more than usual',
      'Left wrist: Clearly more than usual',
      'The left hand and the left wrist',
      send,
    ],
    stored: {
      ...quietMorning,
      otherJoint: 'not-worse',
      via: 'partly',
      joints: [
        { joint: 'left-hand', pain: 6, stiffness: 60, swelling: 'slight', flare: 1 },
        { joint: 'left-knee', ...quietJoint },
        { joint: 'left-wrist', pain: 7, stiffness: 45, swelling: 'clear', flare: 1 },
        { joint: 'right-hand', pain: 5, stiffness: 30, swelling: 'none', flare: 0 },
        { joint: 'right-knee', ...quietJoint },
        { joint: 'right-wrist', ...quietJoint },
      ],
    },
  },
  session('session-two-exercises', 'taps-two', 24, 2),
  session('session-three-exercises', 'taps-three', 32, 3),
  {
    path: 'session-cuff',
    who: 'taps-cuff',
    bar: 20,
    kind: 'session',
    presses: [
      ...before,
      'Continue',
      'It is on. Start the clock',
      ...[30, 15, 15, 15].map((planned) => `As planned: ${planned}`),
      'It is off',
      { minutes: 2.1 },
      ...Array.from({ length: 3 }, () => 'Yes, as usual'),
      ...after,
      score(1),
      ...end,
    ],
    stored: {
      ...quietSession,
      limb: { colour: 'usual', feeling: 'usual', pulse: 'usual' },
      joints: [{ joint: 'left-knee', cuff: 1, ...joint }],
      sets: Array.from({ length: 4 }, () => ({ load: 1, hasCount: 1, hasReserve: 0 })),
    },
  },
];
