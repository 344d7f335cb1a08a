/**
 * Swelling in the patient's own words, never turned into a clinician's grade. No progression table was found
 * for them.
 */
import type { Rule } from '../rule.ts';

export const w3 = {
  id: 'W3',
  title: 'Severe swelling',
  since: 1,
  effect: { decision: 'pause', today: 'rest-this-joint', contact: 'same-day' },
  condition: (facts) => facts.swelling === 'severe',
  observes: ['swelling'],
  threshold: () => 'swelling answered as severe',
  restsOn: 'clinic-choice',
  citations: [],
  settings: [],
} as const satisfies Rule;
