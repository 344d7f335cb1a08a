/** Nearer to failure than prescribed: what was done was more than what was asked. */
import type { Rule } from '../rule.ts';

export const c3 = {
  id: 'C3',
  title: 'Nearer to failure than prescribed',
  since: 1,
  effect: { decision: 'hold' },
  condition: (facts, _derived, settings) =>
    facts.reserveShortfall >= settings['reserve-shortfall'] && facts.prescribedReserve >= 1,
  observes: ['reserveShortfall', 'prescribedReserve'],
  threshold: (settings) =>
    `${settings['reserve-shortfall']} or more repetitions nearer to failure than prescribed, or not said`,
  restsOn: 'clinic-choice',
  citations: [],
  settings: ['reserve-shortfall'],
} as const satisfies Rule;
