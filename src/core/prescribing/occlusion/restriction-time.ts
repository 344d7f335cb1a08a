/**
 * Time under tension and time under restriction of one exercise.
 *
 * A set lasts its repetitions times the seconds of one repetition. A continuous cuff also holds
 * through the rests between sets; an intermittent one is down in them. For a set to failure, use
 * the repetitions that were done. Fitting and inflating before the first set is not counted.
 */
import { calculation } from '#core/calculations/calculation.ts';
import type { Limb } from '#core/exercises/joints.ts';
import { answer, type Note } from '#core/outcome.ts';
import { exerciseCapSeconds, sessionCapSeconds, usualExerciseSeconds } from './limits.ts';

export interface RestrictionInput {
  readonly repetitions: readonly number[];
  readonly secondsPerRepetition: number;
  readonly restSeconds: number;
  readonly inflation: 'continuous' | 'intermittent';
}

export const restrictionSeconds = (
  input: RestrictionInput,
): { readonly underTensionSeconds: number; readonly restrictedSeconds: number } => {
  const total = input.repetitions.reduce((sum, count) => sum + count, 0);
  const underTensionSeconds = total * input.secondsPerRepetition;
  const rests = Math.max(0, input.repetitions.length - 1) * input.restSeconds;
  return {
    underTensionSeconds,
    restrictedSeconds: input.inflation === 'continuous' ? underTensionSeconds + rests : underTensionSeconds,
  };
};

const withinCaps = (restrictedSeconds: number, limb: Limb) => ({
  capSeconds: exerciseCapSeconds.value,
  withinExerciseCap: restrictedSeconds <= exerciseCapSeconds.value,
  withinSessionCap: restrictedSeconds < sessionCapSeconds[limb].value,
});

const notesFor = (restrictedSeconds: number): readonly Note[] =>
  restrictedSeconds < usualExerciseSeconds.value
    ? [{ code: 'under-usual', text: 'Shorter than the described 5-10 min per exercise.' }]
    : [];

export const restrictionTime = calculation({
  id: 'restriction-time',
  title: 'Time under restriction of one exercise',
  area: 'occlusion',
  input: [
    {
      name: 'repetitions',
      kind: 'list',
      minItems: 1,
      maxItems: 20,
      of: { name: 'set', kind: 'integer', unit: '{rep}', min: 1, max: 200 },
      about: 'Repetitions of each set in order.',
    },
    { name: 'secondsPerRepetition', kind: 'number', unit: 's', min: 0, exclusiveMin: true, max: 20 },
    { name: 'restSeconds', kind: 'number', unit: 's', min: 0, max: 600 },
    { name: 'inflation', kind: 'enum', values: ['continuous', 'intermittent'] },
    { name: 'limb', kind: 'enum', values: ['arm', 'leg'] },
  ],
  result: [
    { name: 'underTensionSeconds', unit: 's' },
    { name: 'restrictedSeconds', unit: 's' },
    { name: 'capSeconds', unit: 's', about: 'cap of one exercise' },
    { name: 'withinExerciseCap', unit: '' },
    { name: 'withinSessionCap', unit: '', about: 'this exercise alone, against the cap of a whole session' },
  ],
  citations: [
    { source: 'cartilage-protocol-2022', locator: 'table 1: published totals', mark: 'seen' },
    exerciseCapSeconds.citation,
    sessionCapSeconds.leg.citation,
    sessionCapSeconds.arm.citation,
  ],
  calculate: ({ limb, ...input }) => {
    const time = restrictionSeconds(input);
    return answer({ ...time, ...withinCaps(time.restrictedSeconds, limb) }, notesFor(time.restrictedSeconds));
  },
  example: {
    repetitions: [30, 15, 15, 15],
    secondsPerRepetition: 5,
    restSeconds: 45,
    inflation: 'continuous',
    limb: 'leg',
  },
});
