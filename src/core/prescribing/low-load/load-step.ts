/**
 * Size of a step in load against the published window of 2–10 %. A step above it is named, and
 * repetitions are added first. For a limb lifted with a cuff the joint moment is what steps, not the
 * cuff: there judge the moment. Says nothing of whether the joint allows the step.
 */

import { loadField } from '#core/assessment/strength/fields.ts';
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { milligrams } from '#core/units/units.ts';

const smallestStepPercent = 2;
export const largestStepPercent = 10;

type StepVerdict = 'lighter' | 'same' | 'under-window' | 'within-window' | 'over-window';

export interface LoadStep {
  readonly stepPercent: number;
  readonly verdict: StepVerdict;
}

export const stepCitations: readonly Citation[] = [
  {
    source: 'acsm-2009',
    locator: 'abstract',
    mark: 'seen',
    remark:
      'Raise the load by 2–10 % when one or two repetitions over the target can be done. Healthy adults; says nothing of a painful joint.',
  },
];

/** Compared as whole milligrams: in doubles 1 → 1.1 kg would be more than 10 %. */
const verdictOf = (fromMg: number, toMg: number): StepVerdict => {
  const change = (toMg - fromMg) * 100;
  if (change < 0) return 'lighter';
  if (change === 0) return 'same';
  if (change < smallestStepPercent * fromMg) return 'under-window';
  return change <= largestStepPercent * fromMg ? 'within-window' : 'over-window';
};

const measureStep = (input: { readonly fromKg: number; readonly toKg: number }): LoadStep => ({
  stepPercent: ((input.toKg - input.fromKg) / input.fromKg) * 100,
  verdict: verdictOf(milligrams(input.fromKg), milligrams(input.toKg)),
});

const addRepetitionsFirst: Note = {
  code: 'repetitions-first',
  text: 'The step is over 10 %: add repetitions at the present load first, or find a smaller step.',
};

const judgeTheMoment: Note = {
  code: 'judge-the-moment',
  text: 'With a cuff on a limb the limb weighs too: judge the step on the joint moment, not on the cuff.',
};

export const loadStep = (input: { readonly fromKg: number; readonly toKg: number }): Outcome<LoadStep> => {
  const step = measureStep(input);
  const notes = step.verdict === 'over-window' ? [addRepetitionsFirst, judgeTheMoment] : [judgeTheMoment];
  return answer(step, notes);
};

/** The next heavier load owned and how large a step it is; null when nothing heavier is owned. */
export const nextOwnedLoad = (
  loadKg: number,
  availableKg: readonly number[],
): (LoadStep & { readonly loadKg: number }) | null => {
  const heavier = availableKg.filter((owned) => milligrams(owned) > milligrams(loadKg));
  // From no load at all a step has no percentage.
  if (heavier.length === 0 || milligrams(loadKg) === 0) return null;
  const next = Math.min(...heavier);
  return { loadKg: next, ...measureStep({ fromKg: loadKg, toKg: next }) };
};

export const loadStepRow = calculation({
  id: 'load-step',
  title: 'Step in load against the 2–10 % window',
  area: 'strength',
  input: [loadField('fromKg', 'Present load.'), loadField('toKg', 'Load stepped to.')],
  result: [
    { name: 'stepPercent', unit: '%' },
    { name: 'verdict', unit: '', about: 'lighter, same, under-window, within-window or over-window' },
  ],
  citations: stepCitations,
  calculate: loadStep,
  example: { fromKg: 4, toKg: 5 },
});
