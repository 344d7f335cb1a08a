/** The same exercise, or another level of it, in force beside a dose: a person would do both. */
import { exerciseById } from '../exercises/catalogue.ts';
import type { Dose } from './dose.ts';

type Side = Dose['side'];

const sidesMeet = (one: Side, other: Side): boolean => one === other || one === 'both' || other === 'both';

const familyOf = (dose: Dose): string => exerciseById(dose.exerciseId)?.family ?? dose.exerciseId;

/** The very same exercise, side and method: signing the one replaces the other, and asks. */
export const isSameLine = (one: Dose, other: Dose): boolean =>
  one.exerciseId === other.exerciseId && one.side === other.side && one.method === other.method;

/** Other doses in force that stay beside this one. `itemId` is of the one it takes the place of; null = none. */
export const dosesBeside = (
  dose: Dose,
  itemId: string | null,
  inForce: readonly { readonly itemId: string; readonly dose: Dose }[],
): readonly Dose[] =>
  inForce
    .filter((other) => other.itemId !== itemId)
    .map((other) => other.dose)
    .filter(
      (other) =>
        familyOf(other) === familyOf(dose) && sidesMeet(other.side, dose.side) && !isSameLine(other, dose),
    );
