/** Sessions missed. Ordered rest and agreed breaks are not planned sessions. */
import type { Rule } from '../rule.ts';

export const a1 = {
  id: 'A1',
  title: 'Sessions missed',
  since: 1,
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
} as const satisfies Rule;
