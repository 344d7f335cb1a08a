/** Shapes of marks as parts of a path: each class of marks is drawn as one. */
export const square = (x: number, y: number, half: number): string =>
  `M${x - half} ${y - half}h${half * 2}v${half * 2}h${-half * 2}z`;

export const rhombus = (x: number, y: number, half: number): string =>
  `M${x} ${y - half}L${x + half} ${y}L${x} ${y + half}L${x - half} ${y}Z`;

export const cross = (x: number, y: number, half: number): string =>
  `M${x - half} ${y - half}l${half * 2} ${half * 2}m0 ${-half * 2}l${-half * 2} ${half * 2}`;

/** A point as wide as the line that draws it. */
export const dot = (x: number, y: number): string => `M${x} ${y}h.01`;

/** Stands above a mark whose entry was corrected later, so that colour has no part in it. */
export const hook = (x: number, y: number): string => `M${x - 4} ${y}l4-4l4 4`;

export const joined = <T>(marks: readonly T[], shape: (mark: T) => string): string =>
  marks.map(shape).join('');
