/**
 * Usual pain must be known before anything moves on. A clinician sets it; the engine proposes and never sets
 * it.
 */
import type { Rule } from '../rule.ts';

export const b0 = {
  id: 'B0',
  title: 'Settling in: usual pain not known yet',
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts) => facts.usualPain === null,
  observes: ['usualPain'],
  threshold: () => 'usual pain not frozen yet',
  restsOn: 'clinic-choice',
  citations: [],
  settings: [],
} as const satisfies Rule;
