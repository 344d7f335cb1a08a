/**
 * The drawing as strokes, back to front. A limb is a tube: all its parts in ink, then again thinner in paper
 * or in the colour of what works, so that joints leave no seam.
 */
import { pathThrough, type Spot } from './view.ts';

export type Tone = 'ink' | 'paper' | 'works' | 'far' | 'ghost' | 'prop' | 'band' | 'hair' | 'arrow';

export interface Stroke {
  readonly d: string;
  readonly tone: Tone;
  /** 0: only filled. */
  readonly width: number;
  readonly isFilled?: boolean;
  readonly isSquare?: boolean;
}

export const outline = 2.5;

const arrowHead = ([x, y]: Spot, [fromX, fromY]: Spot): readonly Spot[] => {
  const long = Math.hypot(x - fromX, y - fromY) || 1;
  const [alongX, alongY] = [(x - fromX) / long, (y - fromY) / long];
  const [tip, half] = [5.5, 4.2];
  return [
    [x + alongX * tip, y + alongY * tip],
    [x - alongY * half - alongX * 2, y + alongX * half - alongY * 2],
    [x + alongY * half - alongX * 2, y - alongX * half - alongY * 2],
  ];
};

export const arrowAlong = (spots: readonly Spot[]): readonly Stroke[] => [
  { d: pathThrough(spots), tone: 'arrow', width: 2.6 },
  { d: pathThrough(arrowHead(spots.at(-1)!, spots.at(-2)!), true), tone: 'arrow', width: 0, isFilled: true },
];

/** Parts of one limb: all outlines first, so that the joints between them stay open. */
export const tubes = (
  parts: readonly { readonly d: string; readonly width: number; readonly inner: Tone }[],
  ink: Tone,
): readonly Stroke[] => [
  ...parts.map(({ d, width }): Stroke => ({ d, width, tone: ink })),
  ...parts.map(({ d, width, inner }): Stroke => ({ d, width: width - 2 * outline, tone: inner })),
];

export const ellipse = ([x, y]: Spot, wide: number, high: number = wide): string =>
  pathThrough(
    Array.from({ length: 18 }, (_, at): Spot => {
      const angle = (at * Math.PI) / 9;
      return [x + wide * Math.cos(angle), y + high * Math.sin(angle)];
    }),
    true,
  );

export const filled = (d: string, tone: Tone, width = 0): Stroke => ({ d, tone, width, isFilled: true });
