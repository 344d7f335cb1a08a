/** Rows and pull-downs. */
import type { ExerciseId } from '../../exercises/ids.ts';
import { lengths } from '../body/lengths.ts';
import type { Pose } from '../body/pose.ts';
import { skeletonOf } from '../body/skeleton.ts';
import { type Figure, fromBehind, fromTheFront, fromTheSide, type Prop } from './figure.ts';
import { chair, floor, hook, lines, post, worktop } from './props.ts';
import { arm, floorUnderChair, seat, seatedHip, sitting, sole, usualChair } from './stances.ts';

/** A straight body hanging back from fixed handles, over the heels. */
const leanBack = (fromUpright: number): Figure => {
  const at = (lean: number, held: Pose['arm']): Pose => ({
    lean: -lean,
    neck: 8,
    leg: { heelUp: -Math.max(0, lean - 34) },
    arm: held,
    anchor: ['heel', [0, 4]],
  });
  const { shoulder } = skeletonOf(at(fromUpright, {})).points;
  const reach = lengths.upperArm + lengths.forearm + lengths.palm - 1;
  const up = ((fromUpright - 4) * Math.PI) / 180;
  const hands = [shoulder[0] + reach * Math.cos(up), shoulder[1] + reach * Math.sin(up)] as const;
  const held = { handAt: hands, elbowTo: [-0.3, -1, 0] } as const;
  return {
    view: fromTheSide,
    position: 'leaning-back',
    pictures: 2,
    start: at(fromUpright, held),
    end: at(fromUpright - 15, held),
    works: arm,
    both: true,
    motions: [{ of: 'chest', shift: [-12, 26] }],
    props: [
      floor(-100, 34),
      lines([
        [hands[0], hands[1]],
        [hands[0] + 4, 150],
      ]),
      hook(hands[0] + 4, 150),
    ],
  };
};

const stoolBehind: Prop = {
  lines: [
    [
      [0, 0, -18],
      [0, seat, -18],
      [0, seat, 18],
      [0, 0, 18],
    ],
  ],
};
const bladesTogether: Figure = {
  view: fromBehind,
  position: 'sitting',
  pictures: 1,
  start: {
    leg: { hip: 88, knee: 88, abduction: 12 },
    arm: { abduction: 8, elbow: 8 },
    anchor: ['pelvis', [0, seatedHip]],
  },
  works: ['trunk'],
  still: 'blades-together',
  presses: [
    { at: 'chest', from: [34, -10], to: [12, -10] },
    { at: 'chest', from: [-34, -10], to: [-12, -10] },
  ],
  props: [
    stoolBehind,
    {
      lines: [
        [
          [0, 0, -40],
          [0, 0, 40],
        ],
      ],
    },
    // The shoulder blades.
    {
      isInFront: true,
      isSolid: true,
      lines: [-1, 1].map((side) => [
        [0, 78, side * 4],
        [0, 75, side * 14],
        [0, 56, side * 7],
      ]),
    },
  ],
};

const bandRow: Figure = {
  view: fromTheSide,
  position: 'sitting',
  pictures: 1,
  start: { ...sitting, arm: { handAt: [52, 74], elbowTo: [-1, -1, 0] } },
  end: { ...sitting, arm: { handAt: [14, 66], elbowTo: [-1, -0.4, 0] } },
  works: arm,
  both: true,
  motions: [{ of: 'palm', shift: [0, 14] }],
  props: [floor(-26, 112), usualChair, post(106, 92)],
  loads: [{ kind: 'band', through: [[106, 70], 'palm'] }],
};

const weightRow = (handAt: readonly [number, number]): Pose => ({
  lean: 62,
  neck: -16,
  leg: { ankleAt: [0, sole] },
  farLeg: { ankleAt: [12, sole] },
  arm: { handAt, elbowTo: [-1, 0.8, 0] },
  farArm: { handAt: [48, 63], fingersTo: [1, 0, 0] },
  anchor: ['hip', [-12, 76]],
});

const pullDown: Figure = {
  ...bandRow,
  start: { ...sitting, arm: { handAt: [17, 136], elbowTo: [1, -1, 0] } },
  end: { ...sitting, arm: { handAt: [15, 92], elbowTo: [-0.4, -1, 0] } },
  motions: [{ of: 'palm', shift: [15, 0] }],
  props: [floorUnderChair, usualChair, hook(20, 172)],
  loads: [{ kind: 'band', through: [[20, 172], 'palm'] }],
};

const footAssisted = (hip: readonly [number, number]): Pose => ({
  leg: { ankleAt: [34, seat + sole] },
  arm: { handAt: [10, 172], elbowTo: [0.6, -1, 0] },
  anchor: ['hip', hip],
});
const pullUp = (pelvis: number): Pose => ({
  leg: { knee: 14, ankle: -20 },
  arm: { handAt: [2, 196, 24], elbowTo: [0.2, -0.4, 1] },
  farArm: { handAt: [2, 196, -24], elbowTo: [0.2, -0.4, -1] },
  anchor: ['pelvis', [0, pelvis]],
});
const pulling = { pictures: 2, works: arm, both: true, position: 'hanging' } as const;

export const back: Readonly<Record<ExerciseId<'back'>, Figure>> = {
  'row-lean-back': leanBack(30),
  'row-lean-back-further': leanBack(38),
  'row-lean-back-half': leanBack(45),
  'row-lean-back-low': leanBack(60),
  'shoulder-blade-squeeze': bladesTogether,
  'row-band-seated': bandRow,
  'row-one-arm-weight': {
    view: fromTheSide,
    position: 'leaning-on-hands',
    pictures: 1,
    start: weightRow([26, 42]),
    end: weightRow([14, 76]),
    works: arm,
    motions: [{ of: 'elbow', shift: [-13, 8] }],
    props: [floor(-30, 94), worktop(36, 86, 59)],
    loads: [{ kind: 'hand-weight' }],
  },
  'pull-down-band': pullDown,
  'pull-up-foot-assisted': {
    ...pulling,
    view: fromTheSide,
    start: footAssisted([2, 74]),
    end: footAssisted([2, 108]),
    motions: [{ of: 'head', shift: [-18, 4] }],
    props: [floor(-30, 66), chair(58, seat, -36), hook(10, 172)],
  },
  'pull-up': {
    ...pulling,
    view: fromTheFront,
    start: pullUp(98),
    end: pullUp(138),
    motions: [{ of: 'head', shift: [40, 0] }],
    props: [
      {
        lines: [
          [
            [0, 196, -50],
            [0, 196, 50],
          ],
          [
            [0, 0, -50],
            [0, 0, 50],
          ],
          [
            [0, 0, -48],
            [0, 196, -48],
          ],
          [
            [0, 0, 48],
            [0, 196, 48],
          ],
        ],
      },
    ],
  },
};
