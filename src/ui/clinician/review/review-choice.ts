/** Joint, exercise, measure and window of a review, from the address; anything else falls back to what is there. */

import { type Joint, joints } from '#core/exercises/joints.ts';
import { type LoadMeasure, measuresOf } from '#core/review/load-of-session.ts';
import { reviewWindows } from '#core/review/settings.ts';
import { shortestRange } from '#core/review/zoom.ts';
import { type Day, daysBetween, isDay } from '#core/time/day.ts';
import type { Patient, Version } from '../answers.ts';

export type ReviewQuery = Readonly<Record<string, string | readonly string[] | undefined>>;

export interface ReviewChoice {
  readonly joint: Joint | null;
  readonly joints: readonly Joint[];
  /** The newest version of the line chosen. */
  readonly version: Version | null;
  readonly versions: readonly Version[];
  readonly measure: LoadMeasure;
  readonly measures: readonly LoadMeasure[];
  readonly days: number;
  /** An earlier decision to read in place of the newest. */
  readonly decisionId: string | null;
  /** Every earlier decision, not the newest of them alone. */
  readonly isEveryDecision: boolean;
  /** The days as a table as well. */
  readonly isTable: boolean;
  /** A range to read alone; null = the whole time. */
  readonly range: { readonly from: Day; readonly to: Day } | null;
}

const one = (query: ReviewQuery, name: string): string | null => {
  const value = query[name];
  return typeof value === 'string' ? value : null;
};

const usualDays = 84;

export const daysFrom = (query: ReviewQuery): number => {
  const asked = Number(one(query, 'days'));
  return reviewWindows.find((window) => window.days === asked)?.days ?? usualDays;
};

const rangeFrom = (query: ReviewQuery): ReviewChoice['range'] => {
  const [from, to] = [one(query, 'from'), one(query, 'to')];
  return from && to && isDay(from) && isDay(to) && daysBetween(from, to) >= shortestRange
    ? { from, to }
    : null;
};

/** First and last day of what is read: the range chosen, within what was loaded. */
export const rangeOf = (
  { range }: Pick<ReviewChoice, 'range'>,
  loaded: { readonly since: Day; readonly day: Day },
): { readonly since: Day; readonly today: Day } =>
  range && range.from >= loaded.since && range.to <= loaded.day
    ? { since: range.from, today: range.to }
    : { since: loaded.since, today: loaded.day };

/** The newest signed version of each line, those still in force first. */
export const linesOf = (versions: readonly Version[]): readonly Version[] => {
  const newest = new Map<string, Version>();
  for (const version of versions) if (version.signedAt !== null) newest.set(version.itemId, version);
  return [...newest.values()].sort((a, b) => Number(a.endedAt !== null) - Number(b.endedAt !== null));
};

/** Joints followed first, then those the exercises load. */
const jointsOf = (patient: Patient, versions: readonly Version[]): readonly Joint[] => [
  ...new Set([...(patient.profile?.followedJoints ?? []), ...versions.flatMap((version) => version.joints)]),
];

export const choiceFrom = (query: ReviewQuery, patient: Patient, all: readonly Version[]): ReviewChoice => {
  const versions = linesOf(all);
  const known = jointsOf(patient, versions);
  const asked = joints.find((joint) => joint === one(query, 'joint'));
  const joint = asked && known.includes(asked) ? asked : (known[0] ?? null);
  const version =
    versions.find((row) => row.itemId === one(query, 'line')) ??
    versions.find((row) => joint !== null && row.joints.includes(joint)) ??
    versions[0] ??
    null;
  const measures = version ? measuresOf(version.dose) : [];
  const measure = measures.find((name) => name === one(query, 'measure')) ?? measures[0] ?? 'sets';
  return {
    joint,
    joints: known,
    version,
    versions,
    measure,
    measures,
    days: daysFrom(query),
    decisionId: one(query, 'decision'),
    isEveryDecision: one(query, 'earlier') === 'all',
    isTable: one(query, 'table') === '1',
    range: rangeFrom(query),
  };
};

/** The address of the same review with one thing chosen otherwise. */
export const hrefWith = (patientId: string, choice: ReviewChoice, more: Readonly<Record<string, string>>) => {
  const query = new URLSearchParams({
    ...(choice.joint ? { joint: choice.joint } : {}),
    ...(choice.version ? { line: choice.version.itemId, measure: choice.measure } : {}),
    days: String(choice.days),
    ...more,
  });
  return `/patients/${patientId}/review?${query}`;
};
