/** Pain that has not settled for many mornings. The mornings are counted where the facts are gathered. */
import type { Rule } from '../rule.ts';

export const p5r = {
  id: 'P5r',
  title: 'Many mornings in a row over usual',
  since: 2,
  effect: { decision: 'hold', contact: 'routine' },
  isSilentWithoutUsual: true,
  condition: (facts, _derived, settings) => facts.morningsOverTop >= settings['mornings-over-top'],
  observes: ['morningsOverTop', 'usualPainTop'],
  threshold: (settings) =>
    `${settings['mornings-over-top']} answered mornings in a row 1 over the top of usual pain`,
  restsOn: 'source',
  citations: [
    {
      source: 'silbernagel-2007',
      studied: '38 people with Achilles tendinopathy',
      number: 'none',
      locator: 'pain-monitoring rule, week to week',
      mark: 'memory',
      remark: 'The number of mornings is a choice.',
    },
  ],
  settings: ['mornings-over-top'],
} as const satisfies Rule;
