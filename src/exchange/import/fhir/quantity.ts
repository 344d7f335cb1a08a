/** A quantity of FHIR in the unit the record keeps, by the unit codes of UCUM alone: a unit without its code is not guessed. */
import type { Quantity } from 'fhir/r4';
import { systems } from '../../fhir/names.ts';

const kilograms: Readonly<Record<string, number>> = { kg: 1, g: 0.001, '[lb_av]': 0.45359237 };
const centimetres: Readonly<Record<string, number>> = { cm: 1, m: 100, mm: 0.1, '[in_i]': 2.54 };
const pressure: Readonly<Record<string, number>> = { 'mm[Hg]': 1 };
const scores: Readonly<Record<string, number>> = { '{score}': 1, '1': 1 };

export const units = { kilograms, centimetres, pressure, scores } as const;

/** Twelve digits: what a product in binary adds behind them was not measured. */
export const figureOf = (
  quantity: Quantity | undefined,
  known: Readonly<Record<string, number>>,
): number | null => {
  if (quantity?.value === undefined || quantity.comparator !== undefined) return null;
  if (quantity.system !== systems.ucum) return null;
  const factor = known[quantity.code ?? ''];
  return factor === undefined ? null : Number((quantity.value * factor).toPrecision(12));
};
