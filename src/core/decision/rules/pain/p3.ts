/** Pain before the session swaps the session of the day and leaves the plan as it is. */
import { type Rule, reaches } from '../rule.ts';

/** Score from which the session is swapped. */
const swapScore = 5;
/** The least that a whole score can lie over the usual band. */
const leastRise = 1;

export const p3 = {
  id: 'P3',
  title: 'Pain before the session',
  since: 1,
  effect: { decision: 'hold', today: 'bad-day' },
  condition: (facts, { top }) => reaches(facts.painBefore, Math.max(swapScore, top + leastRise)),
  observes: ['painBefore', 'usualPainTop'],
  threshold: () =>
    `before the session ${swapScore} or more and at least ${leastRise} over the top of usual pain`,
  restsOn: 'source',
  citations: [
    {
      source: 'knee-swap-trial',
      studied: '31 people with knee osteoarthritis in the exercise arm',
      number: 'from-source',
      locator: 'abstract: session swapped at 5 or more',
      mark: 'seen',
      remark: 'The trial swapped the session; it did not change the plan.',
    },
  ],
  settings: [],
} as const satisfies Rule;
