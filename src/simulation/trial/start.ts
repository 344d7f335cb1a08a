/** Where everybody begins: one joint, one low-load exercise, and the loads at home. */
import type { Joint } from '#core/exercises/joints.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';

export const joint: Joint = 'left-knee';
/** A Monday. */
export const firstDay = 20_458;
export const dayMilliseconds = 86_400_000;

export const startDose: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'invented-leg-exercise',
  side: 'left',
  sets: 3,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  repetitions: { low: 15, high: 25 },
  reserve: 2,
  loadKg: 10,
  // Dosed by effort: a maximum of the first day would bound the load for half a year.
  oneRepMaxKg: null,
};

/** One set, further from failure: what the product proposes beside such a dose by default. */
export const startEasier: LowLoadDose = {
  ...startDose,
  sets: 1,
  repetitions: { low: 15, high: 15 },
  reserve: 3,
};

export const ownedLoadsKg: readonly number[] = Array.from({ length: 41 }, (_, step) => 5 + step * 0.5);

const daysOfWeek = 7;
const trainingDays: readonly number[] = [0, 2, 4];

export const isTrainingDay = (day: number): boolean => trainingDays.includes((day - firstDay) % daysOfWeek);

/** The clinician looks on Mondays; the first Monday is the visit at which the plan was signed. */
export const isLookDay = (day: number): boolean => day > firstDay && (day - firstDay) % daysOfWeek === 0;
