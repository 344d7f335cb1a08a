/** Trunk and neck. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { Leg, Pose } from '../body/pose.ts';
import { type Figure, fromTheFront, fromTheSide, type Prop } from './figure.ts';
import { floor } from './props.ts';
import {
  floorUnderChair,
  kneesBent,
  lyingOnBack,
  lyingOnFront,
  matUnder,
  matUnderFront,
  seatedHip,
  sitting,
  sole,
  usualChair,
} from './stances.ts';

const trunk = { view: fromTheSide, works: ['trunk'] } as const;
const raised: Leg = { hip: 88, knee: 88, ankle: 0 };
const up: Pose = { ...lyingOnBack, leg: raised, arm: { shoulder: 90, elbow: 2 } };

const slid = (ankle: number, toesUp: number): Pose => ({
  ...lyingOnBack,
  leg: { ankleAt: [ankle, sole + 1], kneeTo: [0, 1, 0], heelUp: -toesUp },
  farLeg: kneesBent,
});

const plank = (on: 'knees' | 'feet'): Figure => {
  const lean = on === 'knees' ? 71 : 80;
  return {
    ...trunk,
    position: 'on-forearms',
    pictures: 1,
    start: {
      lean,
      neck: -4,
      leg: on === 'knees' ? { knee: 96 - lean, ankle: -46 } : { heelUp: 66 },
      arm: { shoulder: lean, elbow: 90 },
      anchor: on === 'knees' ? ['knee', [0, 7]] : ['ball', [0, 4]],
    },
    still: 'held-up',
    presses: [{ at: 'pelvis', from: [0, 12], to: [0, 26] }],
    props: [on === 'knees' ? floor(-56, 118) : floor(-20, 160)],
  };
};

const fours: Pose = {
  lean: 79,
  neck: -6,
  leg: { hip: 79, knee: 97, ankle: -50 },
  arm: { shoulder: 89, elbow: 2, pronation: 80, wrist: -76 },
  anchor: ['pelvis', [0, 43.75]],
};

const sideMat: Prop = {
  lines: [
    [
      [-44, 0, -60],
      [-44, 0, 84],
      [40, 0, 84],
      [40, 0, -60],
      [-44, 0, -60],
    ],
  ],
};
const sidePlank = (tilt: number, bendAside: number, abduction: number, pelvis: number): Pose => ({
  tilt,
  bendAside,
  leg: { hip: 0, knee: 86, ankle: -45 },
  arm: { abduction, elbow: 88 },
  farArm: { abduction: 14, elbow: 6 },
  neckAside: -8,
  anchor: ['pelvis', [0, pelvis]],
});

const headOnly = { around: 'head', reach: 34, shift: [4, -10] } as const;
const chin = (neck: number, nod: number): Pose => ({ ...sitting, neck, nod });

export const trunkAndNeck: Readonly<Record<ExerciseId<'trunk-and-neck'>, Figure>> = {
  'belly-press': {
    ...trunk,
    position: 'on-back',
    pictures: 2,
    // The hollow under the low back, and without it.
    start: { ...lyingOnBack, lean: -78, bend: -21, neck: 6, leg: kneesBent },
    end: { ...lyingOnBack, leg: kneesBent },
    presses: [{ at: 'waist', from: [0, 34], to: [0, 17] }],
    props: [matUnder],
  },
  'heel-slide': {
    ...trunk,
    works: ['thigh', 'shank', 'foot'],
    position: 'on-back',
    pictures: 1,
    start: slid(44, 0),
    end: slid(69, 32),
    motions: [{ of: 'ankle', shift: [38, 9] }],
    props: [matUnder],
  },
  'arm-and-leg-lowering': {
    ...trunk,
    position: 'on-back',
    pictures: 2,
    start: up,
    end: {
      ...up,
      leg: { hip: 24, knee: 16, ankle: 0 },
      farLeg: raised,
      arm: { shoulder: 90, elbow: 2 },
      farArm: { shoulder: 164, elbow: 2 },
    },
    motions: [
      { of: 'ankle', awayFrom: 'hip', beyond: 16 },
      { of: 'far-palm', awayFrom: 'far-shoulder', beyond: 16 },
    ],
    props: [floor(-112, 98)],
  },
  'forearm-plank-knees': plank('knees'),
  'forearm-plank': plank('feet'),
  'arm-and-leg-reach': {
    ...trunk,
    position: 'on-all-fours',
    pictures: 2,
    start: fours,
    end: {
      ...fours,
      leg: { hip: -4, knee: 4, ankle: -10 },
      farLeg: { hip: 79, knee: 97, ankle: -50 },
      farArm: { shoulder: 168, elbow: 2, pronation: 0, wrist: 0 },
    },
    motions: [
      { of: 'ankle', awayFrom: 'hip', beyond: 16 },
      { of: 'far-palm', awayFrom: 'far-shoulder', beyond: 18 },
    ],
    props: [floor(-84, 104)],
  },
  'chest-lift': {
    ...trunk,
    position: 'on-front',
    pictures: 2,
    start: { ...lyingOnFront, arm: { shoulder: -4, elbow: 4 }, farArm: { shoulder: -4, elbow: 4 } },
    end: {
      ...lyingOnFront,
      bend: -20,
      neck: 6,
      arm: { shoulder: -14, elbow: 4 },
      farArm: { shoulder: -14, elbow: 4 },
    },
    motions: [{ of: 'head', shift: [14, 8] }],
    props: [matUnderFront],
  },
  'side-plank-knees': {
    ...trunk,
    // So far round that the forearm is seen to lie on the mat.
    view: { ...fromTheFront, round: 120, up: 18 },
    position: 'on-side',
    pictures: 2,
    start: sidePlank(81, -35, 73, 19.5),
    end: sidePlank(66, 0, 66, 31),
    motions: [{ of: 'pelvis', shift: [4, 27] }],
    props: [sideMat],
  },
  'chin-draw': {
    ...trunk,
    works: ['neck'],
    position: 'sitting',
    pictures: 2,
    start: chin(26, -26),
    end: chin(-4, 8),
    presses: [{ at: 'head', from: [32, -7], to: [16, -7] }],
    props: [floorUnderChair, usualChair],
    closeUp: headOnly,
  },
  'neck-press-front': {
    ...trunk,
    works: ['neck'],
    position: 'sitting',
    pictures: 1,
    start: {
      ...sitting,
      arm: { handAt: [14, seatedHip + 58], fingersTo: [-0.4, 1, -0.6], elbowTo: [0.6, -1, 0.4] },
      farArm: { handAt: [14, seatedHip + 58], fingersTo: [-0.4, 1, 0.6], elbowTo: [0.6, -1, -0.4] },
    },
    presses: [{ at: 'head', from: [-30, 2], to: [-15, 2] }],
    props: [floorUnderChair, usualChair],
  },
  'neck-press-side': {
    ...trunk,
    view: fromTheFront,
    works: ['neck'],
    position: 'sitting',
    pictures: 1,
    start: {
      leg: { hip: 88, knee: 88, abduction: 8 },
      arm: { handAt: [2, seatedHip + 57, 10], fingersTo: [0, 0.9, -0.5], elbowTo: [0.3, -1, 1] },
      farArm: { abduction: 8, elbow: 20 },
      anchor: ['pelvis', [0, seatedHip]],
    },
    presses: [{ at: 'head', from: [32, 2], to: [15, 2] }],
    props: [
      {
        lines: [
          [
            [0, 0, -18],
            [0, 36, -18],
            [0, 36, 18],
            [0, 0, 18],
          ],
          [
            [0, 0, -40],
            [0, 0, 40],
          ],
        ],
      },
    ],
  },
};
