/** Strength: what a session gives, and how many repetitions a load allows. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { muscle } from './figures.ts';

export interface SessionWork {
  readonly loadKg: number;
  /** Repetitions of each set. */
  readonly sets: readonly number[];
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Repetitions × load of a dose taken to the top of its band. */
export const volumeOf = ({ sets, repetitions, loadKg }: LowLoadDose): number =>
  sets * repetitions.high * loadKg;

/** 1 = as much as any session can give. `share` = volume against the first dose's, load against strength. */
const stimulusOf = (share: number): number => share / (share + muscle.halfVolume);

export interface Muscle {
  readonly strength: () => number;
  readonly stimulus: (work: SessionWork) => number;
  readonly repetitionsToFailure: (loadKg: number) => number;
  readonly train: (work: SessionWork) => void;
  readonly night: () => void;
}

export const newMuscle = (first: LowLoadDose, trainability: number, firstReserve: number): Muscle => {
  let strength = 1;
  const oneRepMaxKg = first.loadKg * (1 + (first.repetitions.high + firstReserve) / muscle.epley);
  const stimulus = ({ loadKg, sets }: SessionWork): number =>
    stimulusOf((sum(sets) * loadKg) / strength / volumeOf(first));
  return {
    strength: () => strength,
    stimulus,
    repetitionsToFailure: (loadKg) => Math.max(0, muscle.epley * ((oneRepMaxKg * strength) / loadKg - 1)),
    train: (work) => {
      const room = Math.max(0, 1 - (strength - 1) / muscle.ceiling);
      strength += muscle.gain * trainability * stimulus(work) * room;
    },
    night: () => {
      strength -= muscle.fades * (strength - 1 > 0 ? 1 : 0);
    },
  };
};
