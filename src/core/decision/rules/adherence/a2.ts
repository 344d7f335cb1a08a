/** A break: tolerance to load is lost before strength is. */
import type { Rule } from '../rule.ts';

export const a2 = {
  id: 'A2',
  title: 'Return after a break',
  since: 1,
  effect: { decision: 'ease-back' },
  condition: (facts, _derived, settings) => facts.gapDays >= settings['gap-days'],
  observes: ['gapDays'],
  threshold: (settings) => `${settings['gap-days']} days or more without a session`,
  restsOn: 'clinic-choice',
  citations: [],
  settings: ['gap-days'],
} as const satisfies Rule;
