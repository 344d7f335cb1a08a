/** A flare in inflammatory arthritis: more than half last over two weeks, so the clinic is told early. */
import type { Rule } from '../rule.ts';

export const f1i = {
  id: 'F1i',
  title: 'Flare in inflammatory arthritis',
  since: 1,
  effect: { decision: 'ease-back', today: 'bad-day', contact: 'routine' },
  condition: (facts, _derived, settings) =>
    facts.inflammatoryArthritis && facts.flareDays >= settings['inflammatory-flare-days'],
  observes: ['flareDays', 'inflammatoryArthritis'],
  threshold: (settings) =>
    `flare of ${settings['inflammatory-flare-days']} days or more in inflammatory arthritis`,
  restsOn: 'source',
  citations: [
    {
      source: 'bartlett-2015',
      studied: '501 people with rheumatoid arthritis, 39 % of them in a flare',
      number: 'none',
      locator: '55 % of flares over 14 days',
      mark: 'seen',
      remark: 'Three days is a choice: the source only says that such flares last.',
    },
  ],
  settings: ['inflammatory-flare-days'],
} as const satisfies Rule;
