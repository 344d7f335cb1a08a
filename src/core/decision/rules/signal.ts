/**
 * A slow rise of morning pain seen by a one-sided sum chart (allowance half a standard deviation),
 * in force until a clinician sets a new baseline. On unchanged whole-number diaries such a chart
 * still alarms often, so the signal may hold and nothing more.
 */
import type { Rule } from './rule.ts';

export const signalRules = [
  {
    id: 'X1',
    title: 'Slow rise of morning pain',
    effect: { decision: 'hold' },
    condition: (facts) => facts.symptomSignal,
    observes: ['symptomSignal'],
    threshold: (settings) =>
      `sum of mornings over usual reached ${settings['signal-interval']} standard deviations, and no ${settings['signal-calm-mornings']} mornings at usual since`,
    restsOn: 'source',
    citations: [
      {
        source: 'diary-chart-simulation',
        locator: 'false alarm within 28 days 0.127 at 14 baseline values, no autocorrelation',
        mark: 'computed',
      },
    ],
    settings: ['signal-interval', 'signal-least-values', 'signal-inflation', 'signal-calm-mornings'],
    version1: {
      threshold: (settings) =>
        `sum of mornings over usual reached ${settings['signal-interval']} standard deviations`,
      settings: ['signal-interval', 'signal-least-values', 'signal-inflation'],
    },
  },
] as const satisfies readonly Rule[];
