/**
 * The review of one joint against one prescribed exercise, day by day: what the picture draws, what
 * the words state and what the table lists are all read from the rows made here.
 */
import type { Joint } from '../exercises/joints.ts';
import type { Baseline, PatientRecord, SessionRecord } from '../record/record.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { addDays, type Day, daysBetween } from '../time/day.ts';
import { type DecisionRun, decisionRuns, type ReviewDecision, settledDecisions } from './decision-markers.ts';
import {
  type Answered,
  type MorningAnswers,
  morningsByDay,
  type SessionPain,
  sessionPain,
} from './joint-answers.ts';
import { type LoadMeasure, loadOfSession, type SessionLoad } from './load-of-session.ts';
import { reviewSettingOf } from './settings.ts';

export interface ReviewRow<D extends ReviewDecision = ReviewDecision> {
  readonly day: Day;
  /** Sessions that held the exercise. */
  readonly loads: readonly SessionLoad[];
  /** Pain of the joint in the day's sessions, with or without the exercise. */
  readonly pains: readonly SessionPain[];
  /** null = no morning was due and none came. */
  readonly morning: MorningAnswers | null;
  readonly decision: D | null;
}

export interface LoadGap {
  readonly from: Day;
  readonly to: Day;
  readonly days: number;
}

export interface ThresholdSpan {
  readonly from: Day;
  readonly to: Day;
  /** null = usual pain was not set. */
  readonly usualPainTop: number | null;
  readonly painCeiling: number;
  readonly setBy: string;
  readonly setOn: Day;
}

export interface ReviewSeries<D extends ReviewDecision = ReviewDecision> {
  readonly since: Day;
  readonly today: Day;
  readonly joint: Joint;
  readonly measure: LoadMeasure;
  /** Days on which something was done, answered, due or decided; oldest first. */
  readonly rows: readonly ReviewRow<D>[];
  readonly loads: readonly SessionLoad[];
  /** Stretches of known load that may be joined; a gap or an unknown figure ends one. */
  readonly loadLine: readonly (readonly SessionLoad[])[];
  readonly gaps: readonly LoadGap[];
  readonly markers: readonly DecisionRun<D>[];
  readonly thresholds: readonly ThresholdSpan[];
}

export interface ReviewWanted<D extends ReviewDecision> {
  readonly record: PatientRecord;
  readonly decisions: readonly D[];
  readonly joint: Joint;
  /** null = the patient has no prescribed exercise; the joint's answers are shown alone. */
  readonly itemId: string | null;
  readonly measure: LoadMeasure;
  readonly since: Day;
  readonly today: Day;
  readonly gapDays?: number;
  /** The clinic’s own numbers; left out, the defaults. */
  readonly settings?: SettingValues;
}

const gapsOf = (loads: readonly SessionLoad[], today: Day, gapDays: number): readonly LoadGap[] => {
  const ends = [...loads.map((load) => load.day), today];
  return loads.flatMap((load, place) => {
    const to = ends[place + 1]!;
    const days = daysBetween(load.day, to);
    return days >= gapDays ? [{ from: load.day, to, days }] : [];
  });
};

const loadLineOf = (
  loads: readonly SessionLoad[],
  gaps: readonly LoadGap[],
): readonly (readonly SessionLoad[])[] => {
  const loadLine: SessionLoad[][] = [];
  let open: SessionLoad[] | null = null;
  for (const load of loads) {
    if (load.value === null) {
      open = null;
      continue;
    }
    if (open && !gaps.some((gap) => gap.to === load.day)) open.push(load);
    else {
      open = [load];
      loadLine.push(open);
    }
  }
  return loadLine;
};

/** Baseline values of the joint as they stood over the window. */
const thresholdsOf = (all: readonly Baseline[], joint: Joint, since: Day, today: Day) => {
  const own = all.filter((row) => row.joint === joint && row.setOn <= today);
  return own.flatMap((row, place): readonly ThresholdSpan[] => {
    const next = own[place + 1]?.setOn;
    const from = row.setOn < since ? since : row.setOn;
    const to = next ?? today;
    if (to < since || (next !== undefined && next <= from)) return [];
    const usualPainTop = row.usualPainTop ?? row.usualPain;
    const { acceptablePainLimit: painCeiling, setBy, setOn } = row;
    return [{ from, to, usualPainTop, painCeiling, setBy, setOn }];
  });
};

/** The thresholds in force on a day; null = none were set by then. */
export const topOn = ({ thresholds }: Pick<ReviewSeries, 'thresholds'>, day: Day): ThresholdSpan | null =>
  thresholds.findLast((span) => span.from <= day && day <= span.to) ?? null;

/** Points of pain over the top of usual of that day; null = not over it, not given, or usual pain was not set. */
export const overUsualOn = (
  series: Pick<ReviewSeries, 'thresholds'>,
  day: Day,
  pain: Answered,
): number | null => {
  const top = topOn(series, day)?.usualPainTop ?? null;
  return typeof pain === 'number' && top !== null && pain > top ? pain - top : null;
};

const byDay = <T extends { readonly day: Day }>(all: readonly T[]): ReadonlyMap<Day, readonly T[]> => {
  const days = new Map<Day, T[]>();
  for (const one of all) {
    const found = days.get(one.day);
    if (found) found.push(one);
    else days.set(one.day, [one]);
  }
  return days;
};

interface Daily<D extends ReviewDecision> extends Pick<ReviewWanted<D>, 'since' | 'today' | 'joint'> {
  readonly sessions: readonly SessionRecord[];
  readonly loads: readonly SessionLoad[];
  readonly mornings: ReadonlyMap<Day, MorningAnswers>;
  readonly settled: readonly D[];
}

const rowsOf = <D extends ReviewDecision>(wanted: Daily<D>): readonly ReviewRow<D>[] => {
  const { since, today, joint, mornings } = wanted;
  const [sessions, loads, settled] = [byDay(wanted.sessions), byDay(wanted.loads), byDay(wanted.settled)];
  const rows: ReviewRow<D>[] = [];
  for (let day = since; day <= today; day = addDays(day, 1)) {
    const row = {
      day,
      loads: loads.get(day) ?? [],
      pains: sessions.get(day)?.flatMap((session) => sessionPain(session, joint) ?? []) ?? [],
      morning: mornings.get(day) ?? null,
      decision: settled.get(day)?.[0] ?? null,
    };
    if (row.loads.length + row.pains.length > 0 || row.morning || row.decision) rows.push(row);
  }
  return rows;
};

export const reviewSeries = <D extends ReviewDecision>(wanted: ReviewWanted<D>): ReviewSeries<D> => {
  const { record, joint, itemId, measure, since, today } = wanted;
  const gapDays = wanted.gapDays ?? reviewSettingOf(wanted.settings, 'review-gap-days');
  const sessions = record.sessions.filter((session) => session.day >= since && session.day <= today);
  const versions = new Map(record.prescriptions.map((version) => [version.id, version]));
  const loads = sessions.flatMap((session) =>
    itemId === null ? [] : (loadOfSession(session, itemId, versions, measure) ?? []),
  );
  const mornings = morningsByDay({ mornings: record.mornings, sessions, joint, since, today });
  const settled = settledDecisions(
    wanted.decisions.filter((row) => row.day >= since && row.day <= today),
    joint,
  );
  const rows = rowsOf({ since, today, joint, sessions, loads, mornings, settled });
  const gaps = gapsOf(loads, today, gapDays);
  return {
    since,
    today,
    joint,
    measure,
    rows,
    loads,
    loadLine: loadLineOf(loads, gaps),
    gaps,
    markers: decisionRuns(settled),
    thresholds: thresholdsOf(record.baselines, joint, since, today),
  };
};
