/** The week of mornings, a little over usual: the dose waits. */
import type { Rule } from '../rule.ts';

/** Rise of the mean over usual pain that people call slight. */
const slightRise = 1;

export const p7h = {
  id: 'P7h',
  title: 'A week of mornings over usual',
  since: 1,
  effect: { decision: 'hold' },
  isSilentWithoutUsual: true,
  condition: (facts, { usual }) =>
    facts.morningPainMean7 !== null && facts.morningPainMean7 - usual >= slightRise,
  observes: ['morningPainMean7', 'usualPain'],
  threshold: () => `mean of seven mornings ${slightRise} over usual pain`,
  restsOn: 'source',
  citations: [
    {
      source: 'silbernagel-2007',
      studied: '38 people with Achilles tendinopathy',
      number: 'none',
      locator: 'pain-monitoring rule, week to week',
      mark: 'memory',
    },
    {
      source: 'salaffi-2004',
      studied:
        '825 people with osteoarthritis of knee, hip or hand, rheumatoid arthritis or ankylosing spondylitis; a fall of pain, not a rise',
      number: 'near-source',
      locator: 'slight change 1 point',
      mark: 'seen',
    },
  ],
  settings: [],
  upTo: { 1: { isSilentWithoutUsual: false } },
} as const satisfies Rule;
