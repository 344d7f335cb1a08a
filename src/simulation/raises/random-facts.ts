/** Random facts, every value a fact can take, most of them near the quiet end so that progress is tried too. */
import { type Facts, redFlags } from '#core/decision/facts/facts.ts';
import { effusions, stopReasons, swellings } from '#core/record/record.ts';
import type { Seeded } from './seeded.ts';

const pain = (random: Seeded, quiet: number): number | null =>
  random.chance(0.04) ? null : random.chance(quiet) ? random.below(4) : random.below(11);

const days = (random: Seeded, likelyNone: number, most: number): number =>
  random.chance(likelyNone) ? 0 : random.below(most);

/** Drawn in the order written: the seed gives the same facts only so. */
const randomSwelling = (random: Seeded, quiet: number) => ({
  swelling: random.chance(quiet)
    ? random.pick(['none', 'not-applicable'] as const)
    : random.pick([...swellings, null, 'not-applicable'] as const),
  usualSwelling: random.pick(['none', 'slight'] as const),
  effusion: random.chance(quiet)
    ? random.pick(['zero', 'trace', 'not-applicable'] as const)
    : random.pick([...effusions, 'not-applicable'] as const),
  effusionRun: random.below(4),
  usualEffusion: random.pick(['zero', 'trace', '1+'] as const),
  stiffnessMinutes: random.chance(0.1)
    ? random.pick([null, 'not-applicable'] as const)
    : random.below(random.chance(quiet) ? 31 : 200),
  usualStiffnessMinutes: random.below(90),
});

/** Drawn last, so that the facts of version 1 stay as the seed gave them. */
const randomFactsSinceVersion2 = (random: Seeded, quiet: number, rarely: number) => ({
  painLaterMorning: random.chance(0.6) ? ('not-applicable' as const) : pain(random, quiet),
  twoOverBefore: random.chance(rarely),
  morningsOverTop: days(random, 1 - rarely, 9),
  usualPainProvisional: random.chance(rarely),
  usualPainRise: random.chance(0.1) ? null : random.below(random.chance(quiet) ? 2 : 6) - 1,
});

/** `quiet` 0…1: how likely each fact is to be unremarkable. */
export const randomFacts = (random: Seeded, quiet = random.next()): Facts => {
  const rarely = (1 - quiet) * 0.5;
  const usualPain = random.chance(0.05) ? null : random.below(random.chance(quiet) ? 4 : 11);
  return {
    painBefore: pain(random, quiet),
    painDuring: pain(random, quiet),
    painAfter: pain(random, quiet),
    painTwoHours: random.chance(0.4) ? 'not-applicable' : pain(random, quiet),
    painNextMorning: pain(random, quiet),
    usualPain,
    usualPainTop: usualPain === null || random.chance(0.2) ? null : usualPain + random.below(3),
    painCeiling: 5 + random.below(3),
    morningPainMean7: random.chance(0.15) ? null : Math.round(random.next() * 10 * (1 - quiet * 0.7) * 7) / 7,
    previousMorningOverTop: random.chance(rarely),
    previousPeakEight: random.chance(rarely),
    ...randomSwelling(random, quiet),
    flareDays: days(random, 1 - rarely, 15),
    inflammatoryArthritis: random.chance(0.4),
    otherJointsFlared: days(random, 1 - rarely, 4),
    fatigueRise: random.chance(0.3) ? null : random.below(random.chance(quiet) ? 2 : 8) - 2,
    redFlags: random.chance(0.03)
      ? null
      : random.chance(rarely * 0.3)
        ? [random.pick(redFlags), random.pick(redFlags)]
        : [],
    repetitionsDonePercent: random.chance(0.04) ? null : random.chance(quiet) ? 100 : random.below(131),
    stopReason: random.pick(stopReasons),
    reserveShortfall: random.chance(quiet) ? 0 : random.below(6) - 2,
    prescribedReserve: random.below(4),
    sessionsOnTarget: random.chance(quiet) ? 1 + random.below(3) : random.below(4),
    missedSessions14: days(random, 1 - rarely, 7),
    plannedSessions14: random.below(8),
    gapDays: random.below(random.chance(quiet) ? 14 : 40),
    extraPainRelief: random.chance(rarely),
    treatmentChangeDays: random.chance(1 - rarely) ? null : random.below(40),
    overdone: random.chance(rarely),
    gaveWay: random.chance(rarely),
    baselineAgeDays: random.below(random.chance(quiet) ? 43 : 90),
    baselineLatched: random.chance(rarely),
    symptomSignal: random.chance(rarely),
    ...randomFactsSinceVersion2(random, quiet, rarely),
  };
};
