/** Straight line between neighbouring points; null outside them, because nothing here is extrapolated. */
export const interpolate = (points: readonly (readonly [number, number])[], x: number): number | null => {
  for (let index = 0; index < points.length; index += 1) {
    const [x1, y1] = points[index]!;
    if (x === x1) return y1;
    const next = points[index + 1];
    if (next && x > x1 && x < next[0]) return y1 + ((next[1] - y1) * (x - x1)) / (next[0] - x1);
  }
  return null;
};
