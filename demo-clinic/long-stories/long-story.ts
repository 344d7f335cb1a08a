/**
 * Invented people over a year, told by rules instead of rows: what a morning and a session are like on
 * a day. Nothing is drawn at random; the scatter is a fixed pattern. Beside it stands what a
 * physiotherapist would expect on chosen days. Day 0 is a Monday.
 */
import type { DecisionWord } from '#core/decision/answers.ts';
import type { CareEvent } from '#core/episode/care-event.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { Swelling } from '#core/record/record.ts';

export interface YearMorning {
  readonly pain: number | null;
  readonly stiffness?: number;
  readonly swelling?: Swelling;
  readonly flare?: boolean;
  readonly relief?: boolean;
}

export interface YearSession {
  readonly before: number | null;
  readonly during: number | null;
  readonly after: number | null;
  readonly relief?: boolean;
  readonly extra?: boolean;
  readonly gaveWay?: boolean;
  /** Repetitions in reserve not said. */
  readonly reserveOpen?: boolean;
}

export interface BaselineToSet {
  readonly day: number;
  readonly usualPain: number;
  /** Left out = usual pain, the published behaviour. */
  readonly top?: number;
  /** Left out = as preselected from usual pain. */
  readonly ceiling?: number;
}

interface YearExpected {
  readonly day: number;
  readonly decision: DecisionWord;
  readonly why: string;
}

interface YearDisagreement {
  readonly day: number;
  readonly expected: DecisionWord;
  readonly engine: DecisionWord;
  readonly why: string;
}

export interface LongStory {
  readonly id: string;
  readonly who: string;
  readonly shows: string;
  readonly joint: Joint;
  readonly inflammatory: boolean;
  readonly stiffness: number;
  readonly ownedLoadsKg: readonly number[];
  readonly dose: LowLoadDose;
  /** 0 = Monday. */
  readonly weekdays: readonly number[];
  readonly setsBaseline: readonly BaselineToSet[];
  /** Agreed breaks: not planned, first and last day. */
  readonly breaks?: readonly (readonly [number, number])[];
  /** Days on which a clinician reopens a pause, for the easier session first. */
  readonly resumes?: readonly number[];
  readonly events?: readonly { readonly day: number; readonly kind: CareEvent['kind'] }[];
  readonly morning: (day: number) => YearMorning | null;
  /** Asked on the days the plan and the product leave a session for. */
  readonly session: (day: number) => YearSession | null;
  readonly expected: readonly YearExpected[];
  readonly disagreements: readonly YearDisagreement[];
  /** Repetitions asked times load after the year, against the start. */
  readonly endsAt: 'above' | 'same' | 'below';
}

/** −1, 0 or 1, mostly 0, in a pattern of eleven days that no week repeats. */
export const wobble = (day: number): number => [0, 0, -1, 0, 0, 1, 0, -1, 0, 0, 0][day % 11]!;

/** Downward only: never over the level. */
const dip = (day: number): number => Math.min(0, wobble(day));

export const within = (day: number, from: number, to: number): boolean => day >= from && day <= to;

export const score = (pain: number): number => Math.max(0, Math.min(10, Math.round(pain)));

export const quietMorning = (level: number, day: number): YearMorning => ({ pain: score(level + dip(day)) });

export const quietSession = (level: number, day: number): YearSession => ({
  before: score(level + dip(day)),
  during: score(level + 1 + dip(day)),
  after: score(level + dip(day)),
});

/** New usual values every five weeks at one level. */
export const everyFiveWeeks = (usualPain: number, from = 0, to = 364): readonly BaselineToSet[] =>
  Array.from({ length: Math.floor((to - from) / 35) + 1 }, (_, place) => ({
    day: from + 35 * place,
    usualPain,
  }));

export const startingDose = (
  exerciseId: string,
  side: 'left' | 'right',
  loadKg: number,
  oneRepMaxKg: number,
): LowLoadDose => ({
  method: 'low-load',
  exerciseId,
  side,
  sets: 3,
  repetitions: { low: 15, high: 21 },
  reserve: 2,
  restSeconds: 90,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  loadKg,
  oneRepMaxKg,
});
