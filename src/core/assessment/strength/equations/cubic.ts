/**
 * A cubic in repetitions, as fitted to repetition tests. Every one published here rises, peaks and
 * falls again: beyond the peak more repetitions would mean a lower maximum, so it is refused there.
 */
export interface Cubic {
  readonly constant: number;
  readonly linear: number;
  readonly quadratic: number;
  readonly third: number;
}

export const cubicFactor = (cubic: Cubic, repetitions: number): number =>
  cubic.constant + repetitions * (cubic.linear + repetitions * (cubic.quadratic + repetitions * cubic.third));

/** Repetitions at which the factor stops rising: the larger root of the derivative when the lead is negative. */
export const peakRepetitions = (cubic: Cubic): number => {
  const a = 3 * cubic.third;
  const b = 2 * cubic.quadratic;
  return (-b - Math.sqrt(b * b - 4 * a * cubic.linear)) / (2 * a);
};

/** Repetitions on the rising side that give a factor, by halving; null above the peak. */
export const repetitionsForFactor = (cubic: Cubic, factor: number): number | null => {
  let low = 0;
  let high = peakRepetitions(cubic);
  if (factor > cubicFactor(cubic, high) || factor < cubicFactor(cubic, low)) return null;
  for (let step = 0; step < 100; step += 1) {
    const middle = (low + high) / 2;
    if (cubicFactor(cubic, middle) < factor) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
