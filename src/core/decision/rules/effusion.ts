/**
 * Fluid in the knee by a clinician's stroke test. Knee only. The table was printed for knees after
 * surgery on the way back to sport; for arthritis none was found. It holds the protocol at 2+ and tells
 * the team at the third visit; these rows act one visit earlier. Two raters differ by one grade in about a
 * quarter of pairs, so the rules use heights and never a one-grade change.
 */
import type { Rule } from './rule.ts';

const table = {
  source: 'effusion-progression-2018',
  locator: 'table 5, for knees after surgery and not for arthritis',
  mark: 'seen',
} as const;

export const effusionRules = [
  {
    id: 'S1',
    title: 'Knee effusion 3+',
    effect: { decision: 'pause', today: 'rest-this-joint', contact: 'same-day' },
    condition: (facts) => facts.effusion === '3+',
    observes: ['effusion'],
    threshold: () => 'effusion 3+',
    restsOn: 'source',
    citations: [{ ...table, remark: 'Stricter than printed, which holds and treats at 2+ and more.' }],
    settings: [],
  },
  {
    id: 'S2',
    title: 'Knee effusion 2+ twice running',
    effect: { decision: 'pause', today: 'rest-this-joint', contact: 'same-day' },
    condition: (facts) => facts.effusion === '2+' && facts.effusionRun >= 2,
    observes: ['effusion', 'effusionRun'],
    threshold: () => 'effusion 2+ in two tests running',
    restsOn: 'source',
    citations: [{ ...table, remark: 'Stricter than printed, which tells the team at the third.' }],
    settings: [],
  },
  {
    id: 'S2f',
    title: 'Knee effusion 2+',
    effect: { decision: 'ease-back', today: 'rest-this-joint', contact: 'routine' },
    condition: (facts) => facts.effusion === '2+',
    observes: ['effusion'],
    threshold: () => 'effusion 2+',
    restsOn: 'source',
    citations: [
      table,
      { source: 'sturgill-2009', locator: 'abstract: kappa 0.75, 54 of 75 pairs agreed', mark: 'seen' },
    ],
    settings: [],
  },
  {
    id: 'S3',
    title: 'Knee effusion 1+ where less is usual',
    effect: { decision: 'hold' },
    condition: (facts) => facts.effusion === '1+' && facts.usualEffusion !== '1+',
    observes: ['effusion', 'usualEffusion'],
    threshold: () => 'effusion 1+ where zero or trace is usual',
    restsOn: 'source',
    citations: [{ ...table, remark: 'Printed for the session after a 2+; applied from the first 1+.' }],
    settings: [],
  },
] as const satisfies readonly Rule[];
