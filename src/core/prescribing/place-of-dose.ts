/** Where a dose is done. Pages of the phone read this, so it reaches neither the machines nor the catalogue. */
import type { Dose, DoseMachine } from './dose.ts';

/** The machine of the clinic on which a dose is done; null = at home. */
export const machineOf = (dose: Dose): DoseMachine | null =>
  dose.method === 'low-load' ? (dose.machine ?? null) : null;

/** Done only with a clinician there, who chooses the day: a cuff that asks for it, and every machine of the clinic. */
export const isWithClinicianAlone = (dose: Dose): boolean =>
  machineOf(dose) !== null || (dose.method === 'occlusion' && dose.supervised);

/** Kilograms of two places do not compare. */
export const isSamePlace = (one: Dose, other: Dose): boolean => machineOf(one)?.id === machineOf(other)?.id;
