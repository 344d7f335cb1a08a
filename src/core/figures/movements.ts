/** What moves in a drawing, read off its poses: the joints that turn furthest, and the way they turn. */
import { anglesOf, type LimbAngles } from './body/measured.ts';
import { skeletonOf } from './body/skeleton.ts';
import type { Figure } from './exercises/figure.ts';

const turns = {
  knee: ['knee-bends', 'knee-straightens'],
  hip: ['hip-bends', 'hip-straightens'],
  legAbduction: ['leg-out', 'leg-in'],
  ankle: ['foot-up', 'foot-down'],
  shoulder: ['arm-up', 'arm-down'],
  armAbduction: ['arm-out', 'arm-in'],
  armTurn: ['arm-turns-out', 'arm-in'],
  elbow: ['elbow-bends', 'elbow-straightens'],
} as const satisfies Partial<Record<keyof LimbAngles, readonly [string, string]>>;
type Turn = (typeof turns)[keyof typeof turns][number] | 'leg-back';

const wholeBody = [
  'chest-lifts',
  'back-flattens',
  'hips-lift',
  'body-leans',
  'body-rises',
  'chin-back',
] as const;

export interface Move {
  readonly what: Turn | (typeof wholeBody)[number];
  /** The side that works, the other one, or both alike. */
  readonly of: 'worked' | 'other' | 'both';
  readonly limb: 'leg' | 'arm' | 'body';
  /** How much it is what is shown: degrees, of hip and shoulder a little more. */
  readonly weight: number;
}

const joints = Object.keys(turns) as (keyof typeof turns)[];
const limbOf = (joint: keyof typeof turns) =>
  joint === 'knee' || joint === 'hip' || joint === 'legAbduction' || joint === 'ankle' ? 'leg' : 'arm';

/** Smaller turns go with others and are not what is shown. */
const least = 12;
const leastShare = 0.55;
const carries = 1.3;

/** Where the thigh works the ankle only goes along; where an arm or leg works the other limbs do. */
const isShown = (joint: keyof typeof turns, { works }: Figure): boolean => {
  if (joint === 'ankle') return works.includes('foot') && !works.includes('thigh');
  const isTrunk = works.includes('trunk') && !works.includes('thigh');
  return (
    isTrunk ||
    (limbOf(joint) === 'arm'
      ? works.includes('upper-arm')
      : works.includes('shank') || works.includes('thigh'))
  );
};

const limbMoves = (figure: Figure, isFar: boolean): readonly Move[] => {
  const { start, end } = figure;
  const before = anglesOf(skeletonOf(start), start, isFar);
  const after = anglesOf(skeletonOf(end!), end!, isFar);
  return joints
    .filter((joint) => isShown(joint, figure) && Math.abs(after[joint] - before[joint]) >= least)
    .map((joint) => {
      const by = after[joint] - before[joint];
      const isBack = joint === 'hip' && by < 0 && after.hip < -2;
      return {
        what: isBack ? 'leg-back' : turns[joint][by > 0 ? 0 : 1],
        of: isFar ? 'other' : 'worked',
        limb: limbOf(joint),
        weight: Math.abs(by) * (joint === 'hip' || joint === 'shoulder' ? carries : 1),
      };
    });
};

const bodyMoves = ({ start, end }: Figure): readonly Move[] => {
  const by = (name: 'bend' | 'lean' | 'neck') => (end![name] ?? 0) - (start[name] ?? 0);
  const low = skeletonOf(start).points.pelvis[1];
  const isLow = low < 20;
  const raise = skeletonOf(end!).points.pelvis[1] - low;
  const whole = (what: Move['what'], weight: number): Move => ({ what, of: 'both', limb: 'body', weight });
  return [
    ...(by('bend') <= -least ? [whole('chest-lifts', -by('bend'))] : []),
    ...(by('bend') >= least ? [whole('back-flattens', by('bend'))] : []),
    ...(by('neck') <= -25 ? [whole('chin-back', -by('neck'))] : []),
    ...(isLow && raise > 8 ? [whole('hips-lift', 90)] : []),
    ...(!isLow && by('lean') >= least ? [whole('body-leans', by('lean'))] : []),
    ...(!isLow && by('lean') <= -least ? [whole('body-rises', -by('lean'))] : []),
  ];
};

const asOne = (worked: readonly Move[], other: readonly Move[], both: boolean): readonly Move[] =>
  both ? worked.map((move) => ({ ...move, of: 'both' })) : [...worked, ...other];

/** The largest move of each limb. */
const oneEach = (moves: readonly Move[]): readonly Move[] =>
  moves.filter((move, at) => moves.findIndex(({ limb, of }) => limb === move.limb && of === move.of) === at);

/** At most two, the largest first; none where nothing moves. */
export const movesOf = (figure: Figure): readonly Move[] => {
  if (!figure.end) return [];
  const body = bodyMoves(figure);
  const limbs = asOne(limbMoves(figure, false), limbMoves(figure, true), figure.both ?? false);
  const isTrunk = figure.works.includes('trunk') && !figure.works.includes('thigh');
  if (isTrunk && body.length > 0) return body.slice(0, 1);
  const sorted = [...limbs, ...body].sort((a, b) => b.weight - a.weight);
  return (isTrunk ? oneEach(sorted) : sorted)
    .filter(({ weight }) => weight >= leastShare * sorted[0]!.weight)
    .slice(0, 2);
};
