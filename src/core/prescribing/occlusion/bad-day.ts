/**
 * The easier session signed together with an occlusion dose. A choice of this project.
 *
 * The last set is left out and the first is no longer than the second, so that it is always less
 * work and less time. Load, pressure and tightness stay: a second pressure on one cuff invites error.
 */
import type { OcclusionDose } from '../dose.ts';

export const badDayOf = (dose: OcclusionDose): OcclusionDose => {
  const kept = dose.scheme.slice(0, Math.max(1, dose.scheme.length - 1));
  const longest = kept[1] ?? Math.ceil(kept[0]! / 2);
  const scheme = kept.map((repetitions) => Math.min(repetitions, longest));
  return { ...dose, sets: scheme.length, scheme };
};
