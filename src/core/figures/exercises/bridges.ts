/** Lifting the pelvis from lying on the back. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { Leg, Pose } from '../body/pose.ts';
import { type Figure, fromTheSide } from './figure.ts';
import { matUnder, onBack, sole } from './stances.ts';

const foot: Leg = { ankleAt: [46, sole], kneeTo: [0, 1, 0] };
const atSides = { handAt: [9, 6], elbowTo: [0, 1, 0] } as const;
const lying: Pose = { lean: -90, leg: foot, arm: atSides, anchor: ['chest', [-43.2, onBack]] };
const lifted: Pose = {
  ...lying,
  lean: -116,
  neck: 24,
  arm: atSides,
};

const bridge = (start: Partial<Pose>, end: Partial<Pose>, more: Partial<Figure> = {}): Figure => ({
  view: fromTheSide,
  position: 'on-back',
  pictures: 2,
  start: { ...lying, ...start },
  end: { ...lifted, ...end },
  works: ['thigh', 'shank'],
  motions: [{ of: 'pelvis', shift: [-8, 16] }],
  props: [matUnder],
  ...more,
});

const aside = [-0.4, 0, 1] as const;
const onWeight = { handAt: [0, 24], elbowTo: aside } as const;

export const bridges: Readonly<Record<ExerciseId<'bridges'>, Figure>> = {
  'bridge-two-legs': bridge({}, {}, { both: true }),
  'bridge-two-legs-weight': bridge(
    { arm: onWeight },
    { arm: { handAt: [-4, 44], elbowTo: aside } },
    { both: true, loads: [{ kind: 'hip-weight' }], motions: [{ of: 'pelvis', shift: [14, 20] }] },
  ),
  'bridge-one-leg-bent': bridge(
    { farLeg: { ankleAt: [48, 18], kneeTo: [0, 1, 0] } },
    { farLeg: { ankleAt: [40, 26], kneeTo: [0, 1, 0] } },
  ),
  'bridge-one-leg': bridge(
    { farLeg: { hip: 0, knee: 0, ankle: 0 } },
    { farLeg: { hip: 0, knee: 0, ankle: 0 } },
  ),
};
