/** Usual pain must not be outgrown: a person who improved could worsen unseen under an old, high value. */
import type { Rule } from '../rule.ts';

export const b2 = {
  id: 'B2',
  title: 'Usual pain no longer true',
  since: 1,
  effect: { decision: 'hold', contact: 'routine' },
  condition: (facts) => facts.baselineLatched,
  observes: ['baselineLatched'],
  threshold: (settings) =>
    `14-day mean of mornings once ${settings['stale-baseline-fall']} or more under usual pain, not cleared by a clinician`,
  restsOn: 'clinic-choice',
  citations: [],
  settings: ['stale-baseline-fall', 'tighten-usual'],
  upTo: { 1: { settings: ['stale-baseline-fall'] } },
} as const satisfies Rule;
