/** Overrides counted per rule, so that a rule often overruled is looked at again. */
import type { Reason } from './answers.ts';

/** The reasons of each decision that was overruled → how often each rule was; twice in one decision is once. */
export const overridesByRule = (
  overruled: readonly (readonly Pick<Reason, 'rule'>[])[],
): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const reasons of overruled) {
    for (const rule of new Set(reasons.map((reason) => reason.rule))) {
      counts.set(rule, (counts.get(rule) ?? 0) + 1);
    }
  }
  return counts;
};
