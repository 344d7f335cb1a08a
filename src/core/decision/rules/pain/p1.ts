/**
 * Severe pain at any time of the session, for joints followed with a whole 0–10 score. No source here speaks of a
 * person whose usual pain is over 5, so the call waits for the week where the score is near usual.
 */
import { type Rule, reaches } from '../rule.ts';

const severe = { decision: 'ease-back', today: 'bad-day', contact: 'same-day' } as const;

export const p1 = {
  id: 'P1',
  title: 'Severe pain',
  since: 1,
  effect: severe,
  effectFor: (facts, { peak, usual }, settings) =>
    facts.usualPain !== null && peak !== null && peak - usual < settings['urgent-rise']
      ? { ...severe, contact: 'routine' }
      : severe,
  condition: (_facts, { peak }, settings) => reaches(peak, settings['severe-pain']),
  observes: ['peak', 'usualPain'],
  threshold: (settings) =>
    `highest pain ${settings['severe-pain']} or more; the call can wait for the week under ${settings['urgent-rise']} over a known usual pain`,
  restsOn: 'clinic-choice',
  citations: [
    {
      source: 'thieme-2021',
      studied: '1,232 inpatients with back pain',
      number: 'near-source',
      locator: 'grouping of scores, 8–10',
      mark: 'seen',
    },
    {
      source: 'alghadir-2018',
      studied: '121 people with knee osteoarthritis, who rated twice within 24 hours',
      number: 'near-source',
      locator: 'detectable change 1.33',
      mark: 'seen',
      remark: 'On whole scores a rise of 2 exceeds the error in knee osteoarthritis.',
    },
  ],
  settings: ['severe-pain', 'urgent-rise'],
  upTo: {
    1: {
      effectFor: undefined,
      observes: ['peak'],
      threshold: (settings) => `highest pain ${settings['severe-pain']} or more`,
      settings: ['severe-pain'],
    },
  },
} as const satisfies Rule;
