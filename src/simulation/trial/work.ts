/** What a session asks of the joint and gives the muscle. Both laws are invented; no dose-response is published. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { figures } from './joint-settings.ts';
import { startDose } from './start.ts';

export interface WorkDone {
  readonly loadKg: number;
  /** Repetitions of each set. */
  readonly sets: readonly number[];
}

/** How the stress on the joint grows with the work; the first dose is 1 under each. */
export const laws = ['first', 'second'] as const;
export type Law = (typeof laws)[number];

const startRepetitions = startDose.sets * startDose.repetitions.low;

/** A loop, because the oracle asks it of every dose before every session. */
const total = (sets: readonly number[]): number => {
  let sum = 0;
  for (const repetitions of sets) sum += repetitions;
  return sum;
};

/** First law: load counts in full, repetitions by their root. Second: repetitions × load. */
export const stressOf = ({ loadKg, sets }: WorkDone, law: Law): number => {
  const repetitions = total(sets) / startRepetitions;
  return (loadKg / startDose.loadKg) * (law === 'first' ? Math.sqrt(repetitions) : repetitions);
};

/** In proportion to strength over load. */
export const repetitionsToFailure = (strength: number, loadKg: number): number =>
  (figures.repetitionsToFailure * strength * startDose.loadKg) / loadKg;

/** What the work gives the muscle: 1 for three sets with two repetitions in reserve. */
export const stimulusOf = ({ loadKg, sets }: WorkDone, strength: number): number => {
  if (sets.length === 0) return 0;
  const reserve = repetitionsToFailure(strength, loadKg) - total(sets) / sets.length;
  const width = figures.noStimulusReserve - figures.fullStimulusReserve;
  const share = Math.max(figures.leastStimulus, Math.min(1, (figures.noStimulusReserve - reserve) / width));
  return Math.min(figures.mostStimulus, share * Math.sqrt(sets.length / startDose.sets));
};

/** The work of a dose as far as strength carries it. */
export const workOf = (dose: LowLoadDose, strength: number): WorkDone => {
  const most = Math.floor(repetitionsToFailure(strength, dose.loadKg));
  const repetitions = Math.min(dose.repetitions.low, most);
  return { loadKg: dose.loadKg, sets: Array<number>(dose.sets).fill(repetitions) };
};
