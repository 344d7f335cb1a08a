/** Each new baseline alone could hide a slow rise, so usual pain is held against the first one of the plan. */
import type { Rule } from '../rule.ts';

export const b3 = {
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
      studied: '121 people with knee osteoarthritis, who rated twice within 24 hours',
      number: 'near-source',
      locator: 'detectable change 1.33',
      mark: 'seen',
      remark: 'A rise of 2 exceeds the error of one rating; that the plan then waits is a choice.',
    },
  ],
  settings: ['usual-rise'],
} as const satisfies Rule;
