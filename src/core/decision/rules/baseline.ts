/**
 * Usual pain must be known, fresh and not outgrown before anything moves on. The values are set
 * by a clinician; the engine proposes and never sets them.
 */
import type { Rule } from './rule.ts';

export const baselineRules = [
  {
    id: 'B0',
    title: 'Settling in: usual pain not known yet',
    effect: { decision: 'hold' },
    condition: (facts) => facts.usualPain === null,
    observes: ['usualPain'],
    threshold: () => 'usual pain not frozen yet',
    restsOn: 'clinic-choice',
    citations: [],
    settings: [],
  },
  {
    id: 'B1',
    title: 'Usual values too old',
    effect: { decision: 'hold', contact: 'routine' },
    condition: (facts, _derived, settings) => facts.baselineAgeDays > settings['baseline-expiry'],
    observes: ['baselineAgeDays'],
    threshold: (settings) => `usual values older than ${settings['baseline-expiry']} days`,
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['baseline-expiry'],
  },
  {
    id: 'B2',
    title: 'Usual pain no longer true',
    effect: { decision: 'hold', contact: 'routine' },
    condition: (facts) => facts.baselineLatched,
    observes: ['baselineLatched'],
    threshold: (settings) =>
      `14-day mean of mornings once ${settings['stale-baseline-fall']} or more under usual pain, not cleared by a clinician`,
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['stale-baseline-fall'],
  },
] as const satisfies readonly Rule[];
