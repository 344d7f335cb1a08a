/**
 * What befalls one invented person, drawn before anybody treats them, so that every arm meets the same days:
 * the drift of pain, flares that would begin, answers left out, sessions missed, work overdone.
 */
import type { Seeded } from '../raises/seeded.ts';
import { figures } from './joint-settings.ts';
import type { PersonType } from './person-types.ts';

export interface DrawnDay {
  /** Deviation of the day's pain from its level. */
  readonly drift: number;
  /** A flare begins where this lies under the day's chance. */
  readonly flare: number;
  /** Length of a flare that would begin today, days. */
  readonly flareLength: number;
  readonly answersMorning: boolean;
  readonly comesToSession: boolean;
  /** Under the chance of it, the easier session is taken without being told. */
  readonly easier: number;
  readonly overdoes: number;
  /** How it is overdone: under the share of it a set more, else every set to failure. */
  readonly overdoesHow: number;
  readonly noise: Readonly<Record<'morning' | 'before' | 'during' | 'after' | 'reserve', number>>;
  readonly leftOut: Readonly<
    Record<
      'morning' | 'stiffness' | 'swelling' | 'flare' | 'before' | 'during' | 'after' | 'reserve',
      boolean
    >
  >;
}

export interface DrawnPerson {
  readonly type: PersonType;
  readonly usualPain: number;
  readonly tolerance: number;
  readonly days: readonly DrawnDay[];
}

const drawDay = (type: PersonType, drift: number, random: Seeded): DrawnDay => {
  const leftOut = (): boolean => random.chance(figures.fieldLeftOut);
  return {
    drift,
    flare: random.next(),
    flareLength: Math.max(1, Math.round(type.flareDays * Math.exp(type.flareSpread * random.normal()))),
    answersMorning: !random.chance(type.morningsLeftOut),
    comesToSession: !random.chance(type.sessionsLeftOut),
    easier: random.next(),
    overdoes: random.next(),
    overdoesHow: random.next(),
    noise: {
      morning: random.normal(),
      before: random.normal(),
      during: random.normal(),
      after: random.normal(),
      reserve: random.normal(),
    },
    leftOut: {
      morning: leftOut(),
      stiffness: leftOut(),
      swelling: leftOut(),
      flare: leftOut(),
      before: leftOut(),
      during: leftOut(),
      after: leftOut(),
      reserve: leftOut(),
    },
  };
};

export const drawPerson = (type: PersonType, dayCount: number, random: Seeded): DrawnPerson => {
  const [low, high] = type.usualPain;
  const usualPain = low + (high - low) * random.next();
  const tolerance = type.tolerance * Math.exp(type.toleranceSpread * random.normal());
  let drift = random.normal() * type.scatter;
  const days: DrawnDay[] = [];
  for (let day = 0; day < dayCount; day++) {
    drift = type.likeness * drift + Math.sqrt(1 - type.likeness ** 2) * type.scatter * random.normal();
    days.push(drawDay(type, drift, random));
  }
  return { type, usualPain, tolerance, days };
};
