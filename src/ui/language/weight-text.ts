/** Weights in the unit of the person's choice. They are stored in kilograms; the conversion is exact. */
import { gramsOf, isInGrams, kilogramsFromPounds, poundsFromKilograms } from '#core/units/units.ts';
import { t } from '#ui/language/words.ts';
import { numberText } from './text-of-time.ts';

export type WeightUnit = 'kg' | 'lb';

let unit: WeightUnit = 'kg';

/** For all that is shown from now on in this browser. */
export const weighIn = (chosen: WeightUnit): void => {
  unit = chosen;
};

export const weightUnit = (): WeightUnit => unit;

/** The figure alone, at most two places; what was typed comes back as it was typed. */
export const weightFigure = (loadKg: number): string =>
  String(Number((unit === 'kg' ? loadKg : poundsFromKilograms(loadKg)).toFixed(2)));

/** Small weights of the metric system; whoever thinks in pounds reads parts of one. */
export const isWeighedInGrams = (loadKg: number): boolean => unit === 'kg' && isInGrams(loadKg);

/** "4 kg", "250 g", "8.82 lb". */
export const weightText = (loadKg: number): string =>
  isWeighedInGrams(loadKg)
    ? t('weight.g', { number: numberText(gramsOf(loadKg)) })
    : t(`weight.${unit}`, { number: numberText(Number(weightFigure(loadKg))) });

/** What was typed in the unit shown, in kilograms. */
export const kilogramsOf = (typed: number): number => (unit === 'kg' ? typed : kilogramsFromPounds(typed));
