/** Numbers of the symptom charts that no source fixes for a person's own diary. A clinic may move them inside the bounds. */
import { type ChoiceValues, type ClinicChoice, defaultsOf } from '../clinic-choice.ts';

export const seriesChoices: readonly ClinicChoice[] = [
  {
    id: 'baseline-values-min',
    title: 'Fewest recorded values for a baseline',
    unit: '{value}',
    min: 10,
    max: 60,
    whole: true,
    default: 14,
    why: 'With 14 days false alarms are already frequent; fewer make them more so.',
  },
  {
    id: 'baseline-deviation-floor',
    title: 'Smallest deviation believed in a baseline',
    unit: '{score}',
    min: 0.25,
    max: 2,
    default: 0.5,
    why: 'About the error of one pain rating (0.48). A steadier baseline would alarm at the first whole step.',
  },
  {
    id: 'signal-deviation-floor',
    title: 'Smallest deviation used for the symptom signal',
    unit: '{score}',
    min: 0.5,
    max: 2,
    default: 1,
    why: 'Diaries are whole numbers and neighbouring days resemble each other; a smaller floor alarms more often.',
  },
  {
    id: 'signal-deviation-factor',
    title: 'Factor on the baseline deviation for the symptom signal',
    unit: '1',
    min: 1,
    max: 3,
    default: 1.5,
    why: 'Makes room for day-to-day correlation and for a deviation estimated from few days.',
  },
  {
    id: 'signal-allowance',
    title: 'Allowance of the symptom signal, in deviations',
    unit: '1',
    min: 0.25,
    max: 1,
    default: 0.5,
    why: 'One half is tuned to a rise of one deviation.',
  },
  {
    id: 'signal-decision-interval',
    title: 'Decision interval of the symptom signal, in deviations',
    unit: '1',
    min: 4,
    max: 8,
    default: 5,
    why: 'Four or five go with an allowance of one half; four alarms falsely about three times as often.',
  },
];

export const seriesDefaults: ChoiceValues = defaultsOf(seriesChoices);

/** A choice by name; a missing one is a programmer error, since values are checked before they are stored. */
export const seriesChoiceOf = (values: ChoiceValues, id: string): number => {
  const value = values[id] ?? seriesDefaults[id];
  if (value === undefined) throw new Error(`No series choice named ${id}`);
  return value;
};
