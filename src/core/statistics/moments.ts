/** Mean and spread of a list that is known not to be empty. */
export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const sumOfSquares = (values: readonly number[]): number => {
  const mean = meanOf(values);
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
};

/** With n − 1; zero for a single value, whose spread is not known. */
export const sampleDeviation = (values: readonly number[]): number =>
  values.length < 2 ? 0 : Math.sqrt(sumOfSquares(values) / (values.length - 1));

export const medianOf = (values: readonly number[]): number => {
  const ordered = Float64Array.from(values).sort();
  const middle = ordered.length >> 1;
  const upper = ordered[middle] as number;
  return ordered.length % 2 === 1 ? upper : ((ordered[middle - 1] as number) + upper) / 2;
};
