/**
 * Decisions as they stand between load and symptoms: one a day and joint, the one that settled it.
 * The engine also answers right after a session, when the morning is still open; that answer gives way
 * to the next morning's unless it was a danger.
 */
import type { DecisionWord, Reason, Step } from '../decision/answers.ts';
import type { Joint } from '../exercises/joints.ts';
import { type Day, daysBetween } from '../time/day.ts';

export interface ReviewDecision {
  readonly id: string;
  readonly joint: Joint;
  readonly day: Day;
  readonly evaluatedAt: number;
  readonly cause: 'session' | 'morning' | 'amendment' | 'clinician';
  readonly decision: DecisionWord;
  readonly largestStep: Step | null;
  readonly reasons: readonly Reason[];
}

const isDanger = (row: ReviewDecision): boolean => row.decision === 'pause' || row.decision === 'ease-back';

/** A hold or progress after a session, followed by another decision by the next day. */
const isInterim = (row: ReviewDecision, later: readonly ReviewDecision[]): boolean =>
  row.cause === 'session' && !isDanger(row) && later.some((next) => daysBetween(row.day, next.day) <= 1);

/** The settled decisions of a joint, oldest first; the last of each day. */
export const settledDecisions = <D extends ReviewDecision>(all: readonly D[], joint: Joint): readonly D[] => {
  const own = all.filter((row) => row.joint === joint).sort((a, b) => a.evaluatedAt - b.evaluatedAt);
  const settled = own.filter((row, place) => !isInterim(row, own.slice(place + 1, place + 8)));
  const byDay = new Map(settled.map((row) => [row.day, row]));
  return [...byDay.values()];
};

export interface DecisionRun<D extends ReviewDecision = ReviewDecision> {
  /** The decision that began the run. */
  readonly first: D;
  readonly last: D;
  /** Decisions of the same word in a row. */
  readonly count: number;
}

/** Runs of the same answer: a gate stands where the answer changed. */
export const decisionRuns = <D extends ReviewDecision>(settled: readonly D[]): readonly DecisionRun<D>[] => {
  const runs: DecisionRun<D>[] = [];
  for (const row of settled) {
    const open = runs.at(-1);
    if (open && open.last.decision === row.decision) {
      runs[runs.length - 1] = { ...open, last: row, count: open.count + 1 };
    } else runs.push({ first: row, last: row, count: 1 });
  }
  return runs;
};
