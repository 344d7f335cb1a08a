/**
 * A clinician's own decision with its reason. It is its own record beside the engine's, never an edit;
 * the engine never undoes it. Counted per rule, so that a rule often overruled is looked at again.
 */
import type { Day } from '../day.ts';
import { dayNumber } from '../day.ts';
import type { Answers, DecisionWord, Reason } from './answers.ts';

export interface Override {
  readonly decision: DecisionWord;
  readonly reason: string;
  readonly by: string;
  readonly day: Day;
  /** Last day it stands; overrides expire. */
  readonly until: Day;
  /** Reasons of the engine's decision that was overruled. */
  readonly overruled: readonly Pick<Reason, 'rule'>[];
}

export interface OverriddenDecision {
  readonly decision: DecisionWord;
  readonly from: 'engine' | 'clinician';
  /** The clinician's word that a new danger stands before; shown beside it, never dropped. */
  readonly setAside: Override | null;
}

/**
 * What stands on a day: the clinician's word while it lasts, then the engine's again, openly. A pause for
 * a rule the clinician has not seen when overruling is a new danger: it stops the plan and shows both.
 */
export const overriddenDecision = (
  engine: Pick<Answers, 'decision' | 'reasons'>,
  overrides: readonly Override[],
  day: Day,
): OverriddenDecision => {
  const on = dayNumber(day);
  const current = overrides
    .filter((one) => dayNumber(one.day) <= on && dayNumber(one.until) >= on)
    .sort((a, b) => dayNumber(a.day) - dayNumber(b.day))
    .at(-1);
  if (!current) return { decision: engine.decision, from: 'engine', setAside: null };
  const seen = new Set(current.overruled.map((reason) => reason.rule));
  const isNewDanger = engine.reasons.some(
    (reason) => reason.effect.decision === 'pause' && !seen.has(reason.rule),
  );
  return isNewDanger
    ? { decision: engine.decision, from: 'engine', setAside: current }
    : { decision: current.decision, from: 'clinician', setAside: null };
};

export const overridesByRule = (overrides: readonly Override[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { overruled } of overrides) {
    for (const rule of new Set(overruled.map((reason) => reason.rule))) {
      counts.set(rule, (counts.get(rule) ?? 0) + 1);
    }
  }
  return counts;
};
