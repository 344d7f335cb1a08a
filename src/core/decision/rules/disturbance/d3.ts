/** More done than prescribed: the answers speak of another load. It holds and does not judge the load. */
import type { Rule } from '../rule.ts';

export const d3 = {
  id: 'D3',
  title: 'More done than prescribed',
  since: 1,
  effect: { decision: 'hold', contact: 'routine' },
  condition: (facts) => facts.overdone,
  observes: ['overdone'],
  threshold: (settings) =>
    `more than ${settings['overdone-percent']} % over the load, more than ${settings['overdone-repetitions']} % over the top of the band, or extra sets or sessions, or not said`,
  restsOn: 'clinic-choice',
  citations: [],
  settings: ['overdone-percent', 'overdone-repetitions'],
  upTo: {
    1: {
      threshold: (settings) =>
        `more than ${settings['overdone-percent']} % over the load, or extra sets or sessions, or not said`,
      settings: ['overdone-percent'],
    },
  },
} as const satisfies Rule;
