/** Whether a load is one of those that exist where it is wanted, and which of them are nearest where it is not. */
import { milligrams } from '#core/units/units.ts';

/** The loads next to it, lighter first; null where it is one of them. */
export const nearestOwnedKg = (loadKg: number, ownedKg: readonly number[]): readonly number[] | null => {
  const typed = milligrams(loadKg);
  if (ownedKg.some((kg) => milligrams(kg) === typed)) return null;
  const lighter = ownedKg.filter((kg) => milligrams(kg) < typed);
  const heavier = ownedKg.filter((kg) => milligrams(kg) > typed);
  return [
    ...(lighter.length > 0 ? [Math.max(...lighter)] : []),
    ...(heavier.length > 0 ? [Math.min(...heavier)] : []),
  ];
};

/** Said of a load that does not exist at home, or on a machine of the clinic; null where it does. */
export const notOwnedInWords = (
  loadKg: number,
  ownedKg: readonly number[],
  machine?: string,
): string | null => {
  const nearest = nearestOwnedKg(loadKg, ownedKg);
  if (nearest === null) return null;
  if (machine !== undefined)
    return `${loadKg} kg cannot be set on ${machine}. Type one of its loads, the nearest: ${nearest.join(' kg and ')} kg.`;
  const next =
    nearest.length > 0 ? `The nearest owned: ${nearest.join(' kg and ')} kg.` : 'No load is recorded.';
  return `${loadKg} kg is not among the loads at home. ${next} Type an owned load, or add this one to the loads at home.`;
};
