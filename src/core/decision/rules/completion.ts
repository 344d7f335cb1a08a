/**
 * What was done of what was asked. The load rises only after the target was met; a session broken off
 * for the joint says more than one broken off for the clock.
 */
import type { Facts } from '../facts/facts.ts';
import type { Rule } from './rule.ts';

const stoppedForTheJoint = (reason: Facts['stopReason']): boolean =>
  reason === 'joint-pain' || reason === 'symptom' || reason === 'unknown';

export const completionRules = [
  {
    id: 'C1',
    title: 'Session broken off for the joint',
    effect: { decision: 'ease-back' },
    condition: (facts, _derived, settings) =>
      facts.repetitionsDonePercent !== null &&
      facts.repetitionsDonePercent < settings['early-stop-percent'] &&
      stoppedForTheJoint(facts.stopReason),
    observes: ['repetitionsDonePercent', 'stopReason'],
    threshold: (settings) =>
      `under ${settings['early-stop-percent']} % of the repetitions, stopped for pain, a symptom or an unknown reason`,
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['early-stop-percent'],
  },
  {
    id: 'C2',
    title: 'Repetitions not completed',
    effect: { decision: 'hold' },
    condition: (facts) => facts.repetitionsDonePercent !== null && facts.repetitionsDonePercent < 100,
    observes: ['repetitionsDonePercent'],
    threshold: () => 'under 100 % of the repetitions',
    restsOn: 'source',
    citations: [
      {
        source: 'perry-2005',
        locator: 'load raised when pain is under 5 and the repetitions are done',
        mark: 'second-hand',
      },
    ],
    settings: [],
  },
  {
    id: 'C3',
    title: 'Nearer to failure than prescribed',
    effect: { decision: 'hold' },
    condition: (facts, _derived, settings) =>
      facts.reserveShortfall >= settings['reserve-shortfall'] && facts.prescribedReserve >= 1,
    observes: ['reserveShortfall', 'prescribedReserve'],
    threshold: (settings) =>
      `${settings['reserve-shortfall']} or more repetitions nearer to failure than prescribed, or not said`,
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['reserve-shortfall'],
  },
  {
    id: 'C4',
    title: 'Too few sessions on target in a row',
    effect: { decision: 'hold' },
    effectFor: (facts) =>
      facts.sessionsOnTarget < 1 ? { decision: 'hold' } : { largestStep: 'repetitions' },
    condition: (facts, _derived, settings) => facts.sessionsOnTarget < settings['sessions-on-target'],
    observes: ['sessionsOnTarget'],
    threshold: (settings) =>
      `no session on target holds; fewer than ${settings['sessions-on-target']} in a row allow repetitions only`,
    restsOn: 'source',
    citations: [
      {
        source: 'two-for-two',
        locator: 'usual progression rule',
        mark: 'memory',
        remark: 'From memory; the half step after one session is a choice.',
      },
    ],
    settings: ['sessions-on-target'],
  },
] as const satisfies readonly Rule[];
