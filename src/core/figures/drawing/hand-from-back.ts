/** The back of a right hand, fingers up, the thumb to the left, with what it works against. */
import type { HandFigure, HandPose } from '../exercises/hand-figure.ts';
import { bar, go, size } from './hand-parts.ts';
import { arrowAlong, outline, type Stroke, type Tone } from './strokes.ts';
import { pathThrough, type Spot } from './view.ts';

const long = size.phalanges.reduce((sum, one) => sum + one, 0);
/** From the index to the little finger: how far each is longer than the longest joint sum. */
const fingerLengths = [1.2, 1.32, 1.25, 1];
const corners = (half: number, up: number): readonly Spot[] => [
  [-half, up],
  [half, up],
];
const palm = pathThrough([...corners(12, -5), ...corners(14, -size.palm + 6).toReversed()], true);
const thumbBase: Spot = [-15, -6];

const fingersAt = (spread: number): readonly (readonly Spot[])[] =>
  fingerLengths.map((longer, at) => {
    const place = at - 1.5;
    const knuckle: Spot = [place * 11.5, -size.palm - (at === 1 || at === 2 ? 3 : 0)];
    return [knuckle, go(knuckle, 90 - place * spread * 0.9, long * longer)];
  });

const thumbAt = (spread: number): readonly Spot[] => {
  const joint = go(thumbBase, 122 + spread, 19);
  return [thumbBase, joint, go(joint, 106 + spread, 15)];
};

const along = (spots: readonly Spot[], share: number): Spot => {
  const [a, b] = [spots.at(-2)!, spots.at(-1)!];
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
};

const outward = ([x, y]: Spot, towards: 1 | -1): readonly Stroke[] =>
  arrowAlong([
    [x + towards * 10, y + 8],
    [x + towards * 27, y + 13],
  ]);

interface Parts {
  readonly fingers: readonly (readonly Spot[])[];
  readonly thumb: readonly Spot[];
}

/** Round all fingers, or round the thumb and the palm. */
const loopOf = ({ does, holds }: HandFigure, { fingers, thumb }: Parts): readonly Stroke[] => {
  if (holds !== 'ring' && holds !== 'putty') return [];
  const around =
    does === 'thumb-out'
      ? [[-13, -19] as const, [15, -22] as const]
      : fingers.map((spots) => along(spots, 0.6));
  const d = pathThrough([along(thumb, 0.5), ...around]);
  return holds === 'putty'
    ? [
        { d, tone: 'ink', width: 13 },
        { d, tone: 'paper', width: 8 },
      ]
    : [
        { d, tone: 'band', width: 6 },
        { d, tone: 'paper', width: 1.8 },
      ];
};

/** A finger of the other hand, put against the thumb or the index finger. */
const otherHand = ([x, y]: Spot): readonly Stroke[] =>
  bar(
    [
      [x - 11.5, y + 34],
      [x - 11.5, y - 4],
    ],
    size.fingerWide + 1,
    'paper',
  );

const pressAt = ([x, y]: Spot): readonly Stroke[] =>
  arrowAlong([
    [x + 14, y - 17],
    [x - 8, y - 17],
  ]);

const arrowsOf = (figure: HandFigure, { fingers, thumb }: Parts): readonly Stroke[] => {
  const tip = thumb.at(-1)!;
  if (figure.presses === 'thumb') return pressAt(tip);
  if (figure.presses === 'index') return pressAt(fingers[0]!.at(-1)!);
  return [...outward(tip, -1), ...(figure.does === 'thumb-out' ? [] : outward(fingers.at(-1)!.at(-1)!, 1))];
};

export const backStrokes = (figure: HandFigure, pose: HandPose, hasArrows: boolean): readonly Stroke[] => {
  const drawn: Parts = { fingers: fingersAt(pose.spread), thumb: thumbAt(pose.thumb ?? pose.spread) };
  const { fingers, thumb } = drawn;
  const pressing = figure.presses === 'index' ? fingers[0]! : thumb;
  const parts = [...fingers, thumb].map((spots) => pathThrough(spots));
  const flesh = (tone: Tone, width: number): readonly Stroke[] => [
    ...parts.map((d): Stroke => ({ d, tone, width: size.fingerWide - width })),
    { d: palm, tone, width: 14 - width, isFilled: true },
  ];
  return [
    ...bar(
      [
        [0, 46],
        [0, 0],
      ],
      24,
      'paper',
    ),
    ...flesh('ink', 0),
    ...flesh('works', 2 * outline),
    ...loopOf(figure, drawn),
    ...(figure.holds === 'other-hand' ? otherHand(pressing.at(-1)!) : []),
    ...(hasArrows ? arrowsOf(figure, drawn) : []),
  ];
};
