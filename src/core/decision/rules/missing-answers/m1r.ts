/**
 * A later morning may speak for one that was left out; it lets a bad morning be left out, so it allows
 * repetitions only.
 */
import type { Rule } from '../rule.ts';

export const m1r = {
  id: 'M1r',
  title: 'A later morning speaks for the next one',
  since: 2,
  effect: { largestStep: 'repetitions' },
  condition: (facts) => facts.painNextMorning === null && typeof facts.painLaterMorning === 'number',
  observes: ['painNextMorning', 'painLaterMorning'],
  threshold: () => 'next morning not answered, a later one answered before any new session',
  restsOn: 'clinic-choice',
  citations: [],
  settings: ['later-morning-days'],
} as const satisfies Rule;
