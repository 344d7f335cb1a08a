/** The back of a right hand, fingers up, the thumb to the left, with a ring round the fingers. */
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

export const spreadStrokes = (spread: number, hasArrows: boolean): readonly Stroke[] => {
  const [fingers, thumb] = [fingersAt(spread), thumbAt(spread)];
  const ring = pathThrough([along(thumb, 0.5), ...fingers.map((spots) => along(spots, 0.6))]);
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
    { d: ring, tone: 'band', width: 6 },
    { d: ring, tone: 'paper', width: 1.8 },
    ...(hasArrows ? [...outward(thumb.at(-1)!, -1), ...outward(fingers.at(-1)!.at(-1)!, 1)] : []),
  ];
};
