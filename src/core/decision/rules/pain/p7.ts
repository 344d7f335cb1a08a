/**
 * The week of mornings. The published rule does not let pain grow from week to week; compared with usual pain and
 * never with the week before, which would make a worse last week the measure.
 */
import type { Rule } from '../rule.ts';

/** Rise of the mean over usual pain: a choice, for the rule gives no figure. */
const clearRise = 2;

export const p7 = {
  id: 'P7',
  title: 'A week of mornings well over usual',
  since: 1,
  effect: { decision: 'ease-back' },
  isSilentWithoutUsual: true,
  condition: (facts, { usual }) =>
    facts.morningPainMean7 !== null && facts.morningPainMean7 - usual >= clearRise,
  observes: ['morningPainMean7', 'usualPain'],
  threshold: () => `mean of seven mornings ${clearRise} over usual pain`,
  restsOn: 'source',
  citations: [
    {
      source: 'silbernagel-2007',
      studied: '38 people with Achilles tendinopathy',
      number: 'none',
      locator: 'pain-monitoring rule, week to week',
      mark: 'memory',
    },
  ],
  settings: [],
  upTo: { 1: { isSilentWithoutUsual: false } },
} as const satisfies Rule;
