/**
 * A figure typed with a unit of its own, such as "154 lb" or "5 ft 4 in", as the field's unit has it. Only
 * units written out are taken: a bare number is always in the unit beside the field.
 */
import { type ConvertibleUnit, convertibleUnits, convertUnit } from '#core/units/unit-conversion.ts';
import { readNumber } from '#ui/design-system/read-number.ts';

const names: Readonly<Record<string, ConvertibleUnit>> = {
  kg: 'kg',
  g: 'g',
  lb: '[lb_av]',
  lbs: '[lb_av]',
  n: 'N',
  kgf: 'kgf',
  lbf: '[lbf_av]',
  m: 'm',
  cm: 'cm',
  in: '[in_i]',
  ft: '[ft_i]',
};

/** Kilograms and newtons per stone are not tabled: a stone is fourteen pounds by definition. */
const poundsPerStone = 14;

const isConvertible = (unit: string): unit is ConvertibleUnit =>
  (convertibleUnits as readonly string[]).includes(unit);

const partIn = (figure: string, name: string, to: ConvertibleUnit): number => {
  const value = readNumber(figure);
  if (value === null || Number.isNaN(value)) return Number.NaN;
  const isStone = name === 'st';
  const from = isStone ? '[lb_av]' : names[name];
  if (!from) return Number.NaN;
  const outcome = convertUnit({ value: isStone ? value * poundsPerStone : value, from, to });
  return outcome.ok ? outcome.result.value : Number.NaN;
};

/** "5 ft 4 in" is a third of it; what is longer is no figure, and reading it would hold everybody up. */
const longestFigure = 40;

/** NaN when nothing of it can be read; parts such as feet and inches add up. */
export const readWithUnit = (typed: string, unit: string): number => {
  if (!isConvertible(unit) || typed.length > longestFigure) return Number.NaN;
  const text = typed.trim().toLowerCase();
  const parts = [...text.matchAll(/(\d+(?:[.,]\d+)?)\s*([a-z]+)/g)];
  const whole = parts.map(([part]) => part).join(' ');
  if (parts.length === 0 || whole.replace(/\s/g, '') !== text.replace(/\s/g, '')) return Number.NaN;
  return parts.reduce((sum, [, figure = '', name = '']) => sum + partIn(figure, name, unit), 0);
};

/** What a figure with a unit was read as, for saying so; null for a bare number or nothing readable. */
export const readAs = (typed: string, unit: string): number | null => {
  const bare = readNumber(typed);
  if (bare === null || !Number.isNaN(bare)) return null;
  const value = readWithUnit(typed, unit);
  return Number.isNaN(value) ? null : value;
};
