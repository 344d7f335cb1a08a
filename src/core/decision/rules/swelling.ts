/**
 * Swelling in the patient's own words. No published progression table was found for the patient's
 * own answer; the words are never turned into a clinician's grade. Clinic choices throughout.
 */
import type { Rule } from './rule.ts';

export const swellingRules = [
  {
    id: 'W3',
    title: 'Severe swelling',
    effect: { decision: 'pause', today: 'rest-this-joint', contact: 'same-day' },
    condition: (facts) => facts.swelling === 'severe',
    observes: ['swelling'],
    threshold: () => 'swelling answered as severe',
    restsOn: 'clinic-choice',
    citations: [],
    settings: [],
  },
  {
    id: 'W2',
    title: 'Clear swelling',
    effect: { decision: 'ease-back', today: 'rest-this-joint', contact: 'routine' },
    condition: (facts) => facts.swelling === 'clear',
    observes: ['swelling'],
    threshold: () => 'swelling answered as clear',
    restsOn: 'clinic-choice',
    citations: [],
    settings: [],
  },
  {
    id: 'W1s',
    title: 'Slight swelling that is new',
    effect: { decision: 'hold' },
    condition: (facts) => facts.swelling === 'slight' && facts.usualSwelling === 'none',
    observes: ['swelling', 'usualSwelling'],
    threshold: () => 'swelling answered as slight where none is usual',
    restsOn: 'clinic-choice',
    citations: [],
    settings: [],
  },
] as const satisfies readonly Rule[];
