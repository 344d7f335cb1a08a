/** Usual pain told at a first visit lets the plan move in repetitions, until a diary has shown it. */
import type { Rule } from '../rule.ts';

export const b0r = {
  id: 'B0r',
  title: 'Usual pain told and not yet shown by a diary',
  since: 2,
  effect: { largestStep: 'repetitions' },
  condition: (facts) => facts.usualPainProvisional,
  observes: ['usualPainProvisional'],
  threshold: () => 'usual pain told at a first visit',
  restsOn: 'clinic-choice',
  citations: [],
  settings: ['provisional-usual'],
} as const satisfies Rule;
