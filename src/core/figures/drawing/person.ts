/** The body as strokes: limbs, trunk and head, the nearer over the farther. */
import { type Segment, widths } from '../body/lengths.ts';
import type { Point } from '../body/pose.ts';
import type { Skeleton } from '../body/skeleton.ts';
import { from, type Vec } from '../body/turn.ts';
import { headOf } from './head.ts';
import { type Stroke, type Tone, tubes } from './strokes.ts';
import { type Projection, pathThrough } from './view.ts';

export type LimbName = 'leg' | 'arm' | 'far-leg' | 'far-arm';
const limbNames: readonly LimbName[] = ['far-leg', 'far-arm', 'leg', 'arm'];

const segmentsOf: Readonly<Record<'leg' | 'arm', readonly (readonly [Segment, readonly string[]])[]>> = {
  leg: [
    ['thigh', ['hip', 'knee']],
    ['shank', ['knee', 'ankle']],
    ['foot', ['heel', 'ball', 'toe']],
  ],
  arm: [
    ['upper-arm', ['shoulder', 'elbow']],
    ['forearm', ['elbow', 'wrist']],
    ['hand', ['wrist', 'fingers']],
  ],
};

export const isFar = (limb: LimbName): boolean => limb.startsWith('far-');
const kindOf = (limb: LimbName) => (limb.endsWith('leg') ? 'leg' : 'arm');

/** The points of a limb, by the part they draw. A closed hand ends at its palm. */
export const partsOf = (
  limb: LimbName,
  isClosed: boolean,
): readonly (readonly [Segment, readonly Point[]])[] =>
  segmentsOf[kindOf(limb)].map(([segment, points]) => [
    segment,
    points.map((point) => {
      const name = isClosed && point === 'fingers' ? 'palm' : point;
      return (isFar(limb) ? `far-${name}` : name) as Point;
    }),
  ]);

export interface Look {
  readonly works: readonly Segment[];
  readonly both: boolean;
  readonly closedHands: readonly LimbName[];
  /** The far side is drawn thinner and grey where it stands behind. */
  readonly isFarBehind: boolean;
}

const toneOf = (segment: Segment, limb: LimbName, look: Look): Tone =>
  look.works.includes(segment) && (look.both || !isFar(limb)) ? 'works' : 'paper';

export const limbOf = (
  skeleton: Skeleton,
  limb: LimbName,
  eye: Projection,
  look: Look,
  isGhost = false,
): readonly Stroke[] => {
  const isBehind = isFar(limb) && look.isFarBehind;
  const ink = isGhost ? 'ghost' : isBehind ? 'far' : 'ink';
  const parts = partsOf(limb, look.closedHands.includes(limb)).map(([segment, points]) => ({
    d: pathThrough(points.map((point) => eye.spot(skeleton.points[point]))),
    width: widths[segment] * (isBehind ? 0.86 : 1),
    inner: isGhost ? ('paper' as const) : toneOf(segment, limb, look),
  }));
  return tubes(parts, ink);
};

const trunkOf = ({ points, frames }: Skeleton, eye: Projection, look: Look): readonly Stroke[] => {
  const row = (point: Vec, frame: 'pelvis' | 'chest', up: number, half: number) =>
    [half, -half].map((aside) => eye.spot(from(point, frames[frame], [0, up, aside])));
  const [topRight, topLeft] = row(points.chest, 'chest', -5, 10);
  const [midRight, midLeft] = row(points.waist, 'chest', 0, 7);
  const [lowRight, lowLeft] = row(points.pelvis, 'pelvis', 1, 6);
  const trunk = pathThrough([topRight!, midRight!, lowRight!, lowLeft!, midLeft!, topLeft!], true);
  const neck = pathThrough([points.chest, points.head].map(eye.spot));
  const inner = look.works.includes('trunk') ? 'works' : 'paper';
  const neckInner = look.works.includes('neck') ? 'works' : 'paper';
  const parts = tubes(
    [
      { d: neck, width: widths.neck, inner: neckInner },
      { d: trunk, width: widths.trunk, inner },
    ],
    'ink',
  );
  return parts.map((part) => (part.d === trunk ? { ...part, isFilled: true } : part));
};

const depthOf = (skeleton: Skeleton, limb: LimbName, eye: Projection): number => {
  const points = partsOf(limb, false)[0]![1];
  return points.reduce((sum, point) => sum + eye.depth(skeleton.points[point]), 0) / points.length;
};

/** The body, with what goes with a limb (a start in grey, a load) before or after that limb. */
export const personOf = (
  skeleton: Skeleton,
  eye: Projection,
  look: Look,
  around: {
    readonly before: (limb: LimbName) => readonly Stroke[];
    readonly after: (limb: LimbName) => readonly Stroke[];
  },
): readonly Stroke[] => {
  const { pelvis, chest } = skeleton.points;
  const limbs = limbNames.map((limb) => ({
    // A limb level with the trunk is drawn behind it.
    depth: depthOf(skeleton, limb, eye) - 2,
    strokes: [...around.before(limb), ...limbOf(skeleton, limb, eye, look), ...around.after(limb)],
  }));
  const trunk = {
    depth: (eye.depth(pelvis) + eye.depth(chest)) / 2,
    strokes: [...trunkOf(skeleton, eye, look), ...headOf(skeleton, eye)],
  };
  return [...limbs, trunk].sort((a, b) => a.depth - b.depth).flatMap(({ strokes }) => strokes);
};
