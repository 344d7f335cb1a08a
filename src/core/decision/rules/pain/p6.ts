/** Two hours after the session, clearly over usual: too much was done. */
import { type Rule, reaches } from '../rule.ts';

/** Rise over the usual band: a choice, for the advice gives no figure. */
const clearRise = 2;

export const p6 = {
  id: 'P6',
  title: 'Two hours after, well over usual',
  since: 1,
  effect: { decision: 'ease-back' },
  isSilentWithoutUsual: true,
  condition: (facts, { top }) => reaches(facts.painTwoHours, top + clearRise),
  observes: ['painTwoHours', 'usualPainTop'],
  threshold: () => `two hours after ${clearRise} over the top of usual pain`,
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
