/** Numbers of the symptom charts that no source fixes for a person's own diary. A clinic may move them inside the bounds. */
import { type ClinicSetting, defaultsOf, type SettingValues } from '../sources/clinic-setting.ts';

const seriesSettings: readonly ClinicSetting[] = [
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
];

export const seriesDefaults: SettingValues = defaultsOf(seriesSettings);

/** A choice by name; a missing one is a programmer error, since values are checked before they are stored. */
export const seriesSettingOf = (values: SettingValues, id: string): number => {
  const value = values[id] ?? seriesDefaults[id];
  if (value === undefined) throw new Error(`No series choice named ${id}`);
  return value;
};
