/**
 * Pain before the session swaps the session of the day and leaves the plan as it is. Where a clinic lets it speak for
 * that session alone, it says nothing of the next one once the work is known; the check before a session knows of none.
 */
import { type Rule, reaches } from '../rule.ts';

/** Score from which the session is swapped. */
const swapScore = 5;
const swaps = { decision: 'hold', today: 'bad-day' } as const;

export const p3 = {
  id: 'P3',
  title: 'Pain before the session',
  since: 1,
  effect: swaps,
  effectFor: (facts, _derived, settings) =>
    settings['swap-once'] === 1 && facts.repetitionsDonePercent !== null ? { decision: 'hold' } : swaps,
  condition: (facts, { top }, settings) =>
    reaches(facts.painBefore, Math.max(swapScore, top + settings['swap-rise'])),
  observes: ['painBefore', 'usualPainTop'],
  threshold: (settings) =>
    `before the session ${swapScore} or more and at least ${settings['swap-rise']} over the top of usual pain` +
    (settings['swap-once'] === 1 ? '; for that session alone' : ''),
  restsOn: 'source',
  citations: [
    {
      source: 'knee-swap-trial',
      studied: '31 people with knee osteoarthritis in the exercise arm',
      number: 'from-source',
      locator: 'abstract: session swapped at 5 or more',
      mark: 'seen',
      remark: 'The trial swapped the session; it did not change the plan.',
    },
  ],
  settings: ['swap-rise', 'swap-once'],
} as const satisfies Rule;
