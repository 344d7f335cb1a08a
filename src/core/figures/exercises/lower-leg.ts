/** Heel raises and toe raises. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { Leg, Pose } from '../body/pose.ts';
import { type Figure, fromTheSide } from './figure.ts';
import { floor, post, wall } from './props.ts';
import { atChair, chairInFront, seatedHip, sitting, sole, usualChair } from './stances.ts';

const slope = (degrees: number) =>
  [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)] as const;
/** Where the ankle is when the heel leaves the floor and the ball stays. */
const overBall = (ball: number, heelUp: number): readonly [number, number] => {
  const [cos, sin] = slope(heelUp);
  return [ball - 8 * cos + 1.85 * sin, 4 + 8 * sin + 1.85 * cos];
};
/** Where it is when the front of the foot leaves the floor and the heel stays. */
const overHeel = (heel: number, toesUp: number): readonly [number, number] => {
  const [cos, sin] = slope(toesUp);
  return [heel + 3 * cos - 1.85 * sin, 4 + 3 * sin + 1.85 * cos];
};

const heelRaise = (far: Leg | null, more: Partial<Figure> = {}): Figure => {
  const pose = (heelUp: number): Pose => ({
    ...atChair,
    leg: { heelUp },
    ...(far ? { farLeg: far } : {}),
    anchor: ['ball', [8, 4]],
  });
  return {
    view: fromTheSide,
    position: 'standing-at-support',
    pictures: 2,
    start: pose(0),
    end: pose(38),
    works: ['shank', 'foot'],
    both: far === null,
    presses: [{ at: 'heel', from: [-14, 0], to: [-14, 20] }],
    props: [floor(-34, 72), chairInFront],
    ...more,
  };
};

const seatedHeel = (heelUp: number): Pose => ({
  ...sitting,
  leg: { ankleAt: overBall(42, heelUp), heelUp },
  farLeg: { hip: 90, knee: 90 },
  arm: { handAt: [24, seatedHip + 20] },
});

const seatedToes = (toesUp: number): Pose => ({
  ...sitting,
  leg: { ankleAt: overHeel(38, toesUp), heelUp: -toesUp },
});

const atWall = (toesUp: number): Pose => ({
  lean: -9,
  leg: { heelUp: -toesUp },
  arm: { shoulder: -6, elbow: 6 },
  anchor: ['heel', [0, 4]],
});

const legOut = (ankle: number): Pose => ({
  lean: -12,
  leg: { hip: 78, knee: 0, ankle },
  farLeg: { ankleAt: [50, sole], kneeTo: [0, 1, 0] },
  arm: { handAt: [-26, 5], fingersTo: [-1, 0, 0], elbowTo: [-1, 0, 0] },
  anchor: ['hip', [0, 9.5]],
});

const foot = { view: fromTheSide, pictures: 1, works: ['shank', 'foot'] } as const;

export const lowerLeg: Readonly<Record<ExerciseId<'lower-leg'>, Figure>> = {
  'heel-raise-two-legs': heelRaise(null),
  'heel-raise-two-legs-weight': heelRaise(null, { loads: [{ kind: 'backpack' }] }),
  'heel-raise-one-leg': heelRaise({ hip: 4, knee: 74, ankle: -10 }),
  'heel-raise-seated': {
    ...foot,
    position: 'sitting',
    start: seatedHeel(0),
    end: seatedHeel(34),
    motions: [{ of: 'heel', shift: [-12, 2] }],
    props: [floor(-26, 66), usualChair],
    loads: [{ kind: 'thigh-weight' }],
  },
  'toe-raise-seated': {
    ...foot,
    position: 'sitting',
    start: seatedToes(0),
    end: seatedToes(22),
    both: true,
    motions: [{ of: 'toe', awayFrom: 'heel', beyond: 13 }],
    props: [floor(-26, 76), usualChair],
  },
  'toe-raise-standing': {
    ...foot,
    position: 'standing-at-wall',
    start: atWall(0),
    end: atWall(22),
    both: true,
    motions: [{ of: 'toe', awayFrom: 'heel', beyond: 13 }],
    props: [floor(-36, 40), wall(-29)],
  },
  'toe-raise-band': {
    ...foot,
    position: 'sitting',
    start: legOut(-32),
    end: legOut(14),
    motions: [{ of: 'toe', awayFrom: 'ankle', beyond: 13 }],
    props: [floor(-40, 128), post(120, 44)],
    loads: [{ kind: 'band', through: [[120, 16], 'ball'] }],
  },
};
