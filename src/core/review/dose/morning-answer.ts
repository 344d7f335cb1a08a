/**
 * How one joint answered a session by the next morning: at its usual or over it, or why that is not to be said.
 *
 * "At usual" is the morning alone: no rule finds its pain, swelling or stiffness over the baseline that was set by
 * then. The engine's "tolerated" (`src/core/decision/dose/tolerated.ts`) asks more: a full session, and no complaint
 * of any rule, of the session itself as well and for every joint of the item. So what was tolerated was never over
 * usual, and what was at usual need not have been tolerated. The two words are kept apart.
 *
 * A flare leaves its days out, one that began the morning after as well: these counts say nothing of flares that a
 * dose set off.
 */
import { reasonsFor } from '#core/decision/decide.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { IndexedSession } from '#core/decision/facts/indexed-record.ts';
import { type Moment, mornings } from '#core/decision/facts/judged-session.ts';
import { morningAfter } from '#core/decision/facts/morning-after.ts';
import { flareDaysAt } from '#core/decision/facts/morning-facts.ts';
import { indexRecord } from '#core/decision/facts/record-index.ts';
import type { RuleId } from '#core/decision/rules/table.ts';
import type { EngineSettingValues } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { dayNumber } from '#core/time/day.ts';
import type { DoseNotKnown } from './dose-done.ts';

type Complaint = 'pain' | 'swelling' | 'stiffness';

/** The rules that look at the morning after beside its baseline; the severer ones fire with them. */
const complaintOf: ReadonlyMap<string, Complaint> = new Map<RuleId, Complaint>([
  ['P5h', 'pain'],
  ['W1s', 'swelling'],
  ['W2', 'swelling'],
  ['W3', 'swelling'],
  ['T1', 'stiffness'],
  ['T2', 'stiffness'],
]);

/** Why a session is not counted, neither way. */
export const leftOutReasons = [
  'flare',
  'no-answer',
  'morning-to-come',
  'usual-not-set',
  'another-session',
  'time-in-doubt',
  'more-done',
  'dose-not-known',
  'nothing-done',
  'joint-not-loaded',
] as const;
export type LeftOut = (typeof leftOutReasons)[number];

export type MorningAnswer =
  | { readonly is: 'at-usual' }
  | { readonly is: 'over-usual'; readonly over: readonly Complaint[] }
  | { readonly is: 'left-out'; readonly why: LeftOut; readonly doseNotKnown?: DoseNotKnown };

export const leftOut = (why: LeftOut) => ({ is: 'left-out', why }) as const;

interface Looked {
  readonly record: PatientRecord;
  readonly joint: Joint;
  /** What is not known by then is left out. */
  readonly at: Moment;
  readonly settings: EngineSettingValues;
}

export const morningAnswer = (
  { record, joint, at, settings }: Looked,
  indexed: IndexedSession,
): MorningAnswer => {
  const { session, day } = indexed;
  const index = indexRecord(record);
  if (session.clockDoubtful) return leftOut('time-in-doubt');
  const list = mornings(index, joint);
  if (flareDaysAt(list, day, at.instant) + flareDaysAt(list, day + 1, at.instant) > 0)
    return leftOut('flare');
  const then = morningAfter(index, indexed, joint, at.instant, settings);
  if (then === 'no-answer') return leftOut(day + 1 >= dayNumber(at.day) ? 'morning-to-come' : then);
  if (typeof then === 'string') return leftOut(then);
  const facts = factsFor(record, joint, then, settings);
  if (facts.usualPain === null) return leftOut('usual-not-set');
  const reasons = reasonsFor(facts, settings, ({ id }) => complaintOf.has(id));
  const over = [...new Set(reasons.map(({ rule }) => complaintOf.get(rule)!))];
  if (over.length > 0) return { is: 'over-usual', over };
  // At usual is only what was answered in full.
  return [facts.painNextMorning, facts.swelling, facts.stiffnessMinutes].includes(null)
    ? leftOut('no-answer')
    : { is: 'at-usual' };
};
