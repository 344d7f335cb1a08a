/**
 * Fluid in the knee by a clinician's stroke test, which has not gone down. Acts one visit earlier than the
 * printed table.
 */
import type { Facts } from '../../facts/facts.ts';
import type { Rule } from '../rule.ts';

const grade: Facts['effusion'] = '2+';
/** Tests running at this grade. */
const running = { tests: 2, inWords: 'two' } as const;

export const s2 = {
  id: 'S2',
  title: `Knee effusion ${grade} twice running`,
  since: 1,
  effect: { decision: 'pause', today: 'rest-this-joint', contact: 'same-day' },
  condition: (facts) => facts.effusion === grade && facts.effusionRun >= running.tests,
  observes: ['effusion', 'effusionRun'],
  threshold: () => `effusion ${grade} in ${running.inWords} tests running`,
  restsOn: 'source',
  citations: [
    {
      source: 'effusion-progression-2018',
      studied: 'nobody: a protocol for knees after surgery, on the way back to kicking',
      number: 'near-source',
      locator: 'table 5, for knees after surgery and not for arthritis',
      mark: 'seen',
      remark: 'Stricter than printed, which tells the team at the third.',
    },
  ],
  settings: [],
} as const satisfies Rule;
