/** Usual values must be fresh before anything moves on. */
import type { Rule } from '../rule.ts';

export const b1 = {
  id: 'B1',
  title: 'Usual values too old',
  since: 1,
  effect: { decision: 'hold', contact: 'routine' },
  condition: (facts, _derived, settings) => facts.baselineAgeDays > settings['baseline-expiry'],
  observes: ['baselineAgeDays'],
  threshold: (settings) => `usual values older than ${settings['baseline-expiry']} days`,
  restsOn: 'clinic-choice',
  citations: [],
  settings: ['baseline-expiry'],
} as const satisfies Rule;
