/** More pain than usual before the session, also where it is low. */
import { type Rule, reaches } from '../rule.ts';

/** Rise over the usual band that exceeds measurement error and matters to people. */
const importantRise = 2;

export const p3b = {
  id: 'P3b',
  title: 'More pain than usual before the session',
  since: 1,
  effect: { decision: 'hold' },
  isSilentWithoutUsual: true,
  condition: (facts, { top }) => reaches(facts.painBefore, top + importantRise),
  observes: ['painBefore', 'usualPainTop'],
  threshold: () => `before the session ${importantRise} or more over the top of usual pain`,
  restsOn: 'source',
  citations: [
    {
      source: 'alghadir-2018',
      studied: '121 people with knee osteoarthritis, who rated twice within 24 hours',
      number: 'near-source',
      locator: 'detectable change 1.33',
      mark: 'seen',
      remark: 'On whole scores a rise of 2 exceeds the error in knee osteoarthritis.',
    },
    {
      source: 'farrar-2001',
      studied:
        '2,724 people with chronic pain in 10 trials, osteoarthritis among them; a fall of pain, not a rise',
      number: 'near-source',
      locator: 'important change about 2 points',
      mark: 'seen',
    },
  ],
  settings: [],
  upTo: { 1: { isSilentWithoutUsual: false } },
} as const satisfies Rule;
