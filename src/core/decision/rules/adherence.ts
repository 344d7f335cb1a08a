/** Sessions missed and breaks. Ordered rest and agreed breaks are not planned sessions. Clinic choices. */
import type { Rule } from './rule.ts';

export const adherenceRules = [
  {
    id: 'A1',
    title: 'Sessions missed',
    effect: { decision: 'hold' },
    // Multiplied out, so that no planned session is no division by zero.
    condition: (facts, _derived, settings) =>
      facts.missedSessions14 >= settings['missed-sessions'] &&
      (facts.plannedSessions14 - facts.missedSessions14) * 100 <
        settings['adherence-percent'] * facts.plannedSessions14,
    observes: ['missedSessions14', 'plannedSessions14'],
    threshold: (settings) =>
      `${settings['missed-sessions']} or more missed in 14 days and under ${settings['adherence-percent']} % done`,
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['missed-sessions', 'adherence-percent'],
  },
  {
    id: 'A2',
    title: 'Return after a break',
    effect: { decision: 'ease-back' },
    condition: (facts, _derived, settings) => facts.gapDays >= settings['gap-days'],
    observes: ['gapDays'],
    threshold: (settings) => `${settings['gap-days']} days or more without a session`,
    restsOn: 'clinic-choice',
    citations: [],
    settings: ['gap-days'],
  },
] as const satisfies readonly Rule[];
