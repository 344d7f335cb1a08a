/** Two hours after the session, a little over usual: the dose waits. */
import { type Rule, reaches } from '../rule.ts';

/** The least that a whole score can lie over the usual band. */
const leastRise = 1;

export const p6h = {
  id: 'P6h',
  title: 'Two hours after, over usual',
  since: 1,
  effect: { decision: 'hold' },
  isSilentWithoutUsual: true,
  condition: (facts, { top }) => reaches(facts.painTwoHours, top + leastRise),
  observes: ['painTwoHours', 'usualPainTop'],
  threshold: () => `two hours after ${leastRise} over the top of usual pain`,
  restsOn: 'source',
  citations: [
    {
      source: 'two-hour-rule',
      studied: 'nobody: advice for people who exercise with arthritis',
      number: 'none',
      locator: 'restated advice',
      mark: 'second-hand',
    },
  ],
  settings: [],
  upTo: { 1: { isSilentWithoutUsual: false } },
} as const satisfies Rule;
