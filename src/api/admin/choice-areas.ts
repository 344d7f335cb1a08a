/** Every number a clinic may set, by what it is about. */
import { type ChoiceValues, type ClinicChoice, checkChoices, defaultsOf } from '#core/clinic-choice.ts';
import { engineChoices } from '#core/engine/choices.ts';
import { nutritionChoices } from '#core/nutrition/choices.ts';
import { occlusionChoices } from '#core/occlusion/choices.ts';
import type { Refusal } from '#core/outcome.ts';
import { programmeChoices } from '#core/programme/choices.ts';
import { recordKeepingChoices } from '#core/record-keeping/choices.ts';
import { reviewChoices } from '#core/review/choices.ts';
import { screeningChoices } from '#core/screening/choices.ts';
import { strengthChoices } from '#core/strength/choices.ts';
import { variationChoices } from '#core/variation/choices.ts';
import { worklistChoices } from '#core/worklist/choices.ts';

export interface ChoiceArea {
  readonly id: string;
  readonly title: string;
  readonly choices: readonly ClinicChoice[];
}

export const choiceAreas: readonly ChoiceArea[] = [
  { id: 'engine', title: 'Decisions', choices: engineChoices },
  { id: 'strength', title: 'Low load', choices: strengthChoices },
  { id: 'variation', title: 'Variations', choices: variationChoices },
  { id: 'occlusion', title: 'Occlusion', choices: occlusionChoices },
  { id: 'screening', title: 'Screening', choices: screeningChoices },
  { id: 'nutrition', title: 'Nutrition', choices: nutritionChoices },
  { id: 'programme', title: 'The patient’s day and week', choices: programmeChoices },
  { id: 'worklist', title: 'Worklist', choices: worklistChoices },
  { id: 'review', title: 'Review', choices: reviewChoices },
  { id: 'record-keeping', title: 'Records and access', choices: recordKeepingChoices },
];

/** One choice may serve two areas and then stands in both lists. */
const every: readonly ClinicChoice[] = [
  ...new Map(choiceAreas.flatMap((area) => area.choices).map((choice) => [choice.id, choice])).values(),
];

export const effectiveChoices = (own: ChoiceValues): ChoiceValues => ({ ...defaultsOf(every), ...own });

export const refusedChoices = (values: ChoiceValues): readonly Refusal[] =>
  checkChoices(every, effectiveChoices(values)).map((refusal) =>
    refusal.code === 'unknown-field'
      ? { ...refusal, field: 'input.values', reason: 'One of these is no clinic choice of this release.' }
      : { ...refusal, field: `input.${refusal.field}` },
  );

/** What differs from the defaults: a default that is mended later then reaches a clinic that never moved it. */
export const ownChoices = (values: ChoiceValues): ChoiceValues => {
  const defaults = defaultsOf(every);
  return Object.fromEntries(Object.entries(values).filter(([id, value]) => value !== defaults[id]));
};
