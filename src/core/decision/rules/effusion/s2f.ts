/**
 * Fluid in the knee by a clinician's stroke test: the printed table holds the protocol and treats. For
 * arthritis no table was found.
 */
import type { Facts } from '../../facts/facts.ts';
import type { Rule } from '../rule.ts';

const grade: Facts['effusion'] = '2+';

export const s2f = {
  id: 'S2f',
  title: `Knee effusion ${grade}`,
  since: 1,
  effect: { decision: 'ease-back', today: 'rest-this-joint', contact: 'routine' },
  condition: (facts) => facts.effusion === grade,
  observes: ['effusion'],
  threshold: () => `effusion ${grade}`,
  restsOn: 'source',
  citations: [
    {
      source: 'effusion-progression-2018',
      studied: 'nobody: a protocol for knees after surgery, on the way back to kicking',
      number: 'from-source',
      locator: 'table 5, for knees after surgery and not for arthritis',
      mark: 'seen',
    },
    {
      source: 'sturgill-2009',
      studied: '75 pairs of ratings of a knee by two clinicians',
      number: 'none',
      locator: 'abstract: kappa 0.75, 54 of 75 pairs agreed',
      mark: 'seen',
    },
  ],
  settings: [],
} as const satisfies Rule;
