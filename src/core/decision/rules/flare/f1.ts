/**
 * A flare (worse for a day or more) longer than three of four in osteoarthritis. The rule does not say what set it
 * off.
 */
import type { Rule } from '../rule.ts';

/** Upper quartile of flare length in osteoarthritis. */
const longFlareDays = 8;

export const f1 = {
  id: 'F1',
  title: 'Long flare',
  since: 1,
  effect: { decision: 'ease-back', today: 'bad-day', contact: 'routine' },
  condition: (facts) => !facts.inflammatoryArthritis && facts.flareDays >= longFlareDays,
  observes: ['flareDays', 'inflammatoryArthritis'],
  threshold: () => `flare of ${longFlareDays} days or more, no inflammatory arthritis`,
  restsOn: 'source',
  citations: [
    {
      source: 'oa-flares-2021',
      studied: '744 people with knee osteoarthritis, 376 of them with a flare, over 13 weeks',
      number: 'from-source',
      locator: 'abstract: median 5 days, quartiles 3–8',
      mark: 'seen',
    },
  ],
  settings: [],
  upTo: { 1: { effect: { decision: 'pause', today: 'rest-this-joint', contact: 'routine' } } },
} as const satisfies Rule;
