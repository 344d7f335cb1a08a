/** Push-ups, presses, arm raises, turning the arm. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { Arm, Pose } from '../body/pose.ts';
import { type Figure, fromTheFront, fromTheSide, type Load, type Prop } from './figure.ts';
import { floor, step } from './props.ts';
import { inclined, pushUp, wallPushUp } from './push-ups.ts';
import {
  arm,
  floorUnderChair,
  kneesBent,
  lyingOnBack,
  matUnder,
  seat,
  sitting,
  standing,
  usualChair,
} from './stances.ts';

const press = (base: Pose, from: Arm, to: Arm, more: Partial<Figure>): Figure => ({
  view: fromTheSide,
  position: 'sitting',
  pictures: 1,
  start: { ...base, arm: from },
  end: { ...base, arm: to },
  works: arm,
  both: true,
  props: [floorUnderChair, usualChair],
  ...more,
});

const overhead = (loads: readonly Load[]) =>
  press(
    sitting,
    { handAt: [15, 95], elbowTo: [1, -1, 0] },
    { handAt: [5, 140], elbowTo: [1, 0, 0] },
    { loads, motions: [{ of: 'palm', shift: [16, 2] }], props: [floorUnderChair, usualChair] },
  );

const raise = (
  view: Figure['view'],
  start: Arm,
  end: Arm,
  loads: readonly Load[],
  props: readonly Prop[],
): Figure => {
  const leg = view.name === 'side' ? {} : { turnOut: 20, ankle: 0 };
  const far: Arm = { shoulder: 2, elbow: 10, ...(view.name === 'side' ? {} : { abduction: 8 }) };
  return {
    view,
    position: 'standing',
    pictures: 1,
    start: { ...standing, leg, arm: start, farArm: far },
    end: { ...standing, leg, arm: end, farArm: far },
    works: arm,
    motions: [{ of: 'palm', awayFrom: 'shoulder', beyond: 18 }],
    props,
    loads,
  };
};
const oneWeight: readonly Load[] = [{ kind: 'hand-weight' }];
const threeQuarters = { ...fromTheFront, round: 62, up: 8 };
/** A line on the floor across the view. */
const across = ({ round }: Figure['view'], to: number, from: number): Prop => {
  const [cos, sin] = [Math.cos((round * Math.PI) / 180), Math.sin((round * Math.PI) / 180)];
  return {
    lines: [
      [
        [from * cos, 0, -from * sin],
        [to * cos, 0, -to * sin],
      ],
    ],
  };
};
const floorAhead = across(fromTheFront, 40, -52);

/** So far round that the bent forearm stands clear of the body. */
const besideTheFrame = { ...fromTheFront, round: 118, up: 16 };
/** From the front and above, so that the forearm is seen to turn. */
const onTheArm = { ...fromTheFront, up: 36 };
const turning: Pose = {
  ...standing,
  leg: { abduction: 3, turnOut: 16, ankle: 0 },
  arm: { elbow: 90, abduction: 4 },
  farArm: { abduction: 8, elbow: 8 },
};

export const chestAndShoulder: Readonly<Record<ExerciseId<'chest-and-shoulder'>, Figure>> = {
  'wall-push-up-near': wallPushUp(9, 20),
  'wall-push-up': wallPushUp(16, 28),
  'incline-push-up-high': inclined(90, 32, 44, 'worktop'),
  'incline-push-up-table': inclined(75, 38, 51, 'worktop'),
  'incline-push-up-middle': inclined(60, 45, 57, 'seat'),
  'incline-push-up-low': inclined(45, 52, 65, 'seat'),
  'incline-push-up-step': inclined(30, 58, 71, 'block'),
  'knee-push-up': pushUp({
    lean: [55, 76],
    on: 'knees',
    handsUp: 0,
    position: 'on-all-fours',
    props: (hands) => [floor(-58, hands + 34)],
  }),
  'push-up': pushUp({
    lean: [69, 83],
    on: 'feet',
    handsUp: 0,
    position: 'leaning-on-hands',
    props: (hands) => [floor(-16, hands + 34)],
  }),
  'push-up-feet-raised': pushUp({
    lean: [83, 96],
    on: 'feet',
    feetUp: 26.5,
    handsUp: 0,
    position: 'leaning-on-hands',
    props: (hands) => [floor(-26, hands + 34), step(-20, 22, 26.5)],
  }),
  'chest-press-band': press(
    sitting,
    { handAt: [15, 76], elbowTo: [-1, -0.5, 0] },
    { handAt: [54, 82], elbowTo: [-1, -1, 0] },
    { motions: [{ of: 'palm', shift: [4, 14] }], loads: [{ kind: 'band', through: [[-14, 78], 'palm'] }] },
  ),
  'chest-press-lying': press(
    { ...lyingOnBack, leg: kneesBent },
    { handAt: [-38, 30, 24], elbowTo: [0.5, -0.6, 1] },
    { handAt: [-42, 64], elbowTo: [1, 0, 0.4] },
    { position: 'on-back', motions: [{ of: 'palm', shift: [-16, 2] }], loads: oneWeight, props: [matUnder] },
  ),
  'overhead-press-band': overhead([{ kind: 'band', through: [[2, seat], 'palm'] }]),
  'overhead-press-weights': overhead(oneWeight),
  'front-arm-raise-bent': {
    ...raise(fromTheSide, { elbow: 90 }, { shoulder: 88, elbow: 90 }, [], [floor(-34, 62)]),
    motions: [{ of: 'elbow', awayFrom: 'shoulder', beyond: 36, shares: [0.4, 1] }],
  },
  'front-arm-raise-straight': raise(
    fromTheSide,
    { shoulder: 2, elbow: 4 },
    { shoulder: 90, elbow: 4 },
    oneWeight,
    [floor(-34, 70)],
  ),
  'side-arm-raise-bent': {
    ...raise(
      threeQuarters,
      { elbow: 88, abduction: 4 },
      { elbow: 88, abduction: 88 },
      [],
      [across(threeQuarters, 34, -40)],
    ),
    motions: [{ of: 'elbow', awayFrom: 'shoulder', beyond: 16 }],
  },
  'side-arm-raise-straight': raise(
    fromTheFront,
    { abduction: 6, elbow: 4 },
    { abduction: 90, elbow: 4 },
    oneWeight,
    [floorAhead],
  ),
  'arm-turn-out-hold': {
    view: besideTheFrame,
    position: 'standing',
    pictures: 1,
    start: { ...turning, arm: { elbow: 90, abduction: 4, turnOut: 4 } },
    works: arm,
    presses: [{ at: 'palm', from: [30, -2], to: [10, -2] }],
    props: [
      across(besideTheFrame, 40, -62),
      {
        isSolid: true,
        lines: [
          [
            [36, 0, 28],
            [36, 150, 28],
            [36, 150, 38],
            [36, 0, 38],
          ],
        ],
      },
    ],
  },
  'arm-turn-out-band': {
    view: onTheArm,
    position: 'standing',
    pictures: 1,
    start: { ...turning, arm: { elbow: 90, abduction: 4, turnOut: -48 } },
    end: { ...turning, arm: { elbow: 90, abduction: 4, turnOut: 46 } },
    works: arm,
    motions: [{ of: 'palm', awayFrom: 'elbow', beyond: 18 }],
    props: [
      floorAhead,
      {
        lines: [
          [
            [20, 0, -60],
            [20, 120, -60],
          ],
        ],
      },
    ],
    loads: [{ kind: 'band', through: [[20, 92, -60], 'palm'] }],
  },
};
