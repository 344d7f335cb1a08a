/** What each published lean-mass formula gives to the row that offers them all. */
import type { Citation } from '#core/sources/citation.ts';
import type { Sex } from '../body-fields.ts';

export interface LeanMassFormula {
  readonly id: string;
  readonly citation: Citation;
  readonly kilograms: (sex: Sex, massKg: number, statureCm: number) => number;
}
