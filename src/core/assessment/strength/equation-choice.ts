/**
 * Which equation to lean on. None was made for a person with a painful joint; the choice is by how
 * near the group it was fitted in comes, and, where age is unknown, to the lighter load.
 * A choice of this clinic tool, not of any source; the spread of all equations stays beside it.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import { strengthSettings } from '#core/prescribing/low-load/settings.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import { equationCitations, equations, isInRange } from './equations/all.ts';
import type { EquationId } from './equations/equation.ts';
import { accuracyCitations } from './estimate-citations.ts';
import { repetitionsField } from './fields.ts';
import { estimateNotMeasured, noEstimateFromLongSets } from './low-load-tests.ts';

export interface EquationChoice {
  readonly equation: EquationId;
  readonly reason: string;
}

const nearestToOlder =
  'Fitted in trained women of 57 ± 3 years over 3–20 repetitions, the nearest published group to an older patient, and the lowest of the eight wherever it is shown, so the load errs to the light side.';

/** In order of preference; the first one that holds for the set is taken. */
const preferences: Record<'older' | 'younger', readonly EquationChoice[]> = {
  older: [
    { equation: 'kemmler', reason: nearestToOlder },
    {
      equation: 'brzycki',
      reason: 'Returns the load itself at one repetition; the equation for older adults starts at three.',
    },
  ],
  younger: [
    {
      equation: 'brzycki',
      reason: 'Holds for 1–10 repetitions, with the error of the group of six equations known.',
    },
    { equation: 'mayhew', reason: 'Shown up to 15 repetitions; no error was found for it alone.' },
    {
      equation: 'kemmler',
      reason: 'The only one shown beyond 15 repetitions; it was fitted in older trained women.',
    },
  ],
};

export const chooseEquation = (
  input: { readonly repetitions: number; readonly ageYears?: number },
  choices: SettingValues,
): Outcome<EquationChoice> => {
  const isYounger =
    input.ageYears !== undefined && input.ageYears < (choices['older-adult-years'] ?? Infinity);
  const list = preferences[isYounger ? 'younger' : 'older'];
  const chosen = list.find(({ equation }) => isInRange(equations[equation], input.repetitions));
  if (!chosen) return refuse('repetitions', 'outside-validity', noEstimateFromLongSets.text);
  const notes = [estimateNotMeasured];
  if (input.ageYears === undefined) {
    notes.push({
      code: 'age-unknown',
      text: 'Age was not given, so the choice for an older adult is used: it gives the lighter load.',
    });
  }
  return answer(chosen, notes);
};

export const equationChoiceRow = calculation({
  id: 'one-rep-max-equation-choice',
  title: 'Which equation, and why',
  area: 'strength',
  input: [
    repetitionsField,
    { name: 'ageYears', kind: 'integer', unit: 'a', min: 18, max: 120, optional: true },
  ],
  result: units({ equation: '', reason: '' }),
  citations: [...equationCitations, ...accuracyCitations],
  calculate: (input) => chooseEquation(input, defaultsOf(strengthSettings)),
  example: { repetitions: 8, ageYears: 68 },
});
