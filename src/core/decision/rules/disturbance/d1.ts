/** Extra pain relief blunts the scores. It holds and does not judge the load. */
import type { Rule } from '../rule.ts';

export const d1 = {
  id: 'D1',
  title: 'Extra pain relief',
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts) => facts.extraPainRelief,
  observes: ['extraPainRelief'],
  threshold: () => 'extra pain relief taken, or not said',
  restsOn: 'clinic-choice',
  citations: [],
  settings: [],
} as const satisfies Rule;
