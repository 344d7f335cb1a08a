/** The load rises only after all that was asked was done. */
import type { Rule } from '../rule.ts';

/** Share of the repetitions that was asked for. */
const wholePercent = 100;

export const c2 = {
  id: 'C2',
  title: 'Repetitions not completed',
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts) => facts.repetitionsDonePercent !== null && facts.repetitionsDonePercent < wholePercent,
  observes: ['repetitionsDonePercent'],
  threshold: () => `under ${wholePercent} % of the repetitions`,
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
