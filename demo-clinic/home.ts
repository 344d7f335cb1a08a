/** Things people of the stories have at home beside an ordinary household. */
import { householdEquipment } from '#core/exercises/equipment.ts';

export const atHome = (...more: readonly string[]): readonly string[] => [...householdEquipment, ...more];

/** Loads from one figure to another in equal steps, kg, such as a cuff with small inserts. */
export const loads = (from: number, to: number, step: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, place) =>
    Number((from + place * step).toFixed(3)),
  );
