/** Two fists on a rolled towel, the forearms from below. */
import { bar, size } from './hand-parts.ts';
import { arrowAlong, type Stroke } from './strokes.ts';
import { pathThrough, type Spot } from './view.ts';

const upright = (x: number, from: number, to: number): readonly Spot[] => [
  [x, from],
  [x, to],
];

const fistOn = (x: number, turn: number): readonly Stroke[] => [
  ...bar(
    [
      [x * 1.25, 74],
      [x, 16],
    ],
    size.forearmWide,
    'works',
  ),
  ...[-15, -5, 5, 15].flatMap((aside) => bar(upright(x + aside, turn - 12, turn + 13), 11.5, 'works')),
];

const halfEdge = (side: 1 | -1, waist: number): readonly Spot[] => {
  const edge: readonly Spot[] = [-84, -30, 0, 30, 84].map((x) => [x, side * (x === 0 ? waist : 12)]);
  return side === -1 ? edge : edge.toReversed();
};

const folds = (waist: number): string =>
  [-14, -5, 4, 13]
    .map((x) =>
      pathThrough([
        [x - 4, waist + 1],
        [x + 5, -waist - 1],
      ]),
    )
    .join('');

/** Round an end of the roll. */
const twist = (x: number, towards: 1 | -1): readonly Stroke[] =>
  arrowAlong(
    Array.from({ length: 9 }, (_, at): Spot => {
      const angle = ((-78 + at * 19.5) * Math.PI) / 180;
      return [x + Math.sign(x) * 13 * Math.cos(angle), towards * 21 * Math.sin(angle)];
    }),
  );

/** Flat until the wrists turn. */
export const towelStrokes = (wrist: number): readonly Stroke[] => {
  const isWrung = wrist !== 0;
  const waist = isWrung ? 6 : 12;
  const turn = wrist / 7;
  return [
    {
      d: pathThrough([...halfEdge(-1, waist), ...halfEdge(1, waist)], true),
      tone: 'prop',
      width: 2.8,
      isFilled: true,
    },
    ...(isWrung ? [{ d: folds(waist), tone: 'prop', width: 2.4 } as const] : []),
    ...fistOn(-50, turn),
    ...fistOn(50, -turn),
    ...(isWrung ? [] : [...twist(-90, -1), ...twist(90, 1)]),
  ];
};
