/** Wrist, grip, fingers and thumb. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { HandFigure, HandPose } from './hand-figure.ts';

type HandExercise =
  | ExerciseId<'hand'>
  | Extract<
      ExerciseId<'arm-and-hand'>,
      'wrist-bend-up' | 'wrist-bend-back' | 'ball-squeeze' | 'towel-wring' | 'finger-spread'
    >;

const fist = { fingers: [78, 92, 50], spread: 0 } as const;
const open: HandPose = { wrist: 0, fingers: [4, 6, 4], spread: 4 };
const flat: HandPose = { wrist: 0, fingers: [0, 0, 0], spread: 2 };
const round: HandPose = { wrist: -8, fingers: [30, 58, 36], spread: 0 };

const wrist = { pictures: 1, holds: 'hand-weight' } as const;
const spread = {
  palm: 'down',
  pictures: 2,
  does: 'fingers-spread',
  start: open,
  end: { ...open, spread: 19 },
} as const;
const squeeze = {
  palm: 'up',
  pictures: 2,
  does: 'fingers-close',
  start: { wrist: -8, fingers: [22, 46, 26], spread: 0 },
  end: { wrist: -8, fingers: [40, 72, 40], spread: 0 },
} as const;
const hold = { pictures: 1, does: 'hold' } as const;
const still = (pose: HandPose) => ({ start: pose, end: pose });

export const hand: Readonly<Record<HandExercise, HandFigure>> = {
  'wrist-bend-up': {
    ...wrist,
    does: 'wrist-bends',
    palm: 'up',
    start: { ...fist, wrist: -45 },
    end: { ...fist, wrist: 50 },
  },
  'wrist-bend-back': {
    ...wrist,
    does: 'wrist-bends-back',
    palm: 'down',
    start: { ...fist, wrist: 45 },
    end: { ...fist, wrist: -48 },
  },
  'wrist-thumb-side-lift': {
    ...wrist,
    does: 'wrist-lifts-thumb-side',
    palm: 'up',
    start: { ...fist, wrist: -22 },
    end: { ...fist, wrist: 24 },
  },
  'palm-turn': {
    ...wrist,
    pictures: 2,
    does: 'palm-turns',
    palm: 'up',
    start: { ...fist, wrist: -55 },
    end: { ...fist, wrist: 55 },
  },
  'ball-squeeze': { ...squeeze, holds: 'ball' },
  'putty-squeeze': { ...squeeze, holds: 'putty' },
  'putty-hook': {
    palm: 'up',
    pictures: 2,
    does: 'fingertips-hook',
    holds: 'putty',
    start: { wrist: -8, fingers: [4, 30, 20], spread: 0 },
    end: { wrist: -8, fingers: [4, 96, 62], spread: 0 },
  },
  'putty-tip-pinch': {
    palm: 'up',
    pictures: 2,
    does: 'tips-pinch',
    holds: 'putty',
    start: { ...round, gap: 17 },
    end: { ...round, gap: 7 },
  },
  'putty-key-pinch': {
    palm: 'up',
    pictures: 2,
    does: 'thumb-on-side',
    holds: 'putty',
    start: { wrist: -8, fingers: [46, 84, 50], spread: 0, gap: 20 },
    end: { wrist: -8, fingers: [46, 84, 50], spread: 0, gap: 9 },
  },
  'towel-wring': {
    palm: 'down',
    pictures: 2,
    does: 'hands-twist',
    holds: 'towel',
    start: { ...fist, wrist: 0 },
    end: { ...fist, wrist: -35 },
  },
  'finger-spread': { ...spread, holds: 'ring' },
  'putty-finger-spread': { ...spread, holds: 'putty' },
  'thumb-out-ring': {
    palm: 'down',
    pictures: 2,
    does: 'thumb-out',
    holds: 'ring',
    start: { ...flat, thumb: -12 },
    end: { ...flat, thumb: 34 },
  },
  'finger-straighten-ring': {
    palm: 'up',
    pictures: 2,
    does: 'fingers-straighten',
    holds: 'ring',
    start: { wrist: -8, fingers: [34, 52, 26], spread: 0 },
    end: { wrist: -8, fingers: [4, 8, 4], spread: 0 },
  },
  'thumb-out-hold': {
    ...hold,
    presses: 'thumb',
    palm: 'down',
    holds: 'other-hand',
    ...still({ ...flat, thumb: 22 }),
  },
  'index-side-hold': { ...hold, presses: 'index', palm: 'down', holds: 'other-hand', ...still(flat) },
  'tip-pinch-hold': {
    ...hold,
    presses: 'tips',
    palm: 'up',
    holds: 'nothing',
    ...still({ ...round, gap: 0 }),
  },
  'towel-grip-hold': {
    ...hold,
    presses: 'grip',
    palm: 'up',
    holds: 'rolled-towel',
    ...still({ wrist: -8, fingers: [40, 66, 36], spread: 0 }),
  },
  'palm-press-hold': { ...hold, presses: 'palm', palm: 'down', holds: 'table', ...still(flat) },
  'back-of-hand-press-hold': { ...hold, presses: 'back', palm: 'down', holds: 'table', ...still(flat) },
};
