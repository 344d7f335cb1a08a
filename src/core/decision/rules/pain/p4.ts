/** Pain while training: the load is raised only below a score, whatever is usual. */
import { type Rule, reaches } from '../rule.ts';

/** Load is raised only below this score. */
const raiseBelow = 5;
/** The least that a whole score can lie over the usual band. */
const leastRise = 1;

export const p4 = {
  id: 'P4',
  title: 'Pain during or after the session',
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts, { top }) => {
    const height = Math.max(raiseBelow, top + leastRise);
    return reaches(facts.painDuring, height) || reaches(facts.painAfter, height);
  },
  observes: ['painDuring', 'painAfter', 'usualPainTop'],
  threshold: () =>
    `during or after ${raiseBelow} or more and at least ${leastRise} over the top of usual pain`,
  restsOn: 'source',
  citations: [
    {
      source: 'perry-2005',
      studied: 'people after reconstruction of the anterior cruciate ligament',
      number: 'from-source',
      locator: 'load raised when pain is under 5 and the repetitions are done',
      mark: 'second-hand',
    },
  ],
  settings: [],
} as const satisfies Rule;
