/** Nutrition numbers that no source fixes. A clinic may move them inside the bounds. */
import { type ClinicSetting, defaultsOf, type SettingValues } from '../sources/clinic-setting.ts';

export const nutritionSettings: readonly ClinicSetting[] = [
  {
    id: 'lean-mass-bmi-min',
    title: 'Lowest body-mass index at which a lean-mass formula is used',
    unit: 'kg/m2',
    min: 12,
    max: 20,
    default: 15,
    why: 'The formulas were fitted to few very thin people, and some then give more lean mass than body mass.',
  },
  {
    id: 'lean-mass-bmi-max',
    title: 'Highest body-mass index at which a lean-mass formula is used',
    unit: 'kg/m2',
    min: 35,
    max: 70,
    default: 50,
    why: 'One formula turns downward above 43 (men) or 36 (women); raising this lets more of that error through.',
  },
  {
    id: 'lean-mass-share-min',
    title: 'Lowest share of body mass believed as lean mass',
    unit: '1',
    min: 0.2,
    max: 0.5,
    default: 0.3,
    why: 'A smaller share is taken for a wrong entry. Lowering it accepts more of them.',
  },
  {
    id: 'lean-protein-low',
    title: 'Protein per kg lean mass, low end',
    unit: 'g/kg/d',
    min: 0.8,
    max: 1.5,
    default: 1,
    why: 'Common practice without a source. At 1 g/kg lean mass many people fall under 0.8 g/kg body mass.',
  },
  {
    id: 'lean-protein-high',
    title: 'Protein per kg lean mass, high end',
    unit: 'g/kg/d',
    min: 1.5,
    max: 3,
    default: 2.5,
    why: 'Common practice without a source; close to the published sports range in a person of average fatness.',
  },
  {
    id: 'energy-surplus-low',
    title: 'Energy surplus for building, low end',
    unit: 'kcal/d',
    min: 0,
    max: 150,
    default: 100,
    why: 'Common practice without a source; lower than both published ranges. Weight gain loads the joint.',
  },
  {
    id: 'energy-surplus-high',
    title: 'Energy surplus for building, high end',
    unit: 'kcal/d',
    min: 150,
    max: 500,
    default: 200,
    why: 'Common practice without a source; lower than both published ranges. Weight gain loads the joint.',
  },
  {
    id: 'surplus-zero-from-bmi',
    title: 'Body-mass index from which a person with joint disease starts with no surplus',
    unit: 'kg/m2',
    min: 23,
    max: 35,
    default: 25,
    why: 'The usual overweight bound. Raising it offers a surplus to heavier people with painful joints.',
  },
];

export const nutritionDefaults: SettingValues = defaultsOf(nutritionSettings);

/** A choice by name; a missing one is a programmer error, since values are checked before they are stored. */
export const settingOf = (values: SettingValues, id: string): number => {
  const value = values[id] ?? nutritionDefaults[id];
  if (value === undefined) throw new Error(`No nutrition choice named ${id}`);
  return value;
};
