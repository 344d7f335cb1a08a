/** A little fluid in the knee by a clinician's stroke test, where less is usual. */
import type { Facts } from '../../facts/facts.ts';
import type { Rule } from '../rule.ts';

const grade: Facts['effusion'] = '1+';

export const s3 = {
  id: 'S3',
  title: `Knee effusion ${grade} where less is usual`,
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts) => facts.effusion === grade && facts.usualEffusion !== grade,
  observes: ['effusion', 'usualEffusion'],
  threshold: () => `effusion ${grade} where zero or trace is usual`,
  restsOn: 'source',
  citations: [
    {
      source: 'effusion-progression-2018',
      studied: 'nobody: a protocol for knees after surgery, on the way back to kicking',
      number: 'near-source',
      locator: 'table 5, for knees after surgery and not for arthritis',
      mark: 'seen',
      remark: 'Printed for the session after a 2+; applied from the first 1+.',
    },
  ],
  settings: [],
} as const satisfies Rule;
