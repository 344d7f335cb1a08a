/** A session broken off for the joint says more than one broken off for the clock. */
import type { Facts } from '../../facts/facts.ts';
import type { Rule } from '../rule.ts';

const stoppedForTheJoint = (reason: Facts['stopReason']): boolean =>
  reason === 'joint-pain' || reason === 'symptom' || reason === 'unknown';

export const c1 = {
  id: 'C1',
  title: 'Session broken off for the joint',
  since: 1,
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
} as const satisfies Rule;
