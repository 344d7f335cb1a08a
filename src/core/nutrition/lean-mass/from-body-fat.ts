/**
 * Lean mass in kg from body mass and a measured body-fat percentage: an identity.
 *
 * Preferred when the percentage was measured; it inherits the whole error of that measurement.
 */
import type { Citation } from '#core/sources/citation.ts';

export const fromBodyFatCitation: Citation = {
  source: 'body-composition-identity',
  locator: 'identity',
  mark: 'computed',
};

export const leanMassFromBodyFatKg = (massKg: number, bodyFatPercent: number): number =>
  (massKg * (100 - bodyFatPercent)) / 100;
