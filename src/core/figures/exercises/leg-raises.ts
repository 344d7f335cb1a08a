/** Leg raises to the front, side, back and inside. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { Leg, Pose } from '../body/pose.ts';
import { type Figure, fromTheFront, fromTheSide, type Prop, type View } from './figure.ts';
import { floor } from './props.ts';
import {
  atChair,
  atRail,
  chairInFront,
  kneesBent,
  leg,
  lyingOnBack,
  lyingOnFront,
  matUnder,
  matUnderFront,
  railInFront,
  seatedHip,
  sole,
  standing,
} from './stances.ts';

const oneLeg = { pictures: 1, works: leg, view: fromTheSide } as const;
const onFarLeg = ['far-ankle', [0, sole]] as const;

/** Between where the leg was and where it is. */
const between = { of: 'ankle', awayFrom: 'hip', beyond: -9, shares: [0.3, 0.66] } as const;

const frontRaise = (raised: Leg): Figure => ({
  ...oneLeg,
  position: 'standing-at-support',
  start: atRail,
  end: { ...atRail, leg: raised, farLeg: {}, anchor: onFarLeg },
  motions: [between],
  props: [floor(-34, 74), railInFront],
});

const straightLeg: Figure = {
  ...oneLeg,
  position: 'on-back',
  start: { ...lyingOnBack, farLeg: kneesBent },
  end: { ...lyingOnBack, leg: { hip: 42, ankle: 0 }, farLeg: kneesBent },
  motions: [{ of: 'ankle', awayFrom: 'hip', beyond: 20 }],
  props: [matUnder],
};

const frontFloor: Prop = {
  lines: [
    [
      [0, 0, -62],
      [0, 0, 52],
    ],
  ],
};
const worktopAside: Prop = {
  lines: [
    [
      [0, 82, -32],
      [0, 82, -68],
    ],
    [
      [0, 82, -36],
      [0, 0, -36],
    ],
    [
      [0, 82, -64],
      [0, 0, -64],
    ],
  ],
};
const sideStanding: Pose = {
  ...standing,
  leg: { abduction: 0, turnOut: 20, ankle: 0 },
  farLeg: { turnOut: 20, ankle: 0 },
  arm: { abduction: 8, elbow: 6 },
  farArm: { handAt: [0, 84, -38], elbowTo: [0, -1, -1] },
};
const sideRaise: Figure = {
  ...oneLeg,
  view: fromTheFront,
  position: 'standing-at-support',
  start: sideStanding,
  end: { ...sideStanding, leg: { abduction: 30, turnOut: 20, ankle: 0 }, anchor: onFarLeg },
  motions: [between],
  props: [frontFloor, worktopAside],
};

const rearStanding: Figure = {
  ...oneLeg,
  position: 'standing-at-support',
  start: { ...atChair, lean: 4, leg: { hip: 4 } },
  end: { ...atChair, lean: 4, leg: { hip: -18, ankle: 8 }, farLeg: { hip: 4 }, anchor: onFarLeg },
  motions: [between],
  props: [floor(-52, 72), chairInFront],
};

const rearRaise = (start: Leg, end: Leg): Figure => ({
  ...oneLeg,
  position: 'on-front',
  start: { ...lyingOnFront, leg: start, farLeg: lyingOnFront.leg },
  end: { ...lyingOnFront, leg: end, farLeg: lyingOnFront.leg },
  motions: [{ of: 'knee', awayFrom: 'hip', beyond: 10, shift: [0, 8] }],
  props: [matUnderFront],
});

/** Lying on the side, seen from the front and a little from above. */
const overTheMat: View = { ...fromTheFront, up: 24 };
const sideMat: Prop = {
  lines: [
    [
      [-24, 0, -96],
      [-24, 0, 92],
      [44, 0, 92],
      [44, 0, -96],
      [-24, 0, -96],
    ],
  ],
};
const onLeftSide: Pose = {
  tilt: -90,
  leg: { ankle: 0 },
  farLeg: { hip: 48, knee: 88, ankle: 0 },
  arm: { handAt: [26, 4, -36], fingersTo: [0.4, 0, -1], elbowTo: [0, 0.4, 1] },
  farArm: { abduction: 179, elbow: 8 },
  anchor: ['pelvis', [0, 20.5]],
};
const sideLying = (start: Leg, end: Leg, more: Partial<Figure> = {}): Figure => ({
  ...oneLeg,
  view: overTheMat,
  position: 'on-side',
  start: { ...onLeftSide, leg: start },
  end: { ...onLeftSide, leg: end },
  motions: [{ of: 'ankle', awayFrom: 'hip', beyond: 20 }],
  props: [sideMat],
  ...more,
});

const innerRaise: Figure = {
  ...oneLeg,
  view: overTheMat,
  position: 'on-side',
  start: {
    tilt: 90,
    leg: { ankle: 0 },
    farLeg: { hip: 76, knee: 84, abduction: -14, ankle: 0 },
    arm: { abduction: 179, elbow: 8 },
    farArm: { handAt: [26, 4, 36], fingersTo: [0.4, 0, 1], elbowTo: [0, 0.4, -1] },
    anchor: ['pelvis', [0, 20.5]],
  },
  end: {
    tilt: 90,
    leg: { abduction: -20, ankle: 0 },
    farLeg: { hip: 76, knee: 84, abduction: -14, ankle: 0 },
    arm: { abduction: 179, elbow: 8 },
    farArm: { handAt: [26, 4, 36], fingersTo: [0.4, 0, 1], elbowTo: [0, 0.4, -1] },
    anchor: ['pelvis', [0, 20.5]],
  },
  motions: [{ of: 'ankle', awayFrom: 'hip', beyond: 20 }],
  props: [
    {
      lines: [
        [
          [-24, 0, -92],
          [-24, 0, 96],
          [44, 0, 96],
          [44, 0, -92],
          [-24, 0, -92],
        ],
      ],
    },
  ],
};

const clam: Figure = {
  ...oneLeg,
  view: { ...fromTheFront, up: 34 },
  position: 'on-side',
  start: {
    ...onLeftSide,
    leg: { ankleAt: [-4, 27, 42], kneeTo: [1, 0, 0], ankle: 0 },
    farLeg: { ankleAt: [-4, 10, 42], kneeTo: [1, 0, 0], ankle: 0 },
  },
  end: {
    ...onLeftSide,
    leg: { ankleAt: [-4, 27, 42], kneeTo: [0.6, 1, 0], ankle: 0 },
    farLeg: { ankleAt: [-4, 10, 42], kneeTo: [1, 0, 0], ankle: 0 },
  },
  motions: [{ of: 'knee', shift: [-22, 6] }],
  props: [sideMat],
};

const seatedFront: Pose = {
  leg: { hip: 90, knee: 90, abduction: 8 },
  arm: { handAt: [12, seatedHip + 7, 18], elbowTo: [-1, 0, 0.6] },
  farArm: { handAt: [12, seatedHip + 7, -18], elbowTo: [-1, 0, -0.6] },
  anchor: ['pelvis', [0, seatedHip]],
};
const frontChair: Prop = {
  lines: [
    [
      [-12, 80, -20],
      [-12, 36, -20],
      [24, 36, -20],
      [24, 0, -20],
    ],
    [
      [-12, 80, 20],
      [-12, 36, 20],
      [24, 36, 20],
      [24, 0, 20],
    ],
    [
      [-12, 80, -20],
      [-12, 80, 20],
    ],
    [
      [24, 36, -20],
      [24, 36, 20],
    ],
  ],
};
const pillowSqueeze: Figure = {
  view: { ...fromTheFront, up: 18 },
  position: 'sitting',
  pictures: 1,
  start: seatedFront,
  works: ['thigh', 'shank'],
  both: true,
  presses: [
    { at: 'knee', from: [-28, -4], to: [-13, -4] },
    { at: 'far-knee', from: [28, -4], to: [13, -4] },
  ],
  props: [
    frontChair,
    {
      isSolid: true,
      isInFront: true,
      lines: [
        [
          [42, 54, -6],
          [42, 56, 0],
          [42, 54, 6],
          [42, 50, 8],
          [42, 26, 8],
          [42, 22, 6],
          [42, 20, 0],
          [42, 22, -6],
          [42, 26, -8],
          [42, 50, -8],
        ],
      ],
    },
  ],
};

export const legRaises: Readonly<Record<ExerciseId<'leg-raises'>, Figure>> = {
  'front-leg-raise-standing': frontRaise({ hip: 29, ankle: 0 }),
  'march-standing': {
    ...frontRaise({ hip: 88, knee: 96, ankle: 0 }),
    motions: [{ of: 'knee', awayFrom: 'hip', beyond: 16 }],
  },
  'straight-leg-raise': straightLeg,
  'straight-leg-raise-one-kilo': { ...straightLeg, loads: [{ kind: 'ankle-weight' }] },
  'side-leg-raise-standing': sideRaise,
  'side-lying-hip-abduction-bent': sideLying(
    { hip: 40, knee: 84, ankle: 0 },
    { hip: 40, knee: 84, abduction: 30, ankle: 0 },
    // So far round that the lifted knee is seen to stay bent.
    {
      view: { ...fromTheFront, round: 112, up: 30 },
      motions: [{ of: 'knee', awayFrom: 'hip', beyond: 16 }],
    },
  ),
  'side-lying-hip-abduction': sideLying({ ankle: 0 }, { abduction: 30, ankle: 0 }),
  'rear-leg-raise-standing': rearStanding,
  'rear-leg-raise-bent': rearRaise({ hip: -1, knee: 90, ankle: 0 }, { hip: -15, knee: 90, ankle: 0 }),
  'rear-leg-raise-straight': {
    ...rearRaise({ hip: -1, knee: 6, ankle: -48 }, { hip: -15, knee: 4, ankle: -30 }),
    motions: [{ of: 'ankle', awayFrom: 'hip', beyond: 20 }],
  },
  'pillow-squeeze': pillowSqueeze,
  'inner-leg-raise': innerRaise,
  clam,
  'clam-band': { ...clam, loads: [{ kind: 'band', through: ['knee', 'far-knee'] }] },
};
