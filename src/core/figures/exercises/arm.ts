/** Bending and straightening the elbow. */
import type { ExerciseId } from '../../exercises/ids.ts';
import type { Arm } from '../body/pose.ts';
import { type Figure, fromTheSide } from './figure.ts';
import { hook } from './props.ts';
import { arm, floorUnder, floorUnderChair, sitting, standing, usualChair } from './stances.ts';

const one = { view: fromTheSide, pictures: 1, works: arm } as const;
const far: Arm = { shoulder: 20, elbow: 40 };

const seated = (start: Arm, end: Arm, more: Partial<Figure> = {}): Figure => ({
  ...one,
  position: 'sitting',
  start: { ...sitting, arm: start, farArm: far },
  end: { ...sitting, arm: end, farArm: far },
  motions: [{ of: 'palm', awayFrom: 'elbow', beyond: 15 }],
  props: [floorUnderChair, usualChair],
  loads: [{ kind: 'hand-weight' }],
  ...more,
});

const curl = seated({ shoulder: -2, elbow: 8 }, { shoulder: 4, elbow: 126 });
const overheadExtension = seated({ shoulder: 168, elbow: 118 }, { shoulder: 172, elbow: 8 });

export const elbow: Readonly<
  Record<
    Exclude<
      ExerciseId<'arm-and-hand'>,
      'wrist-bend-up' | 'wrist-bend-back' | 'ball-squeeze' | 'towel-wring' | 'finger-spread'
    >,
    Figure
  >
> = {
  'curl-seated': curl,
  'curl-seated-one-kilo': curl,
  'curl-seated-two-kilos': curl,
  'overhead-extension': overheadExtension,
  'overhead-extension-one-kilo': overheadExtension,
  'curl-band': seated(
    { shoulder: 8, elbow: 30 },
    { shoulder: 10, elbow: 124 },
    { loads: [{ kind: 'band', through: ['ball', 'palm'] }] },
  ),
  'press-down-band': {
    ...one,
    position: 'standing',
    start: { ...standing, arm: { elbow: 116 }, farArm: { shoulder: 2, elbow: 10 } },
    end: { ...standing, arm: { elbow: 6 }, farArm: { shoulder: 2, elbow: 10 } },
    motions: [{ of: 'palm', awayFrom: 'elbow', beyond: 15 }],
    props: [floorUnder, hook(26, 168)],
    loads: [{ kind: 'band', through: [[26, 168], 'palm'] }],
  },
};
