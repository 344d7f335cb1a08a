/** Wrist, grip and fingers. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { HandFigure, HandPose } from './hand-figure.ts';

type HandExercise = Extract<
  ExerciseId<'arm-and-hand'>,
  'wrist-bend-up' | 'wrist-bend-back' | 'ball-squeeze' | 'towel-wring' | 'finger-spread'
>;

const fist = { fingers: [78, 92, 50], spread: 0 } as const;
const open: HandPose = { wrist: 0, fingers: [4, 6, 4], spread: 4 };

const wrist = { pictures: 1, holds: 'weight' } as const;

export const hand: Readonly<Record<HandExercise, HandFigure>> = {
  'wrist-bend-up': { ...wrist, palm: 'up', start: { ...fist, wrist: -45 }, end: { ...fist, wrist: 50 } },
  'wrist-bend-back': { ...wrist, palm: 'down', start: { ...fist, wrist: 45 }, end: { ...fist, wrist: -48 } },
  'ball-squeeze': {
    palm: 'up',
    pictures: 2,
    holds: 'ball',
    start: { wrist: -8, fingers: [22, 46, 26], spread: 0 },
    end: { wrist: -8, fingers: [40, 72, 40], spread: 0 },
  },
  'towel-wring': {
    palm: 'down',
    pictures: 2,
    holds: 'towel',
    start: { ...fist, wrist: 0 },
    end: { ...fist, wrist: -35 },
  },
  'finger-spread': {
    palm: 'down',
    pictures: 2,
    holds: 'ring',
    start: open,
    end: { ...open, spread: 19 },
  },
};
