/** What is kept of a run of the trial, to be shown without running it again. Written by `npm run simulate -- --keep`. */
import type { TrialRow } from '../trial/trial.ts';

export type KeptRow = readonly [
  arm: string,
  /** A type of people, or "all" for the mean of the types. */
  type: string,
  strengthPercent: number,
  badDays: number,
  loadCausedBadDays: number,
  clinicianActions: number,
  /** The last dose as a share of the first. */
  finalDose: number,
];

export interface KeptRun {
  readonly seed: number;
  /** Of each type. */
  readonly people: number;
  readonly weeks: number;
  /** Civil day on which it was run. */
  readonly ranOn: string;
}

const rounded = (value: number): number => Math.round(value * 100) / 100;

export const keptRowOf = ({ arm, type, outcomes }: TrialRow): KeptRow => [
  arm,
  type,
  rounded(outcomes.strengthPercent),
  rounded(outcomes.badDays),
  rounded(outcomes.loadCausedBadDays),
  rounded(outcomes.clinicianActions),
  rounded(outcomes.finalDose),
];
