/**
 * Pain after the session is over: two hours, the next morning, and over the week. The published
 * rule allows pain during work if it has settled by the next morning and does not grow from week to
 * week. Compared with the usual pain of the baseline, never with the day or the week before: a worse last
 * week would make this one look better.
 */
import type { Facts } from '../facts/facts.ts';
import { type Rule, reaches } from './rule.ts';

/** Rise over the usual band that exceeds measurement error; twice within days it is no scatter. */
const repeatedRise = 2;

/** The next morning, or the later one that speaks for it. */
const nextOrLaterReaches = ({ painNextMorning, painLaterMorning }: Facts, height: number): boolean =>
  reaches(painNextMorning, height) || reaches(painLaterMorning, height);

export const painLaterRules = [
  {
    id: 'P5',
    title: 'Next morning well over usual, or over it twice',
    effect: { decision: 'ease-back' },
    silentWithoutUsualSince: 2,
    condition: (facts, { top }, settings) =>
      nextOrLaterReaches(facts, top + settings['morning-at-once']) ||
      (nextOrLaterReaches(facts, top + repeatedRise) && facts.twoOverBefore),
    observes: ['painNextMorning', 'painLaterMorning', 'usualPainTop', 'twoOverBefore'],
    threshold: (settings) =>
      `next or later morning ${settings['morning-at-once']} over the top of usual pain, or ${repeatedRise} over it as on one of the two mornings before the session`,
    restsOn: 'source',
    citations: [
      {
        source: 'silbernagel-2007',
        locator: 'pain-monitoring rule, next morning',
        mark: 'memory',
        remark: 'Design and result were seen, the wording of the rule is from memory.',
      },
      {
        source: 'alghadir-2018',
        locator: 'detectable change 1.33',
        mark: 'seen',
        remark:
          'A rise of 2 exceeds the error in knee osteoarthritis; that it has to come twice is a choice.',
      },
    ],
    settings: ['morning-at-once'],
    version1: {
      condition: (facts, { top }) =>
        reaches(facts.painNextMorning, top + 2) ||
        (reaches(facts.painNextMorning, top + 1) && facts.previousMorningOverTop),
      observes: ['painNextMorning', 'usualPainTop', 'previousMorningOverTop'],
      threshold: () => 'next morning 2 over the top of usual pain, or 1 over it on two mornings running',
      settings: [],
    },
  },
  {
    id: 'P5h',
    title: 'Next morning over usual',
    effect: { decision: 'hold' },
    silentWithoutUsualSince: 2,
    condition: (facts, { top }) => nextOrLaterReaches(facts, top + 1),
    observes: ['painNextMorning', 'painLaterMorning', 'usualPainTop'],
    threshold: () => 'next or later morning 1 over the top of usual pain',
    restsOn: 'source',
    citations: [
      { source: 'silbernagel-2007', locator: 'pain-monitoring rule, next morning', mark: 'memory' },
    ],
    settings: [],
    version1: {
      condition: (facts, { top }) => reaches(facts.painNextMorning, top + 1),
      observes: ['painNextMorning', 'usualPainTop'],
      threshold: () => 'next morning 1 over the top of usual pain',
    },
  },
  {
    id: 'P5r',
    title: 'Many mornings in a row over usual',
    since: 2,
    silentWithoutUsualSince: 2,
    effect: { decision: 'hold', contact: 'routine' },
    condition: (facts, _derived, settings) => facts.morningsOverTop >= settings['mornings-over-top'],
    observes: ['morningsOverTop', 'usualPainTop'],
    threshold: (settings) =>
      `${settings['mornings-over-top']} answered mornings in a row 1 over the top of usual pain`,
    restsOn: 'source',
    citations: [
      {
        source: 'silbernagel-2007',
        locator: 'pain-monitoring rule, week to week',
        mark: 'memory',
        remark: 'The number of mornings is a choice.',
      },
    ],
    settings: ['mornings-over-top'],
  },
  {
    id: 'P6',
    title: 'Two hours after, well over usual',
    effect: { decision: 'ease-back' },
    silentWithoutUsualSince: 2,
    condition: (facts, { top }) => reaches(facts.painTwoHours, top + 2),
    observes: ['painTwoHours', 'usualPainTop'],
    threshold: () => 'two hours after 2 over the top of usual pain',
    restsOn: 'source',
    citations: [{ source: 'two-hour-rule', locator: 'restated advice', mark: 'second-hand' }],
    settings: [],
  },
  {
    id: 'P6h',
    title: 'Two hours after, over usual',
    effect: { decision: 'hold' },
    silentWithoutUsualSince: 2,
    condition: (facts, { top }) => reaches(facts.painTwoHours, top + 1),
    observes: ['painTwoHours', 'usualPainTop'],
    threshold: () => 'two hours after 1 over the top of usual pain',
    restsOn: 'source',
    citations: [{ source: 'two-hour-rule', locator: 'restated advice', mark: 'second-hand' }],
    settings: [],
  },
  {
    id: 'P7',
    title: 'A week of mornings well over usual',
    effect: { decision: 'ease-back' },
    silentWithoutUsualSince: 2,
    condition: (facts, { usual }) => facts.morningPainMean7 !== null && facts.morningPainMean7 - usual >= 2,
    observes: ['morningPainMean7', 'usualPain'],
    threshold: () => 'mean of seven mornings 2 over usual pain',
    restsOn: 'source',
    citations: [
      { source: 'silbernagel-2007', locator: 'pain-monitoring rule, week to week', mark: 'memory' },
    ],
    settings: [],
  },
  {
    id: 'P7h',
    title: 'A week of mornings over usual',
    effect: { decision: 'hold' },
    silentWithoutUsualSince: 2,
    condition: (facts, { usual }) => facts.morningPainMean7 !== null && facts.morningPainMean7 - usual >= 1,
    observes: ['morningPainMean7', 'usualPain'],
    threshold: () => 'mean of seven mornings 1 over usual pain',
    restsOn: 'source',
    citations: [
      { source: 'silbernagel-2007', locator: 'pain-monitoring rule, week to week', mark: 'memory' },
      { source: 'salaffi-2004', locator: 'slight change 1 point', mark: 'seen' },
    ],
    settings: [],
  },
] as const satisfies readonly Rule[];
