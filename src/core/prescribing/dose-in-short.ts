/** A dose as a clinician jots it down: "3 × 12–15, 4.5 kg"; of a step only what is new where that is enough. */
import { changesBetween, heldSeconds, markOf, prescribedLoadKg } from '../decision/dose/volume.ts';
import { exerciseTitle } from '../exercises/catalogue.ts';
import { massInWords } from '../review/plain-words.ts';
import type { Dose } from './dose.ts';
import { machineOf } from './place-of-dose.ts';

const repetitionsInShort = (dose: Dose): string => {
  if (dose.method === 'occlusion') return dose.scheme.join(' / ');
  const { low, high } = dose.repetitions;
  const count = low === high ? `${low}` : `${low}–${high}`;
  const seconds = heldSeconds(dose);
  return seconds === null ? count : `${count} × ${seconds} s`;
};

/** "3 × 23–25", "3 × 5–10 × 5 s" of holds, or the scheme of work with a cuff. */
export const setsInShort = (dose: Dose): string =>
  dose.method === 'occlusion' ? repetitionsInShort(dose) : `${dose.sets} × ${repetitionsInShort(dose)}`;

/** The load where there is one to pick up, and the machine of the clinic. */
export const doseInShort = (dose: Dose): string =>
  [
    setsInShort(dose),
    ...(prescribedLoadKg(dose) > 0 ? [massInWords(prescribedLoadKg(dose))] : []),
    ...(markOf(dose) === null ? [] : [`mark ${markOf(dose)}`]),
    ...(machineOf(dose) === null ? [] : [`at the clinic, ${machineOf(dose)!.name}`]),
  ].join(', ');

/** Beside the dose before it: "× 13" where the repetitions alone are new. */
export const stepInShort = (before: Dose | null, dose: Dose): string => {
  if (before === null) return doseInShort(dose);
  const changed = changesBetween(before, dose).map(({ variable }) => variable);
  if (changed.includes('rung')) return `${exerciseTitle(dose.exerciseId)}, ${doseInShort(dose)}`;
  const isRepetitionsAlone = changed.length === 1 && (changed[0] === 'repetitions' || changed[0] === 'holds');
  return isRepetitionsAlone && dose.method !== 'occlusion'
    ? `× ${repetitionsInShort(dose)}`
    : doseInShort(dose);
};
