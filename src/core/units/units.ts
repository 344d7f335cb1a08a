/**
 * Exact unit factors. Pound, inch and standard gravity are defined quantities, so the products are
 * exact too. A mass and the force it weighs are different quantities: kg never becomes N here; what
 * a hung mass pulls is asked for in kilogram-force.
 */

/** A factor as a quotient of whole numbers, so that ten pounds are 4.5359237 kg to the last digit. */
export interface ExactFactor {
  readonly numerator: number;
  readonly denominator: number;
}

export const kilogramsPerPound: ExactFactor = { numerator: 45_359_237, denominator: 100_000_000 };
export const newtonsPerKilogramForce: ExactFactor = { numerator: 980_665, denominator: 100_000 };
/** 0.45359237 × 9.80665. */
export const newtonsPerPoundForce: ExactFactor = {
  numerator: 44_482_216_152_605,
  denominator: 10_000_000_000_000,
};
/** Pound-force × 0.3048. */
export const newtonMetresPerFootPound: ExactFactor = {
  numerator: 13_558_179_483_314_004,
  denominator: 10_000_000_000_000_000,
};
export const metresPerInch: ExactFactor = { numerator: 254, denominator: 10_000 };
export const metresPerFoot: ExactFactor = { numerator: 3048, denominator: 10_000 };

/** So many of a unit, in the unit its factor leads to. */
export const times = (value: number, factor: ExactFactor): number =>
  (value * factor.numerator) / factor.denominator;

/** The way back. */
export const over = (value: number, factor: ExactFactor): number =>
  (value * factor.denominator) / factor.numerator;

export const kilogramsFromPounds = (pounds: number): number => times(pounds, kilogramsPerPound);
export const poundsFromKilograms = (massKg: number): number => over(massKg, kilogramsPerPound);

/**
 * Loads as whole milligrams, so that two loads are compared as integers. A gram would be coarse
 * enough to lift a computed target over its own bound (3.9996 kg must not become 4 kg); a double
 * would let 1.1 − 1 be more than a tenth of 1.
 */
export const milligrams = (massKg: number): number => Math.round(massKg * 1_000_000);

export const kilogramsFromMilligrams = (massMg: number): number => massMg / 1_000_000;

/** A weight under a kilogram is said in grams: 250 g, and never 0.25 kg rounded to a tenth. */
export const isInGrams = (kg: number): boolean => kg > 0 && kg < 1;
export const gramsOf = (kg: number): number => Math.round(kg * 1000);
export const kilogramsFromGrams = (grams: number): number => grams / 1000;
