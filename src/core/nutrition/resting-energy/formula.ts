/** What each published equation of resting energy gives to the row that offers them all. */
import type { Note } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import type { Sex } from '../body-fields.ts';

export interface FromBody {
  readonly from: 'body';
  readonly id: string;
  readonly citations: readonly Citation[];
  readonly kcalPerDay: (sex: Sex, massKg: number, statureCm: number, ageYears: number) => number;
  readonly notes: (ageYears: number) => readonly Note[];
}

export interface FromLeanMass {
  readonly from: 'lean-mass';
  readonly id: string;
  readonly citations: readonly Citation[];
  readonly kcalPerDay: (leanMassKg: number) => number;
  readonly notes: () => readonly Note[];
}

export type RestingEnergyFormula = FromBody | FromLeanMass;

/** A line in mass, stature and age, as all the equations from the whole body are. */
export interface BodyLine {
  readonly constant: number;
  readonly perKg: number;
  readonly perCm: number;
  readonly perYear: number;
}

export const onLine = (line: BodyLine, massKg: number, statureCm: number, ageYears: number): number =>
  line.constant + line.perKg * massKg + line.perCm * statureCm + line.perYear * ageYears;
