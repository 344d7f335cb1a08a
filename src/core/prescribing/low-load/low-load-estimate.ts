/**
 * The maximum a low-load dose is taken from: a known one, or an estimate from a test by the chosen
 * equation with the spread of all that hold. A test no equation holds for gives none, and the dose
 * goes by effort alone.
 */

import { chooseEquation, type EquationChoice } from '#core/assessment/strength/equation-choice.ts';
import { equations, isInRange, outsideRange } from '#core/assessment/strength/equations/all.ts';
import type { EquationId } from '#core/assessment/strength/equations/equation.ts';
import { estimateNotMeasured, noEstimateFromLongSets } from '#core/assessment/strength/low-load-tests.ts';
import { oneRepMaxRange } from '#core/assessment/strength/one-rep-max-range.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { shown, type WorkingLine } from '../working-line.ts';
import type { LowLoadInput } from './low-load-input.ts';

export interface Estimate {
  /** Null when dosed by effort alone. */
  readonly oneRepMaxKg: number | null;
  readonly equation: EquationId | null;
  /** Spread of every equation that holds; null for a known maximum or none. */
  readonly spread: { readonly lowKg: number; readonly highKg: number } | null;
  readonly working: readonly WorkingLine[];
}

type Test = NonNullable<LowLoadInput['test']>;

const fromKnown = (oneRepMaxKg: number): Outcome<Estimate> =>
  answer(
    {
      oneRepMaxKg,
      equation: null,
      spread: null,
      working: [
        {
          label: 'Maximum',
          how: 'Given by the clinician.',
          value: oneRepMaxKg,
          unit: 'kg',
          source: 'clinician',
        },
      ],
    },
    [
      {
        code: 'known-maximum',
        text: 'The maximum was given, not computed here; how old it is was not checked.',
      },
    ],
  );

const byEffort = (test: Test): Outcome<Estimate> =>
  answer(
    {
      oneRepMaxKg: null,
      equation: null,
      spread: null,
      working: [
        {
          label: 'Maximum',
          how: `${test.repetitions} repetitions at ${shown(test.loadKg)} kg are outside every equation; dosed by effort alone.`,
          value: null,
          unit: 'kg',
          source: 'arithmetic',
        },
      ],
    },
    [noEstimateFromLongSets],
  );

const fromTest = (test: Test, setting: EquationChoice): Outcome<Estimate> => {
  const range = oneRepMaxRange(test);
  if (!range.ok) return range;
  const { lowKg, highKg } = range.result;
  const equation = equations[setting.equation];
  const oneRepMaxKg = test.loadKg * equation.factor(test.repetitions);
  const working: readonly WorkingLine[] = [
    {
      label: 'Maximum, estimated',
      how: `${equation.title}: ${equation.formula}, w = ${shown(test.loadKg)} kg, r = ${test.repetitions}. ${setting.reason}`,
      value: oneRepMaxKg,
      unit: 'kg',
      source: equation.citations[0]?.source ?? 'arithmetic',
    },
    {
      label: 'Spread between equations',
      how: `${shown(lowKg)} to ${shown(highKg)} kg over the equations that hold for this set.`,
      value: highKg - lowKg,
      unit: 'kg',
      source: 'arithmetic',
    },
  ];
  return answer({ oneRepMaxKg, equation: setting.equation, spread: { lowKg, highKg }, working }, [
    estimateNotMeasured,
  ]);
};

const withNotes = (outcome: Outcome<Estimate>, notes: readonly Note[]): Outcome<Estimate> =>
  outcome.ok ? answer(outcome.result, [...new Set([...outcome.notes, ...notes])]) : outcome;

export const estimateMaximum = (input: LowLoadInput, settings: SettingValues): Outcome<Estimate> => {
  const { test, knownOneRepMaxKg, equation, ageYears } = input;
  if (knownOneRepMaxKg !== undefined) return fromKnown(knownOneRepMaxKg);
  if (test === undefined) return refuse('test', 'missing', 'Give a repetitions-to-failure test.');
  if (equation !== undefined) {
    if (!isInRange(equations[equation], test.repetitions)) {
      const reason = `${outsideRange(equations[equation], test.repetitions)} Leave the equation open, or choose another.`;
      return refuse('equation', 'outside-validity', reason);
    }
    return fromTest(test, { equation, reason: 'Chosen by the clinician.' });
  }
  const setting = chooseEquation({ repetitions: test.repetitions, ageYears }, settings);
  return setting.ok ? withNotes(fromTest(test, setting.result), setting.notes) : byEffort(test);
};
