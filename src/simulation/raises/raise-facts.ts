/** One symptom made worse in a set of facts, everything else held: the raises the monotone property is tried with. */
import { type Facts, redFlags } from '#core/decision/facts/facts.ts';
import { effusions, swellings } from '#core/record/record.ts';
import type { Seeded } from './seeded.ts';

type Raise = (facts: Facts, random: Seeded) => Facts | null;

const scoreNames = [
  'painBefore',
  'painDuring',
  'painAfter',
  'painTwoHours',
  'painNextMorning',
  'painLaterMorning',
] as const;

const scoreRaises: readonly Raise[] = scoreNames.map((name) => (facts, random) => {
  const score = facts[name];
  if (typeof score !== 'number' || score >= 10) return null;
  return { ...facts, [name]: score + 1 + random.below(10 - score) };
});

const flagNames = [
  'previousMorningOverTop',
  'previousPeakEight',
  'twoOverBefore',
  'usualPainProvisional',
  'symptomSignal',
  'gaveWay',
] as const;

const flagRaises: readonly Raise[] = flagNames.map(
  (name) => (facts) => (facts[name] ? null : { ...facts, [name]: true }),
);

const countNames = ['effusionRun', 'flareDays', 'otherJointsFlared', 'morningsOverTop'] as const;

const countRaises: readonly Raise[] = countNames.map((name) => (facts, random) => ({
  ...facts,
  [name]: facts[name] + 1 + random.below(8),
}));

const raiseMean: Raise = (facts, random) =>
  facts.morningPainMean7 === null || facts.morningPainMean7 >= 10
    ? null
    : { ...facts, morningPainMean7: Math.min(10, facts.morningPainMean7 + random.next() * 3) };

const riseNames = ['fatigueRise', 'usualPainRise'] as const;

const riseRaises: readonly Raise[] = riseNames.map((name) => (facts, random) => {
  const rise = facts[name];
  return rise === null ? null : { ...facts, [name]: rise + 1 + random.below(4) };
});

const raiseStiffness: Raise = (facts, random) =>
  typeof facts.stiffnessMinutes !== 'number'
    ? null
    : { ...facts, stiffnessMinutes: facts.stiffnessMinutes + 1 + random.below(90) };

const raiseSwelling: Raise = (facts, random) => {
  const place = swellings.indexOf(facts.swelling as never);
  if (place < 0 || place === swellings.length - 1) return null;
  return { ...facts, swelling: random.pick(swellings.slice(place + 1)) };
};

const raiseEffusion: Raise = (facts, random) => {
  const place = effusions.indexOf(facts.effusion as never);
  if (place < 0 || place === effusions.length - 1) return null;
  return { ...facts, effusion: random.pick(effusions.slice(place + 1)) };
};

const raiseFlags: Raise = (facts, random) => ({
  ...facts,
  redFlags: [...(facts.redFlags ?? []), random.pick(redFlags)],
});

const raiseStop: Raise = (facts) =>
  facts.stopReason === 'joint-pain' ? null : { ...facts, stopReason: 'joint-pain' };

const factRaises: readonly Raise[] = [
  ...scoreRaises,
  ...flagRaises,
  ...countRaises,
  raiseMean,
  ...riseRaises,
  raiseStiffness,
  raiseSwelling,
  raiseEffusion,
  raiseFlags,
  raiseStop,
];

/** A raise that applies; red flags always do, so there is one. */
export const raiseFacts = (facts: Facts, random: Seeded): Facts => {
  for (;;) {
    const raised = random.pick(factRaises)(facts, random);
    if (raised) return raised;
  }
};
