/**
 * The morning after the session. The published rule allows pain during work if it has settled by the next morning.
 * Compared with usual pain, never with the day before: a worse last week would make this one look better.
 */
import { type Rule, reaches } from '../rule.ts';
import { nextOrLaterReaches } from './next-or-later.ts';

/** Rise over the usual band that exceeds measurement error; twice within days it is no scatter. */
const repeatedRise = 2;
/** Rises over the usual band in version 1: at once, and on two mornings running. */
const inVersion1 = { atOnce: 2, twice: 1 } as const;

export const p5 = {
  id: 'P5',
  title: 'Next morning well over usual, or over it twice',
  since: 1,
  effect: { decision: 'ease-back' },
  isSilentWithoutUsual: true,
  condition: (facts, { top }, settings) =>
    nextOrLaterReaches(facts, top + settings['ease-back-rise']) ||
    (nextOrLaterReaches(facts, top + repeatedRise) && facts.twoOverBefore),
  observes: ['painNextMorning', 'painLaterMorning', 'usualPainTop', 'twoOverBefore'],
  threshold: (settings) =>
    `next or later morning ${settings['ease-back-rise']} over the top of usual pain, or ${repeatedRise} over it as on one of the two mornings before the session`,
  restsOn: 'source',
  citations: [
    {
      source: 'silbernagel-2007',
      studied: '38 people with Achilles tendinopathy',
      number: 'none',
      locator: 'pain-monitoring rule, next morning',
      mark: 'memory',
      remark: 'Design and result were seen, the wording of the rule is from memory.',
    },
    {
      source: 'alghadir-2018',
      studied: '121 people with knee osteoarthritis, who rated twice within 24 hours',
      number: 'near-source',
      locator: 'detectable change 1.33',
      mark: 'seen',
      remark: 'A rise of 2 exceeds the error in knee osteoarthritis; that it has to come twice is a choice.',
    },
  ],
  settings: ['ease-back-rise'],
  upTo: {
    1: {
      isSilentWithoutUsual: false,
      condition: (facts, { top }) =>
        reaches(facts.painNextMorning, top + inVersion1.atOnce) ||
        (reaches(facts.painNextMorning, top + inVersion1.twice) && facts.previousMorningOverTop),
      observes: ['painNextMorning', 'usualPainTop', 'previousMorningOverTop'],
      threshold: () =>
        `next morning ${inVersion1.atOnce} over the top of usual pain, or ${inVersion1.twice} over it on two mornings running`,
      settings: [],
    },
  },
} as const satisfies Rule;
