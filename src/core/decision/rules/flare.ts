/**
 * Flares: worse for a day or more. In osteoarthritis the median flare lasted 5 days (quartiles 3 and
 * 8); in rheumatoid arthritis 55 % lasted over 14 days. The rules do not say what set a flare off.
 */
import type { Rule } from './rule.ts';

/** Upper quartile of flare length in osteoarthritis. */
const longFlareDays = 8;

export const flareRules = [
  {
    id: 'F1',
    title: 'Long flare',
    effect: { decision: 'ease-back', today: 'bad-day', contact: 'routine' },
    condition: (facts) => !facts.inflammatoryArthritis && facts.flareDays >= longFlareDays,
    observes: ['flareDays', 'inflammatoryArthritis'],
    threshold: () => `flare of ${longFlareDays} days or more, no inflammatory arthritis`,
    restsOn: 'source',
    citations: [
      { source: 'oa-flares-2021', locator: 'abstract: median 5 days, quartiles 3–8', mark: 'seen' },
    ],
    settings: [],
    version1: { effect: { decision: 'pause', today: 'rest-this-joint', contact: 'routine' } },
  },
  {
    id: 'F1i',
    title: 'Flare in inflammatory arthritis',
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
        locator: '55 % of flares over 14 days',
        mark: 'seen',
        remark: 'Three days is a choice: the source only says that such flares last.',
      },
    ],
    settings: ['inflammatory-flare-days'],
  },
  {
    id: 'F2',
    title: 'Flare',
    effect: { decision: 'ease-back', today: 'bad-day' },
    condition: (facts) => facts.flareDays >= 1,
    observes: ['flareDays'],
    threshold: () => 'flare of 1 day or more',
    restsOn: 'source',
    citations: [
      { source: 'acsm-flare-advice', locator: 'summary of the guideline', mark: 'second-hand' },
      { source: 'oa-flares-2021', locator: 'definition: worse for 24 hours or more', mark: 'seen' },
    ],
    settings: [],
  },
] as const satisfies readonly Rule[];
