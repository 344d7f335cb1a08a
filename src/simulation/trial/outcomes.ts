/** What a course came to, counted from its days; and the means of many. */
import type { DayOfCourse } from './course.ts';

export interface Outcomes {
  /** Gain over the start. */
  readonly strengthPercent: number;
  /** Days with pain 2 or more over the usual pain of the start. */
  readonly badDays: number;
  /** Days outside a flare with 1 point or more that overload brought. */
  readonly loadCausedBadDays: number;
  readonly flareDays: number;
  readonly cuts: number;
  /** Cuts on a day on which the joint, scatter aside, was at most 0.75 over its start. */
  readonly falseCuts: number;
  readonly raises: number;
  /** Raises on a day on which the joint, scatter aside, was 1.5 or more over its start. */
  readonly raisesOnBadDays: number;
  readonly clinicianActions: number;
  readonly signed: number;
  readonly contacts: number;
  readonly sameDayContacts: number;
  readonly baselines: number;
  readonly sessions: number;
  readonly easierSessions: number;
  /** Stopped by a rule before they began. */
  readonly stoppedSessions: number;
  readonly decisionsInFlare: number;
  readonly progressInFlare: number;
  /** The last dose as a share of the first. */
  readonly finalDose: number;
}

const badRise = 2;
const loadCausedFrom = 1;
const atUsualTo = 0.75;
const trulyBadFrom = 1.5;

const sumOf = (days: readonly DayOfCourse[], of: (day: DayOfCourse) => number): number =>
  days.reduce((sum, day) => sum + of(day), 0);

const countOf = (days: readonly DayOfCourse[], is: (day: DayOfCourse) => boolean): number =>
  days.filter(is).length;

export const outcomesOf = (days: readonly DayOfCourse[]): Outcomes => {
  const last = days.at(-1);
  const inFlare = days.filter(({ isFlare }) => isFlare);
  return {
    strengthPercent: last ? (last.strength - 1) * 100 : 0,
    badDays: countOf(days, ({ rise }) => rise >= badRise),
    loadCausedBadDays: countOf(days, ({ irritation, isFlare }) => !isFlare && irritation >= loadCausedFrom),
    flareDays: inFlare.length,
    cuts: sumOf(days, ({ acts }) => acts.cuts),
    falseCuts: sumOf(days, ({ acts, level }) => (level <= atUsualTo ? acts.cuts : 0)),
    raises: sumOf(days, ({ acts }) => acts.raises),
    raisesOnBadDays: sumOf(days, ({ acts, level }) => (level >= trulyBadFrom ? acts.raises : 0)),
    clinicianActions: sumOf(days, ({ acts }) => acts.clinicianActions),
    signed: sumOf(days, ({ acts }) => acts.signed),
    contacts: sumOf(days, ({ acts }) => acts.contacts),
    sameDayContacts: sumOf(days, ({ acts }) => acts.sameDay),
    baselines: sumOf(days, ({ acts }) => acts.baselines),
    sessions: countOf(days, ({ session }) => session === 'full' || session === 'easier'),
    easierSessions: countOf(days, ({ session }) => session === 'easier'),
    stoppedSessions: countOf(days, ({ session }) => session === 'stopped'),
    decisionsInFlare: sumOf(inFlare, ({ acts }) => acts.decisions),
    progressInFlare: sumOf(inFlare, ({ acts }) => acts.progress),
    finalDose: last?.doseShare ?? 1,
  };
};

export const meanOutcomes = (all: readonly Outcomes[]): Outcomes => {
  const [first] = all;
  if (!first) throw new RangeError('A mean needs at least one outcome.');
  const names = Object.keys(first) as (keyof Outcomes)[];
  return Object.fromEntries(
    names.map((name) => [name, all.reduce((sum, one) => sum + one[name], 0) / all.length]),
  ) as unknown as Outcomes;
};
