/** Any flare: worse for a day or more. */
import type { Rule } from '../rule.ts';

/** Whole days from which being worse is a flare. */
const leastDays = 1;

export const f2 = {
  id: 'F2',
  title: 'Flare',
  since: 1,
  effect: { decision: 'ease-back', today: 'bad-day' },
  condition: (facts) => facts.flareDays >= leastDays,
  observes: ['flareDays'],
  threshold: () => `flare of ${leastDays} day or more`,
  restsOn: 'source',
  citations: [
    {
      source: 'acsm-flare-advice',
      studied: 'nobody: advice for people with arthritis',
      number: 'none',
      locator: 'summary of the guideline',
      mark: 'second-hand',
    },
    {
      source: 'oa-flares-2021',
      studied: '744 people with knee osteoarthritis, 376 of them with a flare, over 13 weeks',
      number: 'from-source',
      locator: 'definition: worse for 24 hours or more',
      mark: 'seen',
    },
  ],
  settings: [],
} as const satisfies Rule;
