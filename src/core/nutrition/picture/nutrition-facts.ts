/** What of a record bears on nutrition. */
import type { Sex } from '../body-fields.ts';
import type { LockAnswers } from '../lock-fields.ts';

export interface NutritionFacts {
  /** null = not measured. */
  readonly massKg: number | null;
  readonly statureCm: number | null;
  readonly bodyFatPercent: number | null;
  readonly ageYears: number;
  /** Whose coefficients a formula takes; null = nobody has said. */
  readonly formulaSex: Sex | null;
  readonly answers: LockAnswers;
}
