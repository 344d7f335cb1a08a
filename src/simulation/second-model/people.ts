/** Nine types of people: the usual one and what sets each of the others apart. Which they are is invented. */
import { conduct, flares, tissue } from './figures.ts';

export interface SecondType {
  readonly id: string;
  readonly usualPain: readonly [number, number];
  /** Multiples of the usual scatter and of the usual days until soreness has gone. */
  readonly scatter: number;
  readonly stays: number;
  readonly capacity: number;
  readonly flaresPerWeek: number;
  readonly inflammatory: boolean;
  readonly morningsMissing: number;
  readonly sessionsMissed: number;
  readonly overdoes: number;
  /** Points a week by which the usual pain itself rises. */
  readonly creep: number;
}

const steady: SecondType = {
  id: 'steady',
  usualPain: [2, 4],
  scatter: 1,
  stays: tissue.stays,
  capacity: tissue.capacity,
  flaresPerWeek: flares.perWeek,
  inflammatory: false,
  morningsMissing: conduct.morningsMissing,
  sessionsMissed: conduct.sessionsMissed,
  overdoes: conduct.overdoes,
  creep: 0,
};

export const secondTypes: readonly SecondType[] = [
  steady,
  { ...steady, id: 'scatter', scatter: 1.6 },
  { ...steady, id: 'high', usualPain: [5, 7], capacity: 1.3 },
  { ...steady, id: 'flaring', flaresPerWeek: 3.5 * flares.perWeek },
  { ...steady, id: 'inflammatory', flaresPerWeek: flares.inflammatoryPerWeek, inflammatory: true },
  { ...steady, id: 'fragile', capacity: 1.15, stays: 0.7 },
  {
    ...steady,
    id: 'forgetful',
    morningsMissing: conduct.morningsMissingForgetful,
    sessionsMissed: conduct.sessionsMissed + conduct.sessionsMissedForgetful,
  },
  { ...steady, id: 'eager', overdoes: conduct.overdoesEager },
  { ...steady, id: 'creeping', creep: 0.15 },
];
