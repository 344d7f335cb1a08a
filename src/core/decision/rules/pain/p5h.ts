/** The morning after the session, a little over usual: the dose waits. Any rise that has not settled counts. */
import { type Rule, reaches } from '../rule.ts';
import { nextOrLaterReaches } from './next-or-later.ts';

/** The least that a whole score can lie over the usual band. */
const leastRise = 1;

export const p5h = {
  id: 'P5h',
  title: 'Next morning over usual',
  since: 1,
  effect: { decision: 'hold' },
  isSilentWithoutUsual: true,
  condition: (facts, { top }) => nextOrLaterReaches(facts, top + leastRise),
  observes: ['painNextMorning', 'painLaterMorning', 'usualPainTop'],
  threshold: () => `next or later morning ${leastRise} over the top of usual pain`,
  restsOn: 'source',
  citations: [
    {
      source: 'silbernagel-2007',
      studied: '38 people with Achilles tendinopathy',
      number: 'none',
      locator: 'pain-monitoring rule, next morning',
      mark: 'memory',
    },
  ],
  settings: [],
  upTo: {
    1: {
      isSilentWithoutUsual: false,
      condition: (facts, { top }) => reaches(facts.painNextMorning, top + leastRise),
      observes: ['painNextMorning', 'usualPainTop'],
      threshold: () => `next morning ${leastRise} over the top of usual pain`,
    },
  },
} as const satisfies Rule;
