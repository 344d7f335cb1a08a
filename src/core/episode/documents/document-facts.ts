/**
 * What the record holds of one episode of care, gathered for the papers written at its end, or before it.
 * Everything here was recorded by somebody; nothing is estimated.
 */

import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import type { SideLine } from '#core/assessment/course/side-to-side.ts';
import type { DecisionWord, Reason } from '#core/decision/answers.ts';
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Baseline } from '#core/record/record.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import type { Episode, EpisodeState } from '../episode.ts';
import type { MonitoringHours } from '../monitoring-hours.ts';

export interface DocumentVersion {
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly joints: readonly Joint[];
  readonly cautions: readonly Caution[];
  readonly signedOn: Day;
  readonly signedName: string;
  readonly endedOn: Day | null;
}

/** One prescribed exercise over the episode. */
export interface DocumentItem {
  readonly itemId: string;
  readonly first: DocumentVersion;
  readonly last: DocumentVersion;
  /** It was in force when care ended. */
  readonly atEnd: boolean;
  /** What stood against doing it as planned; null when nothing did. */
  readonly suspended: 'everything-rests' | 'joint-rests' | 'easier-only' | null;
}

/** Of the days on which care went on: a break asks for nothing. */
export interface DocumentLog {
  readonly careDays: number;
  readonly sessions: number;
  readonly easierSessions: number;
  readonly testSessions: number;
  /** null where no programme named days, so that none can be missing. */
  readonly plannedDays: number | null;
  readonly plannedDaysWithout: number;
  readonly mornings: number;
  readonly daysWithoutMorning: number;
}

export interface DocumentDecision {
  readonly joint: Joint;
  readonly decision: DecisionWord;
  readonly day: Day;
  readonly reasons: readonly Pick<Reason, 'rule' | 'threshold'>[];
  readonly answer: {
    readonly kind: 'accept' | 'override';
    readonly decision: DecisionWord | null;
    readonly reason: string;
    readonly by: string;
  } | null;
}

export interface DocumentChecks {
  /** null: no screening is on record. */
  readonly screening: {
    readonly day: Day;
    readonly yes: readonly string[];
    readonly notKnown: readonly string[];
    readonly notAsked: readonly string[];
    readonly no: number;
  } | null;
  /** Each kind measured, with its last day. */
  readonly measured: readonly { readonly title: string; readonly day: Day }[];
  readonly notMeasured: readonly string[];
}

export interface DocumentFacts {
  readonly clinic: {
    readonly name: string;
    readonly phone: string;
    readonly emergencyNumber: string;
    /** null until the clinic has entered one. */
    readonly urgentNumber: string | null;
    readonly monitoringHours: MonitoringHours;
  };
  readonly patient: { readonly name: string; readonly birthDay: Day };
  readonly episode: Episode;
  readonly from: Day;
  /** null: care goes on, and everything is as it stands on the day of writing. */
  readonly end: {
    readonly on: Day;
    readonly state: EpisodeState;
    readonly reason: string;
    readonly by: string;
  } | null;
  /** This episode of care, or another of the same person, goes on. */
  readonly careGoesOn: boolean;
  readonly lines: readonly DocumentItem[];
  readonly log: DocumentLog;
  readonly decisions: readonly DocumentDecision[];
  readonly limits: readonly LimitInForce[];
  readonly checks: DocumentChecks;
  /** What was measured up to then, each with its course. */
  readonly outcomes: readonly OutcomeLine[];
  /** The newest measurement of each side, where both were measured. */
  readonly sides: readonly SideLine[];
  /** The last baseline values of each joint. */
  readonly baselines: readonly Baseline[];
}

interface Counted {
  readonly sessions: readonly {
    readonly day: Day;
    readonly kind: 'full' | 'bad-day' | 'test';
  }[];
  readonly mornings: readonly { readonly day: Day }[];
  /** null: no programme was written. */
  readonly planned: readonly { readonly day: Day }[] | null;
  readonly off: ReadonlySet<Day>;
  readonly from: Day;
  readonly to: Day;
}

/** Counts what was sent and what was not, from the first day of the episode to its last, both included. */
export const countLog = ({ sessions, mornings, planned, off, from, to }: Counted): DocumentLog => {
  const within = <R extends { readonly day: Day }>(rows: readonly R[]) =>
    rows.filter(({ day }) => day >= from && day <= to);
  const [did, woke] = [within(sessions), within(mornings)];
  const didOn = new Set(did.map(({ day }) => day));
  const wokeOn = new Set(woke.map(({ day }) => day));
  const daysIn = daysBetween(from, to) + 1;
  const offDays = [...off].filter((day) => day >= from && day <= to);
  const careDays = daysIn - offDays.length;
  const plannedOn = new Set(
    within(planned ?? [])
      .map(({ day }) => day)
      .filter((day) => !off.has(day)),
  );
  return {
    careDays,
    sessions: did.length,
    easierSessions: did.filter(({ kind }) => kind === 'bad-day').length,
    testSessions: did.filter(({ kind }) => kind === 'test').length,
    plannedDays: planned === null ? null : plannedOn.size,
    plannedDaysWithout: [...plannedOn].filter((day) => !didOn.has(day)).length,
    mornings: wokeOn.size,
    daysWithoutMorning: careDays - [...wokeOn].filter((day) => !off.has(day)).length,
  };
};
