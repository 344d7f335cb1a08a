/**
 * Fluid in the knee by a clinician's stroke test, as much as the test knows. Two raters differ by one grade in about
 * a quarter of pairs, so the rules use heights and never a one-grade change.
 */
import type { Facts } from '../../facts/facts.ts';
import type { Rule } from '../rule.ts';

const grade: Facts['effusion'] = '3+';

export const s1 = {
  id: 'S1',
  title: `Knee effusion ${grade}`,
  since: 1,
  effect: { decision: 'pause', today: 'rest-this-joint', contact: 'same-day' },
  condition: (facts) => facts.effusion === grade,
  observes: ['effusion'],
  threshold: () => `effusion ${grade}`,
  restsOn: 'source',
  citations: [
    {
      source: 'effusion-progression-2018',
      studied: 'nobody: a protocol for knees after surgery, on the way back to kicking',
      number: 'near-source',
      locator: 'table 5, for knees after surgery and not for arthritis',
      mark: 'seen',
      remark: 'Stricter than printed, which holds and treats at 2+ and more.',
    },
  ],
  settings: [],
} as const satisfies Rule;
