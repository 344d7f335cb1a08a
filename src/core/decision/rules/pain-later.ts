/**
 * Pain after the session is over: two hours, the next morning, and over the week. The published
 * rule allows pain during work if it has settled by the next morning and does not grow from week to
 * week. Compared with the usual pain of the baseline, never with the day or the week before: a worse last
 * week would make this one look better.
 */
import { type Rule, reaches } from './rule.ts';

export const painLaterRules = [
  {
    id: 'P5',
    title: 'Next morning well over usual, or over it twice',
    effect: { decision: 'ease-back' },
    condition: (facts, { top }) =>
      reaches(facts.painNextMorning, top + 2) ||
      (reaches(facts.painNextMorning, top + 1) && facts.previousMorningOverTop),
    observes: ['painNextMorning', 'usualPainTop', 'previousMorningOverTop'],
    threshold: () => 'next morning 2 over the top of usual pain, or 1 over it on two mornings running',
    restsOn: 'source',
    citations: [
      {
        source: 'silbernagel-2007',
        locator: 'pain-monitoring rule, next morning',
        mark: 'memory',
        remark: 'Design and result were seen, the wording of the rule is from memory.',
      },
    ],
    settings: [],
  },
  {
    id: 'P5h',
    title: 'Next morning over usual',
    effect: { decision: 'hold' },
    condition: (facts, { top }) => reaches(facts.painNextMorning, top + 1),
    observes: ['painNextMorning', 'usualPainTop'],
    threshold: () => 'next morning 1 over the top of usual pain',
    restsOn: 'source',
    citations: [
      { source: 'silbernagel-2007', locator: 'pain-monitoring rule, next morning', mark: 'memory' },
    ],
    settings: [],
  },
  {
    id: 'P6',
    title: 'Two hours after, well over usual',
    effect: { decision: 'ease-back' },
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
