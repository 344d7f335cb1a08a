/**
 * A slow rise of morning pain seen by a one-sided sum chart (allowance half a standard deviation), until a clinician
 * sets a new baseline. On unchanged whole-number diaries such a chart still alarms often, so it holds and nothing more.
 */
import type { Rule } from '../rule.ts';

export const x1 = {
  id: 'X1',
  title: 'Slow rise of morning pain',
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts) => facts.symptomSignal,
  observes: ['symptomSignal'],
  threshold: (settings) =>
    `sum of mornings over usual reached ${settings['signal-interval']} standard deviations, and no ${settings['signal-calm-mornings']} mornings at usual since`,
  restsOn: 'source',
  citations: [
    {
      source: 'diary-chart-simulation',
      studied: 'nobody: 20,000 invented diaries a setting',
      number: 'near-source',
      locator: 'false alarm within 28 days 0.127 at 14 baseline values, no autocorrelation',
      mark: 'computed',
    },
  ],
  settings: ['signal-interval', 'signal-least-values', 'signal-inflation', 'signal-calm-mornings'],
  upTo: {
    1: {
      threshold: (settings) =>
        `sum of mornings over usual reached ${settings['signal-interval']} standard deviations`,
      settings: ['signal-interval', 'signal-least-values', 'signal-inflation'],
    },
  },
} as const satisfies Rule;
