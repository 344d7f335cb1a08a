/** The load rises only after the target was met in sessions one after the other; one allows repetitions. */
import type { Rule } from '../rule.ts';

export const c4 = {
  id: 'C4',
  title: 'Too few sessions on target in a row',
  since: 1,
  effect: { decision: 'hold' },
  effectFor: (facts) => (facts.sessionsOnTarget < 1 ? { decision: 'hold' } : { largestStep: 'repetitions' }),
  condition: (facts, _derived, settings) => facts.sessionsOnTarget < settings['sessions-on-target'],
  observes: ['sessionsOnTarget'],
  threshold: (settings) =>
    `no session on target holds; fewer than ${settings['sessions-on-target']} in a row allow repetitions only`,
  restsOn: 'source',
  citations: [
    {
      source: 'two-for-two',
      studied: 'nobody: a rule of thumb for strength training',
      number: 'from-source',
      locator: 'usual progression rule',
      mark: 'memory',
      remark: 'From memory; the half step after one session is a choice.',
    },
  ],
  settings: ['sessions-on-target'],
} as const satisfies Rule;
