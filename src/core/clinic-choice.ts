/**
 * A number no source fixes: named, bounded, editable by the clinic, stored with every decision it
 * helped to make. Lists of choices stand beside the rules that use them (engine, occlusion, …).
 */
import type { Refusal } from './outcome.ts';

export interface ClinicChoice {
  /** Kebab-case, fixed once published; the key under which its value is stored. */
  readonly id: string;
  readonly title: string;
  /** UCUM code, '1' for a pure number. */
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
  readonly default: number;
  /** Why this default, and what happens when it is moved. */
  readonly why: string;
}

export type ChoiceValues = Readonly<Record<string, number>>;

export const defaultsOf = (choices: readonly ClinicChoice[]): ChoiceValues =>
  Object.fromEntries(choices.map((choice) => [choice.id, choice.default]));

/** Every value out of bounds, unknown or missing, with how to put it right. Empty when all is well. */
export const checkChoices = (choices: readonly ClinicChoice[], values: ChoiceValues): readonly Refusal[] => {
  const known = new Map(choices.map((choice) => [choice.id, choice]));
  const refusals: Refusal[] = [];
  for (const id of Object.keys(values)) {
    if (!known.has(id)) {
      refusals.push({
        field: `choices.${id}`,
        code: 'unknown-field',
        reason: `There is no clinic choice named ${id}.`,
      });
    }
  }
  for (const choice of choices) {
    const value = values[choice.id];
    const field = `choices.${choice.id}`;
    if (value === undefined || Number.isNaN(value)) {
      refusals.push({ field, code: 'missing', reason: `Give a value for "${choice.title}".` });
    } else if (choice.whole && !Number.isInteger(value)) {
      refusals.push({ field, code: 'wrong-type', reason: `"${choice.title}" is a whole number.` });
    } else if (value < choice.min) {
      refusals.push({ field, code: 'too-low', reason: `"${choice.title}" is at least ${choice.min}.` });
    } else if (value > choice.max) {
      refusals.push({ field, code: 'too-high', reason: `"${choice.title}" is at most ${choice.max}.` });
    }
  }
  return refusals;
};
