/**
 * Upper tail of the standard normal distribution, to about 14 digits.
 *
 * Near the middle the power series of the distribution function, farther out the continued fraction of the
 * tail, so that small probabilities are not lost by subtraction from one.
 */
const seriesUpTo = 3;
const fractionTerms = 120;

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

const halfToZ = (z: number): number => {
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > 1e-18 * Math.abs(sum); k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return density(z) * sum;
};

export const normalUpperTail = (z: number): number => {
  if (z < 0) return 1 - normalUpperTail(-z);
  if (z === 0) return 0.5;
  if (z < seriesUpTo) return 0.5 - halfToZ(z);
  let fraction = z;
  for (let k = fractionTerms; k >= 1; k -= 1) fraction = z + k / fraction;
  return density(z) / fraction;
};
