/**
 * Every number of the decision rules that no source fixes. Each needs a physiotherapist's sign-off.
 * The values in force are stored with each decision, so that an old decision replays to the same answer.
 */
import type { ChoiceValues, ClinicChoice } from '../clinic-choice.ts';
import { doseChoices } from './dose-choices.ts';
import { ruleChoices } from './rule-choices.ts';

export const engineChoices = [...ruleChoices, ...doseChoices] as const satisfies readonly ClinicChoice[];

export type EngineChoiceId = (typeof engineChoices)[number]['id'];
export type EngineChoiceValues = Readonly<Record<EngineChoiceId, number>>;

export const engineDefaults = Object.fromEntries(
  engineChoices.map((choice) => [choice.id, choice.default]),
) as EngineChoiceValues;

const completed = new WeakMap<ChoiceValues, EngineChoiceValues>();

/**
 * The stored values with any choice added since then at its default, so that a decision stored
 * under an earlier list still replays.
 */
export const engineChoiceValues = (values?: ChoiceValues): EngineChoiceValues => {
  if (!values) return engineDefaults;
  let whole = completed.get(values);
  if (!whole) {
    whole = { ...engineDefaults, ...values };
    completed.set(values, whole);
  }
  return whole;
};
