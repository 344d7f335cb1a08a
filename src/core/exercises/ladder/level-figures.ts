/** What every level is made of: the empty figures and the two usual measures. */
import type { Level, LevelMeasure } from '../exercise.ts';
import type { Setting } from '../setting.ts';

export type Figures = Omit<Level, 'exerciseId'>;
export type Of<K extends Setting['kind']> = Extract<Setting, { kind: K }>;

export const nothing: Figures = {
  shareOfBodyMass: null,
  effectiveLoadKg: null,
  effectiveLoadAbout: null,
  moments: [],
  measuredShare: null,
  modelError: null,
  measure: null,
  remark: 'No figure can be computed from body measures.',
};

export const noMeasurement = 'No measurement found to compare the model with.';
export const noMoments = 'Moments at single joints are not modelled.';

export const loadMeasure = (value: number, about: string): LevelMeasure => ({
  kind: 'effective-load',
  value,
  unit: 'kg',
  about,
});
export const momentMeasure = (value: number, about: string): LevelMeasure => ({
  kind: 'joint-moment',
  value,
  unit: 'N.m',
  about,
});
