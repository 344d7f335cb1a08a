/** One exercise as pictures: strokes and the box they fill, the working side on the right. */
import { between, farArmOf, type Pose } from '../body/pose.ts';
import { type Skeleton, skeletonOf } from '../body/skeleton.ts';
import { lengthOf, minus, plus, times, unit } from '../body/turn.ts';
import type { Figure, Motion, Press, Prop } from '../exercises/figure.ts';
import { cuffOf, loadsBefore, loadsBehind, loadsOnLimb } from './loads.ts';
import { isFar, type LimbName, type Look, limbOf, partsOf, personOf } from './person.ts';
import { arrowAlong, type Stroke } from './strokes.ts';
import {
  type Box,
  boxAround,
  boxOfPath,
  type Projection,
  pathThrough,
  projection,
  type Spot,
} from './view.ts';

export interface Picture {
  readonly strokes: readonly Stroke[];
  readonly box: Box;
}

const motionOf = (figure: Figure, motion: Motion, eye: Projection): readonly Stroke[] => {
  const { of, awayFrom, beyond = 0, shift = [0, 0], shares: [first, last] = [0.1, 0.9] } = motion;
  const shares = Array.from({ length: 9 }, (_, at) => first + ((last - first) * at) / 8);
  const spots = shares.map((share): Spot => {
    const { points } = skeletonOf(between(figure.start, figure.end!, share));
    const away = awayFrom ? times(unit(minus(points[of], points[awayFrom])), beyond) : ([0, 0, 0] as const);
    const [x, y] = eye.spot(plus(points[of], away));
    return [x + shift[0], y - shift[1]];
  });
  const above = spots.filter(([, y]) => y < -1);
  return arrowAlong(figure.view.name === 'side' && above.length > 1 ? above : spots);
};

const pressOf = ({ at, from, to }: Press, { points }: Skeleton, eye: Projection): readonly Stroke[] => {
  const [x, y] = eye.spot(points[at]);
  return arrowAlong([from, to].map(([right, up]): Spot => [x + right, y - up]));
};

const propsOf = (props: readonly Prop[], isInFront: boolean, eye: Projection): readonly Stroke[] =>
  props
    .filter((prop) => (prop.isInFront ?? false) === isInFront)
    .map(({ lines, isSolid }) => ({
      d: lines.map((line) => pathThrough(line.map(eye.spot), isSolid)).join(''),
      tone: 'prop',
      width: 2.8,
      isFilled: isSolid ?? false,
    }));

const closedHandsOf = ({ loads = [] }: Figure, pose: Pose): readonly LimbName[] => {
  const isHolding = loads.some(({ kind }) => kind === 'hand-weight' || kind === 'stick');
  const bandEnds = loads.flatMap((load) => (load.kind === 'band' ? load.through : []));
  const grips = (arm: Pose['arm']) => 'handAt' in arm && !arm.fingersTo;
  const near = isHolding || bandEnds.includes('palm') || grips(pose.arm);
  const far =
    loads.some((load) => load.kind === 'hand-weight' && load.both) ||
    bandEnds.includes('far-palm') ||
    grips(farArmOf(pose));
  return [...(near ? (['arm'] as const) : []), ...(far ? (['far-arm'] as const) : [])];
};

const hasMoved = (limb: LimbName, a: Skeleton, b: Skeleton): boolean =>
  partsOf(limb, false).some(([, points]) =>
    points.some((point) => lengthOf(minus(a.points[point], b.points[point])) > 3),
  );

interface Asked {
  readonly pose: Pose;
  /** The start, drawn in grey where it differs. */
  readonly ghost?: Pose | undefined;
  readonly hasMotion: boolean;
  readonly cuffOn?: 'arm' | 'leg' | undefined;
}

const strokesOf = (figure: Figure, { pose, ghost, hasMotion, cuffOn }: Asked): readonly Stroke[] => {
  const eye = projection(figure.view);
  const skeleton = skeletonOf(pose);
  const loads = figure.loads ?? [];
  const look: Look = {
    works: figure.works,
    both: figure.both ?? false,
    closedHands: closedHandsOf(figure, pose),
    isFarBehind: figure.view.name === 'side',
  };
  const start = ghost ? skeletonOf(ghost) : null;
  const before = (limb: LimbName) =>
    start && hasMoved(limb, start, skeleton) && !(isFar(limb) && look.both && look.isFarBehind)
      ? limbOf(start, limb, eye, look, true)
      : [];
  const after = (limb: LimbName) => [
    ...(cuffOn === limb ? cuffOf(skeleton, cuffOn, eye) : []),
    ...loadsOnLimb(loads, limb, skeleton, eye),
  ];
  return [
    ...propsOf(figure.props, false, eye),
    ...loadsBehind(loads, skeleton, eye),
    ...personOf(skeleton, eye, look, { before, after }),
    ...loadsBefore(loads, skeleton, eye),
    ...propsOf(figure.props, true, eye),
    ...(hasMotion && figure.end
      ? (figure.motions ?? []).flatMap((motion) => motionOf(figure, motion, eye))
      : []),
    ...(hasMotion || !figure.end ? (figure.presses ?? []) : []).flatMap((press) =>
      pressOf(press, skeleton, eye),
    ),
  ];
};

const boxOf = (figure: Figure, strokes: readonly Stroke[], pose: Pose): Box => {
  if (!figure.closeUp) return boxAround(strokes.map(({ d, width }) => boxOfPath(d, width / 2)));
  const { around, reach, shift = [0, 0] } = figure.closeUp;
  const [x, y] = projection(figure.view).spot(skeletonOf(pose).points[around]);
  return {
    left: x + shift[0] - reach,
    right: x + shift[0] + reach,
    top: y - shift[1] - reach,
    bottom: y - shift[1] + reach,
  };
};

const drawn = (figure: Figure, asked: Asked): Picture => {
  const strokes = strokesOf(figure, asked);
  return { strokes, box: boxOf(figure, strokes, figure.start) };
};

export const picturesIn = ({ end, pictures }: Figure): 1 | 2 => (end ? pictures : 1);

export const picturesOf = (figure: Figure, cuffOn?: 'arm' | 'leg'): readonly Picture[] => {
  const { start, end } = figure;
  if (!end) return [drawn(figure, { pose: start, hasMotion: false, cuffOn })];
  if (picturesIn(figure) === 1) return [drawn(figure, { pose: end, ghost: start, hasMotion: true, cuffOn })];
  return [
    drawn(figure, { pose: start, hasMotion: true, cuffOn }),
    drawn(figure, { pose: end, hasMotion: false, cuffOn }),
  ];
};
