/** Whether a load is one of those at home, and which of them are nearest where it is not. */
import { milligrams } from '#core/units/units.ts';

/** The owned loads next to it, lighter first; null where it is owned. */
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

/** Said of a load that is not owned; null where it is owned. */
export const notOwnedInWords = (loadKg: number, ownedKg: readonly number[]): string | null => {
  const nearest = nearestOwnedKg(loadKg, ownedKg);
  if (nearest === null) return null;
  const next =
    nearest.length > 0 ? `The nearest owned: ${nearest.join(' kg and ')} kg.` : 'No load is recorded.';
  return `${loadKg} kg is not among the loads at home. ${next} Type an owned load, or add this one to the loads at home.`;
};
