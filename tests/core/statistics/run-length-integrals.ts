/**
 * Average run lengths by integral equation, written for the test alone: Gauss–Legendre nodes turn the
 * equation of Page (sums) or Crowder (averages) into linear ones. It shares no code with the product.
 */

interface Node {
  readonly at: number;
  readonly weight: number;
}

/** Gauss–Legendre nodes on an interval, by Newton steps on the Legendre polynomial. */
const gaussLegendre = (count: number, low: number, high: number): readonly Node[] =>
  Array.from({ length: count }, (_, index) => {
    let x = Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    let slope = 0;
    for (let round = 0; round < 100; round += 1) {
      let [before, now] = [1, x];
      for (let k = 2; k <= count; k += 1)
        [before, now] = [now, ((2 * k - 1) * x * now - (k - 1) * before) / k];
      slope = (count * (x * now - before)) / (x * x - 1);
      const step = now / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    const half = (high - low) / 2;
    return { at: low + half * (x + 1), weight: (2 * half) / ((1 - x * x) * slope * slope) };
  });

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Area of the density from far below, by 64 nodes on each unit step. */
const below = (z: number): number => {
  let area = 0;
  for (let from = -9; from < z; from += 1) {
    for (const node of gaussLegendre(16, from, Math.min(from + 1, z))) area += node.weight * density(node.at);
  }
  return area;
};

/** Gaussian elimination with row exchange. */
const solve = (matrix: number[][], right: number[]): readonly number[] => {
  const size = right.length;
  const rows = matrix.map((row, index) => [...row, right[index] as number]);
  for (let column = 0; column < size; column += 1) {
    let best = column;
    for (let row = column + 1; row < size; row += 1) {
      if (Math.abs(rows[row]![column]!) > Math.abs(rows[best]![column]!)) best = row;
    }
    [rows[column], rows[best]] = [rows[best]!, rows[column]!];
    for (let row = column + 1; row < size; row += 1) {
      const factor = rows[row]![column]! / rows[column]![column]!;
      for (let at = column; at <= size; at += 1) rows[row]![at]! -= factor * rows[column]![at]!;
    }
  }
  const solution = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row -= 1) {
    let rest = rows[row]![size]!;
    for (let at = row + 1; at < size; at += 1) rest -= rows[row]![at]! * solution[at]!;
    solution[row] = rest / rows[row]![row]!;
  }
  return solution;
};

/** One-sided cumulative sum from zero: L(u) = 1 + L(0)·Φ(k−u−shift) + ∫ L(y)·φ(y+k−u−shift) dy over 0 to h. */
export const cusumRunLength = (allowance: number, interval: number, shift: number): number => {
  const nodes = gaussLegendre(40, 0, interval);
  const starts = [0, ...nodes.map((node) => node.at)];
  const matrix = starts.map((start, row) => {
    const line = [
      -below(allowance - start - shift),
      ...nodes.map((node) => -node.weight * density(node.at + allowance - start - shift)),
    ];
    line[row]! += 1;
    return line;
  });
  return solve(
    matrix,
    starts.map(() => 1),
  )[0] as number;
};

/** Two-sided moving average from the target, limits settled: L(u) = 1 + (1/λ)∫ L(y)·φ((y−(1−λ)u)/λ − shift) dy. */
export const ewmaRunLength = (lambda: number, width: number, shift: number): number => {
  const half = width * Math.sqrt(lambda / (2 - lambda));
  const nodes = gaussLegendre(61, -half, half);
  const chance = (from: number, to: number) => density((to - (1 - lambda) * from) / lambda - shift) / lambda;
  const matrix = nodes.map((from, row) => {
    const line = nodes.map((to) => -to.weight * chance(from.at, to.at));
    line[row]! += 1;
    return line;
  });
  const lengths = solve(
    matrix,
    nodes.map(() => 1),
  );
  return 1 + nodes.reduce((sum, node, index) => sum + node.weight * chance(0, node.at) * lengths[index]!, 0);
};
