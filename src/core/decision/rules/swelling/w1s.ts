/**
 * Swelling in the patient's own words, never turned into a clinician's grade. No progression table was found
 * for them.
 */
import type { Rule } from '../rule.ts';

export const w1s = {
  id: 'W1s',
  title: 'Slight swelling that is new',
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts) => facts.swelling === 'slight' && facts.usualSwelling === 'none',
  observes: ['swelling', 'usualSwelling'],
  threshold: () => 'swelling answered as slight where none is usual',
  restsOn: 'clinic-choice',
  citations: [],
  settings: [],
} as const satisfies Rule;
