/** Sessions and mornings of a patient as the core sees them. A null score stays null; an amended entry is replaced. */
import { and, gte, sql } from 'drizzle-orm';
import { programmeSettings } from '#core/prescribing/programme/settings.ts';
import type { MorningRecord, SessionRecord } from '#core/record/record.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import { type Access, knownBy } from '../access.ts';
import { dayAt, minuteOfDay } from '../civil-time.ts';
import { settingValue } from '../clinic/clinic-settings.ts';
import { gatheredRows } from '../database/nested-rows.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { morning, trainingSession } from '../schema/schema.ts';
import { type MorningRow, morningColumns, morningIn } from './morning-rows.ts';
import { type SessionRow, sessionColumns, sessionIn, sessionKnownAt } from './session-rows.ts';

/** Rows that no later row amends; an amendment names the entry it replaces. */
const current = <R extends { readonly entryId: string; readonly amends: string | null }>(
  rows: readonly R[],
): readonly R[] => {
  const amended = new Set(rows.map((row) => row.amends).filter((id) => id !== null));
  return amended.size === 0 ? rows : rows.filter((row) => !amended.has(row.entryId));
};

type Entry = SessionRow | MorningRow;

const arrivedBy = <R extends Entry>(access: Access, rows: readonly R[]): readonly R[] =>
  current(knownBy<R>(access, ({ record }) => record.recordedAt)(rows));

const inWindow = (table: typeof trainingSession | typeof morning) =>
  and(ofPatient(table), gte(table.day, sql.placeholder('since')));

export const sessionRows = patientQuery((db) =>
  db
    .select({ rows: gatheredRows(sessionColumns, sessionIn) })
    .from(trainingSession)
    .where(inWindow(trainingSession)),
);

/** Sessions of a patient from a civil day on, oldest first. */
export const sessionsOf = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly SessionRecord[]> => {
  const [found] = await sessionRows(access, patientId, { since });
  return arrivedBy(access, found?.rows ?? [])
    .map((row) => sessionKnownAt(row, access.knownAt))
    .sort((a, b) => a.beganAt - b.beganAt);
};

export const morningRows = patientQuery((db) =>
  db
    .select({ rows: gatheredRows(morningColumns, morningIn) })
    .from(morning)
    .where(inWindow(morning)),
);

/** No minute of a day is this early: the engine takes the scores as missing and keeps the warning signs. */
const outsideEveryWindow = -1;

/**
 * Given late within the clinic's days it counts as the morning's answer, whatever the hour it was given;
 * later than that it would be guessed.
 */
const minuteOf = (row: MorningRow, lateDays: number): Pick<MorningRecord, 'localMinute'> => {
  if (!row.late) return { localMinute: minuteOfDay(row.answeredAt, row.zone) };
  const days = daysBetween(row.record.day, dayAt(row.answeredAt, row.zone));
  return days <= lateDays ? {} : { localMinute: outsideEveryWindow };
};

const byDayThenArrival = (a: MorningRecord, b: MorningRecord): number =>
  (a.day < b.day ? -1 : a.day > b.day ? 1 : 0) || a.recordedAt - b.recordedAt;

/** Mornings of a patient from a civil day on, oldest first. */
export const morningsOf = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly MorningRecord[]> => {
  const [found] = await morningRows(access, patientId, { since });
  const rows = arrivedBy(access, found?.rows ?? []);
  const lateDays = rows.some((row) => row.late)
    ? await settingValue(access, programmeSettings, 'late-morning-days')
    : 0;
  return rows.map((row) => ({ ...row.record, ...minuteOf(row, lateDays) })).sort(byDayThenArrival);
};
