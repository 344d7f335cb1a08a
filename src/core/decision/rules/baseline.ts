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
    id: 'B0r',
    title: 'Usual pain told and not yet shown by a diary',
    since: 2,
    effect: { largestStep: 'repetitions' },
    condition: (facts) => facts.usualPainProvisional,
    observes: ['usualPainProvisional'],
    threshold: () => 'usual pain told at a first visit',
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['provisional-usual'],
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
    settings: ['stale-baseline-fall', 'tighten-usual'],
    version1: { settings: ['stale-baseline-fall'] },
  },
  {
    id: 'B3',
    title: 'Usual pain risen since the plan began',
    since: 2,
    effect: { decision: 'hold', contact: 'routine' },
    condition: (facts, _derived, settings) =>
      facts.usualPainRise !== null && facts.usualPainRise >= settings['usual-rise'],
    observes: ['usualPainRise', 'usualPain'],
    threshold: (settings) =>
      `usual pain ${settings['usual-rise']} or more over the first of this plan, not acknowledged by a clinician`,
    restsOn: 'source',
    citations: [
      {
        source: 'alghadir-2018',
        locator: 'detectable change 1.33',
        mark: 'seen',
        remark: 'A rise of 2 exceeds the error of one rating; that the plan then waits is a choice.',
      },
    ],
    settings: ['usual-rise'],
  },
] as const satisfies readonly Rule[];
