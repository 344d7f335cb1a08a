/** How large a clinic group is, and when in it what happens. The same plan gives the same rows. */
import type { Joint } from '#core/exercises/joints.ts';
import type { Day } from '#core/time/day.ts';

export interface GroupPlan {
  readonly patients: number;
  readonly sessionsEach: number;
}

export const groupSeed = 20_260_131;
export const clinicId = 'bench-clinic';
export const zone = 'Europe/Lisbon';
/** The clinical instant at which the group stands: a Monday morning. */
export const now = Date.parse('2026-03-02T09:00:00Z');
const dayMs = 86_400_000;
const sessionsPerWeek = 3;
/** Evening hour of every session and morning hour of every answer, in UTC. */
const sessionHour = 18;
const morningHour = 7;

export const dayOf = (instant: number): Day => new Date(instant).toISOString().slice(0, 10);

const today = Math.floor(now / dayMs);

/** Day number of a session: three a week, the last one yesterday, so that its morning is today. */
const sessionDayNumber = (plan: GroupPlan, session: number): number =>
  today - 1 - Math.round(((plan.sessionsEach - 1 - session) * 7) / sessionsPerWeek);

export const sessionStart = (plan: GroupPlan, session: number): number =>
  sessionDayNumber(plan, session) * dayMs + sessionHour * 3_600_000;

export const morningAfter = (plan: GroupPlan, session: number): number =>
  (sessionDayNumber(plan, session) + 1) * dayMs + morningHour * 3_600_000;

/** Everybody came a few days before the first session. */
export const intake = (plan: GroupPlan): number => (sessionDayNumber(plan, 0) - 3) * dayMs + 10 * 3_600_000;

export const daysAgo = (days: number): number => now - days * dayMs;

export const patientId = (number: number): string => `bench-patient-${number}`;

/** One joint in five people of four, two in the fifth. */
export const jointsOf = (patient: number): readonly Joint[] =>
  patient % 5 === 0 ? ['right-knee', 'left-knee'] : ['right-knee'];

export const setsOfItem = [3, 2] as const;
/** Versions of each prescribed exercise over the whole time. */
export const versionsOfItem = 4;

export const itemId = (patient: number, item: number): string => `${patientId(patient)}-line-${item}`;
export const prescriptionId = (patient: number, item: number, version: number): string =>
  `${itemId(patient, item)}-v${version}`;

/** From 1; the version in force at a session. */
export const versionAt = (plan: GroupPlan, session: number): number =>
  1 + Math.floor((session * versionsOfItem) / plan.sessionsEach);

/** First session done on a version. */
export const firstSessionOf = (plan: GroupPlan, version: number): number =>
  Math.ceil(((version - 1) * plan.sessionsEach) / versionsOfItem);
