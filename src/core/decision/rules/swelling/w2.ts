/**
 * Swelling in the patient's own words, never turned into a clinician's grade. No progression table was found
 * for them.
 */
import type { Rule } from '../rule.ts';

export const w2 = {
  id: 'W2',
  title: 'Clear swelling',
  since: 1,
  effect: { decision: 'ease-back', today: 'rest-this-joint', contact: 'routine' },
  condition: (facts) => facts.swelling === 'clear',
  observes: ['swelling'],
  threshold: () => 'swelling answered as clear',
  restsOn: 'clinic-choice',
  citations: [],
  settings: [],
} as const satisfies Rule;
