/** A number so far over the plan that a slip is likelier: it is asked about once, and taken once it is confirmed. */
import { type Dose, repetitionsOfSet } from '../prescribing/dose.ts';

/** More than twice what was planned, and more than ten over it: clinic choice, no source. */
export const isCountFarOver = (dose: Dose, set: number, repetitions: number): boolean => {
  const { high } = repetitionsOfSet(dose, set);
  return repetitions > Math.max(high * 2, high + 10);
};

/** A tenth over the plan is where the clinic hears of it as well. */
export const isLoadFarOver = (loadKg: number, plannedKg: number): boolean => loadKg > plannedKg * 1.1;
