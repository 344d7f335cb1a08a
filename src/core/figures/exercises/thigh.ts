/** Standing up, squatting, bending and straightening the knee, bowing from the hips. */
import type { ExerciseId } from '../../exercises/ids.ts';
import { lengths } from '../body/lengths.ts';
import type { Pose } from '../body/pose.ts';
import { type Figure, fromTheSide, type Load } from './figure.ts';
import { chair, chairBack, floor, lines, post, roll, solid, step, stool, wall } from './props.ts';
import {
  atChair,
  chairInFront,
  hipHeight,
  kneesBent,
  leg,
  lyingOnBack,
  matUnder,
  sitting,
  sole,
  usualChair,
} from './stances.ts';

/** Centimetres of a person of 170 cm. */
const cm = (centimetres: number) => (centimetres * 150) / 170;

const sitToStand = (seatCm: number, prop: 'chair' | 'stool' | 'cushion' = 'chair'): Figure => {
  const seat = cm(seatCm);
  const furniture =
    prop === 'stool'
      ? [stool(-14, seat)]
      : prop === 'cushion'
        ? [chair(-14, seat - 4.5, 34), solid([-12, seat - 3.5], [-12, seat], [19, seat], [19, seat - 3.5])]
        : [chair(-14, seat, 34)];
  const feet = { leg: { ankleAt: [25, sole] } } as const;
  return {
    view: fromTheSide,
    position: 'sitting',
    pictures: 2,
    start: { ...feet, lean: 32, arm: { shoulder: 62, elbow: 12 }, anchor: ['hip', [2, seat + 7]] },
    end: { ...feet, lean: 0, arm: { shoulder: 4, elbow: 10 }, anchor: ['hip', [25.5, hipHeight - 0.3]] },
    works: ['thigh', 'shank'],
    both: true,
    motions: [{ of: 'head', shift: [15, 8] }],
    props: [floor(-26, 56), ...furniture],
  };
};

const down = { lean: 36, anchor: ['hip', [-23, 50]] } as const;
const squatting = (arm: readonly [Pose['arm'], Pose['arm']], more: Partial<Figure>): Figure => ({
  view: fromTheSide,
  position: 'standing',
  pictures: 2,
  start: { leg: { ankleAt: [0, sole] }, arm: arm[0], anchor: ['hip', [0, hipHeight - 0.3]] },
  end: { leg: { ankleAt: [0, sole] }, arm: arm[1], ...down },
  works: ['thigh', 'shank'],
  both: true,
  motions: [{ of: 'hip', shift: [-16, -2] }],
  props: [floor(-46, 62)],
  ...more,
});
const atSupport = { handAt: [35, 82] } as const;

const stepUp: Figure = {
  view: fromTheSide,
  position: 'standing',
  pictures: 2,
  start: {
    lean: 10,
    leg: { ankleAt: [8, 20 + sole] },
    farLeg: { ankleAt: [-22, sole] },
    arm: { handAt: [34, 98] },
    anchor: ['hip', [-16, 77]],
  },
  end: {
    lean: 2,
    leg: { ankleAt: [8, 20 + sole] },
    farLeg: { ankleAt: [0, 34], heelUp: 20 },
    arm: { handAt: [34, 104] },
    anchor: ['hip', [8, 20 + hipHeight - 0.5]],
  },
  works: ['thigh', 'shank'],
  motions: [{ of: 'head', shift: [16, 4] }],
  props: [
    floor(-40, 66),
    step(-6, 52, 20),
    post(56, 118),
    lines([
      [20, 94],
      [60, 112],
    ]),
  ],
};

const kneeExtension: Figure = {
  view: fromTheSide,
  position: 'sitting',
  pictures: 1,
  start: { ...sitting, farLeg: { hip: 90, knee: 90 } },
  end: { ...sitting, leg: { hip: 90, knee: 6, ankle: 6 }, farLeg: { hip: 90, knee: 90 } },
  works: leg,
  motions: [{ of: 'ankle', awayFrom: 'knee', beyond: 16 }],
  props: [floor(-26, 96), usualChair],
  loads: [{ kind: 'ankle-weight' }],
};

const kneePress: Figure = {
  view: fromTheSide,
  position: 'on-back',
  pictures: 1,
  start: { ...lyingOnBack, leg: { hip: 14, knee: 24, ankle: 0 }, farLeg: kneesBent },
  works: leg,
  presses: [{ at: 'knee', from: [0, 32], to: [0, 15] }],
  props: [matUnder, roll(35, 6, 5.6)],
};

const wallSit: Figure = {
  view: fromTheSide,
  position: 'standing-at-wall',
  pictures: 2,
  start: { lean: -4, leg: { ankleAt: [34, sole] }, arm: { shoulder: 2, elbow: 6 }, anchor: ['hip', [0, 70]] },
  end: { leg: { ankleAt: [34, sole] }, arm: { shoulder: 10, elbow: 8 }, anchor: ['hip', [0, 46]] },
  works: ['thigh', 'shank'],
  both: true,
  motions: [{ of: 'head', shift: [20, -6] }],
  props: [floor(-16, 60), wall(-12)],
};

const handsAtHips = { handAt: [8, 52] } as const;
const legPress: Figure = {
  ...kneeExtension,
  start: {
    ...sitting,
    leg: { hip: 112, knee: 104, ankle: 0 },
    farLeg: { hip: 90, knee: 90 },
    arm: handsAtHips,
  },
  end: { ...sitting, leg: { hip: 88, knee: 8, ankle: 0 }, farLeg: { hip: 90, knee: 90 }, arm: handsAtHips },
  motions: [{ of: 'toe', shift: [14, 2] }],
  loads: [{ kind: 'band', through: ['palm', 'ball'] }],
};

const pulling = (from: readonly [number, number]): readonly Load[] => [
  { kind: 'band', through: [from, 'ankle'] },
];

const kneeBend: Figure = {
  view: fromTheSide,
  position: 'standing-at-support',
  pictures: 1,
  start: atChair,
  end: { ...atChair, leg: { knee: 86, ankle: 0 }, farLeg: {}, anchor: ['far-ankle', [0, sole]] },
  works: leg,
  motions: [{ of: 'ankle', awayFrom: 'knee', beyond: 17 }],
  props: [floor(-56, 72), chairInFront],
  loads: [{ kind: 'ankle-weight' }],
};

const kneeBendBand: Figure = {
  ...kneeExtension,
  start: { ...sitting, leg: { hip: 90, knee: 22, ankle: 0 }, farLeg: { hip: 90, knee: 90 } },
  end: { ...sitting, leg: { hip: 90, knee: 98, ankle: 12 }, farLeg: { hip: 90, knee: 90 } },
  props: [floor(-26, 122), usualChair, post(116, 42)],
  loads: pulling([116, 30]),
};

/** A place on the back of a trunk that leans over a hip, for the hands that hold a stick. */
const onBackOf = (hip: readonly [number, number], lean: number, up: number): readonly [number, number] => {
  const [sin, cos] = [Math.sin((lean * Math.PI) / 180), Math.cos((lean * Math.PI) / 180)];
  return [hip[0] + up * sin - 11 * cos, hip[1] + up * cos + 11 * sin];
};
const hinged = (hip: readonly [number, number], lean: number): Pose => ({
  lean,
  leg: { ankleAt: [0, sole] },
  arm: { handAt: onBackOf(hip, lean, 6), elbowTo: [-1, 0, 0.4] },
  farArm: { handAt: [...onBackOf(hip, lean, lengths.trunk + 15), -6], elbowTo: [0, 0.4, -1] },
  anchor: ['hip', hip],
});
const hinge = {
  view: fromTheSide,
  position: 'standing',
  pictures: 2,
  works: ['thigh', 'trunk'],
  both: true,
  motions: [{ of: 'head', shift: [17, 6] }],
  props: [floor(-40, 58)],
} as const;
const hingeStick: Figure = {
  ...hinge,
  start: hinged([0, hipHeight - 0.3], 0),
  end: hinged([-15, hipHeight - 3], 66),
  loads: [{ kind: 'stick' }],
};
const hingeWeights: Figure = {
  ...hinge,
  start: {
    leg: { ankleAt: [0, sole] },
    arm: { shoulder: 6, elbow: 2 },
    anchor: ['hip', [0, hipHeight - 0.3]],
  },
  end: {
    lean: 66,
    leg: { ankleAt: [0, sole] },
    arm: { shoulder: 62, elbow: 2 },
    anchor: ['hip', [-15, hipHeight - 3]],
  },
  loads: [{ kind: 'hand-weight', both: true }],
};

export const thigh: Readonly<Record<ExerciseId<'thigh'>, Figure>> = {
  'sit-to-stand-high-seat': sitToStand(60, 'stool'),
  'sit-to-stand-raised-chair': sitToStand(55),
  'sit-to-stand-cushion': sitToStand(50, 'cushion'),
  'sit-to-stand-chair': sitToStand(46),
  'sit-to-stand-low-chair': sitToStand(43),
  'squat-two-legs': squatting([atSupport, atSupport], {
    position: 'standing-at-support',
    props: [floor(-46, 78), chairBack(39, 80)],
  }),
  'squat-two-legs-weights': squatting(
    [
      { shoulder: 2, elbow: 4 },
      { shoulder: 36, elbow: 4 },
    ],
    { loads: [{ kind: 'hand-weight', both: true }] },
  ),
  'step-up': stepUp,
  'knee-extension-seated': kneeExtension,
  'knee-extension-seated-one-kilo': kneeExtension,
  'knee-press-down': kneePress,
  'wall-sit': wallSit,
  'leg-press-band': legPress,
  'knee-extension-band': { ...kneeExtension, loads: pulling([-10, 6]) },
  'knee-bend-standing': kneeBend,
  'knee-bend-standing-one-kilo': kneeBend,
  'knee-bend-band': kneeBendBand,
  'hip-hinge-stick': hingeStick,
  'hip-hinge-weights': hingeWeights,
};
