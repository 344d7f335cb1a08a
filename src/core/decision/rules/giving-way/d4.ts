/** A joint that gave way wants a look. With a fall it is a red flag. */
import type { Rule } from '../rule.ts';

export const d4 = {
  id: 'D4',
  title: 'The joint gave way',
  since: 1,
  effect: { decision: 'hold', contact: 'routine' },
  condition: (facts) => facts.gaveWay,
  observes: ['gaveWay'],
  threshold: () => 'the joint gave way, or not said',
  restsOn: 'clinic-choice',
  citations: [],
  settings: [],
} as const satisfies Rule;
