/** Strength: what a session gives, and how many repetitions a load allows. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { muscle } from './figures.ts';

export interface SessionWork {
  readonly loadKg: number;
  /** Repetitions of each set. */
  readonly sets: readonly number[];
}

/** Repetitions × load of a dose taken to the top of its band. */
export const volumeOf = ({ sets, repetitions, loadKg }: LowLoadDose): number =>
  sets * repetitions.high * loadKg;

/** 1 = as much as any session can give. `share` = effort against the first dose's. */
const stimulusOf = (share: number): number => share / (share + muscle.halfEffort);

export interface Muscle {
  readonly strength: () => number;
  readonly stimulus: (work: SessionWork) => number;
  readonly repetitionsToFailure: (loadKg: number) => number;
  readonly train: (work: SessionWork) => void;
  readonly night: () => void;
}

const repetitionsAt = (oneRepMaxKg: number, loadKg: number): number =>
  Math.max(0, muscle.epley * (oneRepMaxKg / loadKg - 1));

/** How near to failure each set goes, times how near its load is to the most that can be lifted. */
const effortOf = ({ loadKg, sets }: SessionWork, oneRepMaxKg: number): number => {
  const able = Math.max(1, repetitionsAt(oneRepMaxKg, loadKg));
  const load = Math.min(1, loadKg / oneRepMaxKg);
  return sets.reduce((sum, repetitions) => sum + Math.min(1, repetitions / able) * load, 0);
};

export const newMuscle = (first: LowLoadDose, trainability: number, firstReserve: number): Muscle => {
  let strength = 1;
  const { loadKg, sets, repetitions } = first;
  const oneRepMaxKg = loadKg * (1 + (repetitions.high + firstReserve) / muscle.epley);
  const firstWork = { loadKg, sets: Array.from({ length: sets }, () => repetitions.high) };
  const firstEffort = effortOf(firstWork, oneRepMaxKg);
  const stimulus = (work: SessionWork): number =>
    stimulusOf(effortOf(work, oneRepMaxKg * strength) / firstEffort);
  return {
    strength: () => strength,
    stimulus,
    repetitionsToFailure: (kg) => repetitionsAt(oneRepMaxKg * strength, kg),
    train: (work) => {
      const room = Math.max(0, 1 - (strength - 1) / muscle.ceiling);
      strength += muscle.gain * trainability * stimulus(work) * room;
    },
    night: () => {
      if (strength > 1) strength = Math.max(1, strength - muscle.fades);
    },
  };
};
