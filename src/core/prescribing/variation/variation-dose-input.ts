/** What the dose of a variation is proposed from; a figure left out is the clinic's choice. */
import type { Anthropometry, WorkedSide } from '#core/exercises/exercise.ts';
import type { TestedSet } from '#core/exercises/ladder/start-level.ts';

export interface VariationDoseInput {
  readonly person: Anthropometry;
  readonly exerciseId: string;
  readonly side: WorkedSide;
  /** A set already done on this level; without one the start is unproven and the notes say so. */
  readonly tested?: TestedSet | undefined;
  /** In a backpack, a hand or a cuff; left out = none. */
  readonly addedKg?: number | undefined;
  /** Of an exercise that is held: seconds of each hold, and the longest that steps lead to. */
  readonly holdSeconds?: number | undefined;
  readonly mostHoldSeconds?: number | undefined;
  /** Number on the putty, ring or band. */
  readonly mark?: number | undefined;
  readonly sets?: number | undefined;
  readonly repetitionsLow?: number | undefined;
  readonly repetitionsHigh?: number | undefined;
  readonly reserve?: number | undefined;
  readonly restSeconds?: number | undefined;
  readonly secondsPerRepetition?: number | undefined;
  readonly sessionsPerWeek?: number | undefined;
}
