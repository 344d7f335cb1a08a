/**
 * The equations turned round: repetitions expected at a percentage of the maximum. Below 60 % every
 * one is outside the sets it is shown for, so the answer there is flagged, and a formula that cannot
 * reach the percentage is refused. The numbers differ many-fold at 30 %; no dose is taken from them.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import { equationCitations, equations, isInRange } from './equations/all.ts';
import type { EquationId } from './equations/equation.ts';
import { equationField } from './fields.ts';

const personVaries: Note = {
  code: 'people-differ',
  text: 'People differ widely at one percentage, and lifts differ from one another: the leg press allows more repetitions than the bench press over the whole range. The largest table (Nuzzo 2024, 952 tests) could not be read here, so it is not used.',
};

export const repetitionsAtPercent = (input: {
  readonly equation: EquationId;
  readonly percent: number;
}): Outcome<{ readonly repetitions: number; readonly withinShownRange: boolean }> => {
  const equation = equations[input.equation];
  const repetitions = equation.repetitionsAt(input.percent);
  if (repetitions === null || repetitions < 0) {
    const why =
      equation.floorPercent !== null && input.percent <= equation.floorPercent
        ? `however long the set, it gives no less than ${equation.floorPercent.toFixed(1)} %`
        : 'it would give less than no repetition';
    const reason = `${equation.title} cannot answer for ${input.percent} %: ${why}. Choose another equation, or test.`;
    return refuse('percent', 'outside-validity', reason);
  }
  const withinShownRange = isInRange(equation, repetitions);
  const flag: Note = {
    code: 'outside-validity',
    text: `${equation.title} is shown for ${equation.fromRepetitions}–${equation.toRepetitions} repetitions; this answer is the formula carried on outside them and not a prediction.`,
  };
  return answer({ repetitions, withinShownRange }, withinShownRange ? [personVaries] : [flag, personVaries]);
};

export const repetitionsAtPercentRow = calculation({
  id: 'repetitions-at-percent',
  title: 'Repetitions expected at a percentage, by equation',
  area: 'strength',
  input: [equationField, { name: 'percent', kind: 'number', unit: '%', min: 10, max: 100 }],
  result: [
    { name: 'repetitions', unit: '1' },
    { name: 'withinShownRange', unit: '', about: 'False where the formula is carried on beyond its range.' },
  ],
  citations: [
    ...equationCitations,
    {
      source: 'nuzzo-2024',
      locator: 'abstract; the numeric table was not seen',
      mark: 'seen',
      remark: 'Leg press above bench press throughout; sex, age and training status matter little.',
    },
  ],
  calculate: repetitionsAtPercent,
  example: { equation: 'epley', percent: 75 },
});
