/**
 * A changed treatment bends the scores: they speak of it and not of the load. It holds and does not judge the
 * load.
 */
import type { Rule } from '../rule.ts';

export const d2 = {
  id: 'D2',
  title: 'Treatment changed lately',
  since: 1,
  effect: { decision: 'hold', contact: 'routine' },
  condition: (facts, _derived, settings) =>
    facts.treatmentChangeDays !== null && facts.treatmentChangeDays <= settings['treatment-change-days'],
  observes: ['treatmentChangeDays'],
  threshold: (settings) =>
    `medicine change or joint injection within ${settings['treatment-change-days']} days`,
  restsOn: 'clinic-choice',
  citations: [],
  settings: ['treatment-change-days'],
} as const satisfies Rule;
