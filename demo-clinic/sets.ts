/** The sets a diary's session speaks of, against the dose in force. */
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { SetRecord } from '#core/record/record.ts';
import type { SessionDay } from './diary.ts';

/** What the patient picks up or straps on. */
export const pickedUpKg = (dose: Dose): number => (dose.method === 'variation' ? dose.addedKg : dose.loadKg);

/** A little over the floor while fresh, the floor at the end: as asked, and no more. */
const asAsked = (dose: Dose, set: number): number => {
  if (dose.method === 'occlusion') return dose.scheme[set - 1]!;
  const { low, high } = dose.repetitions;
  return Math.min(high, low + Math.max(0, dose.sets - set));
};

export interface Followed {
  readonly prescriptionId: string;
  readonly itemId: string;
  readonly joints: readonly Joint[];
  readonly dose: Dose;
}

export const setsDone = ({ prescriptionId, itemId, dose }: Followed, said: SessionDay): SetRecord[] => {
  const count = said.did?.length ?? dose.sets;
  return Array.from({ length: count }, (_, place) => ({
    prescriptionId,
    itemId,
    set: place + 1,
    repetitions: said.did ? said.did[place]! : asAsked(dose, place + 1),
    loadKg: pickedUpKg(dose),
    reserve: dose.method === 'occlusion' ? null : dose.reserve,
    stopReason: said.stop !== 'none' && place === count - 1 ? said.stop : 'none',
  }));
};
