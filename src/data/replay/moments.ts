/** When the engine looked at a patient, or would have: at every decision that was stored and every entry that arrived. */
import { and, asc, gte, sql } from 'drizzle-orm';
import type { Moment } from '#core/decision/facts/judged-session.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { ofItsSettings } from '../decision/settings-stored.ts';
import { morningRows, sessionRows } from '../entries/logs.ts';
import { clinicOf } from '../patients/people.ts';
import { decision, decisionSettings } from '../schema/schema.ts';

export interface Look extends Moment {
  /** Of a decision stored then; null where none was, and the clinic's settings of that instant hold. */
  readonly settings: SettingValues | null;
}

const decidedRows = patientQuery((db) =>
  db
    .select({ instant: decision.evaluatedAt, day: decision.day, settings: decisionSettings.settings })
    .from(decision)
    .innerJoin(decisionSettings, ofItsSettings())
    .where(and(ofPatient(decision), gte(decision.day, sql.placeholder('from'))))
    .orderBy(asc(decision.evaluatedAt)),
);

const hourMs = 3_600_000;
const mostHours = 50_000;
const daysOfHours = new Map<string, Day>();

/** Both ends of an hour on one day: then it is the day of whatever lies between, and is looked up once. */
const dayOfArrival = (instant: number, zone: string): Day => {
  const hour = Math.floor(instant / hourMs);
  const key = `${zone} ${hour}`;
  const known = daysOfHours.get(key);
  if (known) return known;
  const first = dayAt(hour * hourMs, zone);
  if (first !== dayAt((hour + 1) * hourMs - 1, zone)) return dayAt(instant, zone);
  if (daysOfHours.size >= mostHours) daysOfHours.clear();
  daysOfHours.set(key, first);
  return first;
};

/** Oldest first, each instant once; of looks from a day on. `since` is the first day of the log that is read. */
export const looksOf = async (
  access: Access,
  patientId: string,
  from: Day,
  since: Day,
): Promise<readonly Look[]> => {
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  const sessions = (await sessionRows(access, patientId, { since }))[0]?.rows ?? [];
  const mornings = (await morningRows(access, patientId, { since }))[0]?.rows ?? [];
  const arrivals = [
    ...sessions.flatMap(({ record, later }) => [record.recordedAt, ...later.map((one) => one.arrivedAt)]),
    ...mornings.map(({ record }) => record.recordedAt),
  ];
  const looks = new Map<number, Look>();
  for (const instant of arrivals) {
    const day = dayOfArrival(instant, zone);
    if (instant <= access.now && day >= from) looks.set(instant, { instant, day, settings: null });
  }
  for (const row of await decidedRows(access, patientId, { from }))
    if (row.instant <= access.now) looks.set(row.instant, row);
  return [...looks.values()].sort((a, b) => a.instant - b.instant);
};
