/** On machines: the seat with its back, what the limb moves, and the cable. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { Leg, Pose } from '../body/pose.ts';
import { type Figure, fromTheSide } from './figure.ts';
import { floor, hook, lines, post } from './props.ts';
import { arm, leg, seat, seatedHip, sitting } from './stances.ts';

/** A padded seat whose back leans so far. */
const seatWithBack = (back: number) =>
  lines(
    [
      [-14 - back, seat + 62],
      [-12, seat],
      [26, seat],
    ],
    [
      [2, seat],
      [2, 0],
    ],
  );

const atHips = { handAt: [6, 40] } as const;
const still: Leg = { hip: 90, knee: 90 };

const pressing = (bent: Leg, long: Leg, far?: Leg): readonly [Pose, Pose] => {
  const base = { lean: -24, arm: atHips, anchor: ['hip', [0, seatedHip]] } as const;
  return [
    { ...base, leg: bent, ...(far ? { farLeg: far } : {}) },
    { ...base, leg: long, ...(far ? { farLeg: far } : {}) },
  ];
};

const legPress = (far?: Leg): Figure => {
  const [start, end] = pressing({ hip: 100, knee: 96, ankle: 2 }, { hip: 76, knee: 10, ankle: 2 }, far);
  return {
    view: fromTheSide,
    position: 'sitting',
    pictures: 1,
    start,
    end,
    works: leg,
    ...(far ? {} : { both: true }),
    motions: [{ of: 'ball', awayFrom: 'hip', beyond: 20 }],
    props: [floor(-40, 112), seatWithBack(24)],
    loads: [{ kind: 'plate' }],
  };
};

const atHandles = { ...sitting, arm: { handAt: [4, 38] } } as const;
const kneeMoving = (from: Leg, to: Leg, shift: readonly [number, number]): Figure => ({
  view: fromTheSide,
  position: 'sitting',
  pictures: 1,
  start: { ...atHandles, leg: from, farLeg: still },
  end: { ...atHandles, leg: to, farLeg: still },
  works: leg,
  motions: [{ of: 'ankle', awayFrom: 'knee', beyond: 20 }],
  props: [floor(-32, 96), seatWithBack(2)],
  loads: [{ kind: 'pad', at: 'ankle', shift }],
});

const chestPress: Figure = {
  view: fromTheSide,
  position: 'sitting',
  pictures: 1,
  start: { ...sitting, arm: { handAt: [16, 76], elbowTo: [-1, -0.5, 0] } },
  end: { ...sitting, arm: { handAt: [50, 80], elbowTo: [-1, -1, 0] } },
  works: arm,
  both: true,
  motions: [{ of: 'palm', shift: [4, 14] }],
  props: [floor(-32, 96), seatWithBack(2)],
  loads: [{ kind: 'pad', at: 'palm', shift: [0, 0] }],
};

const cable = {
  view: fromTheSide,
  position: 'sitting',
  pictures: 1,
  works: arm,
  both: true,
} as const;

const row: Figure = {
  ...cable,
  start: { ...sitting, arm: { handAt: [52, 74], elbowTo: [-1, -1, 0] } },
  end: { ...sitting, arm: { handAt: [14, 66], elbowTo: [-1, -0.4, 0] } },
  motions: [{ of: 'palm', shift: [0, 14] }],
  props: [
    floor(-32, 116),
    post(106, 118),
    lines([
      [-12, seat],
      [26, seat],
      [26, 0],
    ]),
  ],
  loads: [{ kind: 'cable', through: [[106, 70], 'palm'] }],
};

const pullDown: Figure = {
  ...cable,
  start: { ...sitting, arm: { handAt: [17, 136], elbowTo: [1, -1, 0] } },
  end: { ...sitting, arm: { handAt: [15, 92], elbowTo: [-0.4, -1, 0] } },
  motions: [{ of: 'palm', shift: [15, 0] }],
  props: [
    floor(-26, 66),
    hook(20, 172),
    lines([
      [-12, seat],
      [26, seat],
      [26, 0],
    ]),
  ],
  loads: [{ kind: 'cable', through: [[20, 172], 'palm'] }],
};

export const machines: Readonly<Record<ExerciseId<'machines'>, Figure>> = {
  'leg-press-machine': legPress(),
  'leg-press-machine-one-leg': legPress({ hip: 70, knee: 92 }),
  'knee-extension-machine': kneeMoving({ hip: 90, knee: 90 }, { hip: 90, knee: 6, ankle: 6 }, [7, 6]),
  'leg-curl-machine': kneeMoving({ hip: 90, knee: 8, ankle: 4 }, { hip: 90, knee: 96, ankle: 8 }, [-7, 2]),
  'chest-press-machine': chestPress,
  'cable-row': row,
  'cable-pull-down': pullDown,
};
