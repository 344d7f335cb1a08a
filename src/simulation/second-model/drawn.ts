/** A person and their days, drawn before anybody treats them, so that every arm meets the same ones. */
import { type Seeded, seeded } from '../raises/seeded.ts';
import { conduct, muscle, ratings, tissue } from './figures.ts';
import { drawFlare, type Flare, flarePoints } from './flare.ts';
import type { SecondType } from './people.ts';

const choices = ['overdoes', 'how', 'says', 'ownEasier', 'swelling', 'notices'] as const;
const noises = ['morning', 'before', 'during', 'after', 'reserve'] as const;
const fields = ['pain', 'stiffness', 'swelling', 'flare', 'before', 'during', 'after', 'reserve'] as const;

export interface SecondDay {
  /** Points of the day that no load brought: scatter, and the rest of the level. */
  readonly scatter: number;
  readonly evening: number;
  readonly level: number;
  readonly isFlare: boolean;
  readonly flarePoints: number;
  readonly isFirstOfFlare: boolean;
  /** The flare that load may set off today, and the number a chance has to exceed for it. */
  readonly byLoad: Flare;
  readonly byLoadAt: number;
  readonly isMorningMissing: boolean;
  readonly comes: boolean;
  /** From 0 up to 1 each. */
  readonly at: Readonly<Record<(typeof choices)[number], number>>;
  /** Normal, mean 0, deviation 1. */
  readonly noise: Readonly<Record<(typeof noises)[number], number>>;
  readonly leftOut: Readonly<Record<(typeof fields)[number], boolean>>;
}

export interface SecondPerson {
  readonly type: SecondType;
  readonly usualPain: number;
  /** Multiple of the first session. */
  readonly capacity: number;
  readonly trainability: number;
  readonly firstReserve: number;
  readonly days: readonly SecondDay[];
}

const between = (random: Seeded, [low, high]: readonly [number, number]): number =>
  low + (high - low) * random.next();

const logNormal = (random: Seeded, spread: number): number => Math.exp(spread * random.normal());

const each = <Name extends string, T>(names: readonly Name[], draw: () => T): Record<Name, T> =>
  Object.fromEntries(names.map((name) => [name, draw()])) as Record<Name, T>;

/** Each its own stream, so that a longer course begins with the same days. */
const streams = (random: Seeded) =>
  each(['person', 'scatter', 'flare', 'answers', 'conduct', 'noise'], () => seeded(random.below(2 ** 32)));

const sessionsMissedOn = (type: SecondType, day: number): number => {
  const late = Math.min(1, day / conduct.laterFromDay);
  return type.sessionsMissed + late * (conduct.sessionsMissedLater - conduct.sessionsMissed);
};

type Stream = ReturnType<typeof streams>;

/** Scatter of each day, like the day before, and the evening's own. */
const drawScatter = (random: Seeded, spread: number, days: number) => {
  let scatter = 0;
  return Array.from({ length: days }, (_, day) => {
    const likeness = day === 0 ? 0 : ratings.likeness;
    scatter = likeness * scatter + Math.sqrt(1 - likeness ** 2) * spread * random.normal();
    return { scatter, evening: ratings.eveningScatter * random.normal() };
  });
};

/** Flares by themselves, and for each day the one that load may set off. */
const drawFlares = (random: Seeded, type: SecondType, days: number) => {
  let running: { readonly flare: Flare; readonly began: number } | null = null;
  return Array.from({ length: days }, (_, day) => {
    const begins = random.chance(type.flaresPerWeek / 7);
    const next = drawFlare(type.inflammatory, random);
    if (running && day - running.began >= running.flare.days) running = null;
    const isFirstOfFlare: boolean = running === null && begins;
    if (isFirstOfFlare) running = { flare: next, began: day };
    return {
      isFlare: running !== null,
      isFirstOfFlare,
      flarePoints: running ? flarePoints(running.flare, day - running.began) : 0,
      byLoad: drawFlare(type.inflammatory, random),
      byLoadAt: random.next(),
    };
  });
};

/** What is left out of the forms. */
const drawAnswers = (random: Seeded, missing: number, days: number) => {
  let isMorningMissing = false;
  return Array.from({ length: days }, () => {
    const again = isMorningMissing ? conduct.missingAgain : 0;
    isMorningMissing = random.chance(missing * (1 - conduct.missingAgain) + again);
    return { isMorningMissing, leftOut: each(fields, () => random.chance(conduct.fieldMissing)) };
  });
};

const drawSlowly = (random: Seeded, creep: number): ((day: number) => number) => {
  const length = between(random, ratings.waveDays);
  const phase = random.next() * 2 * Math.PI;
  return (day) =>
    ratings.wave * (Math.sin((2 * Math.PI * day) / length + phase) - Math.sin(phase)) + (creep * day) / 7;
};

const drawConduct = ({ conduct: random, noise }: Stream, type: SecondType, day: number) => ({
  comes: !random.chance(sessionsMissedOn(type, day)),
  at: each(choices, () => random.next()),
  noise: each(noises, () => noise.normal()),
});

export const drawSecondPerson = (type: SecondType, days: number, random: Seeded): SecondPerson => {
  const of = streams(random);
  const usualPain = between(of.person, type.usualPain);
  const spread =
    ratings.scatter *
    type.scatter *
    (1 + ratings.scatterByLevel * (usualPain - 3)) *
    logNormal(of.person, ratings.scatterDiffers);
  const capacity = type.capacity * logNormal(of.person, tissue.capacityDiffers);
  const trainability = logNormal(of.person, muscle.trainabilityDiffers);
  const firstReserve = between(of.person, muscle.firstReserve);
  const missing = type.morningsMissing * (1 + conduct.missingDiffers * between(of.person, [-1, 1]));
  const slowly = drawSlowly(of.person, type.creep);
  const scatters = drawScatter(of.scatter, spread, days);
  const flares = drawFlares(of.flare, type, days);
  const answers = drawAnswers(of.answers, missing, days);
  const drawn = scatters.map((scatter, day): SecondDay => {
    const flare = flares[day]!;
    const level = flare.flarePoints + slowly(day);
    return { ...scatter, ...flare, level, ...answers[day]!, ...drawConduct(of, type, day) };
  });
  return { type, usualPain, capacity, trainability, firstReserve, days: drawn };
};
