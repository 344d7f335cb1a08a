import { and, eq, gte, sql } from 'drizzle-orm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Db } from '#data/database/connection.ts';
import { prepared } from '#data/database/prepared.ts';
import { binderOf, type PreparedQuery, rowReaderOf } from '#data/database/row-reader.ts';
import {
  correction,
  decision,
  morning,
  patientIdentity,
  planSeen,
  trainingSession,
} from '#data/schema/schema.ts';
import { type BusyClinic, busyClinic } from '#tests/speed/busy-clinic.ts';

let clinic: BusyClinic;
beforeAll(async () => {
  clinic = await busyClinic(4);
});
afterAll(() => clinic.store.close());

const clinicId = sql.placeholder('clinicId');
const since = sql.placeholder('since');

/** Texts, whole numbers, yes or no, JSON, nothing, and SQL of its own. */
const queries: readonly [string, (db: Db) => { readonly prepare: () => object }][] = [
  [
    'sessions',
    (db) =>
      db
        .select()
        .from(trainingSession)
        .where(and(eq(trainingSession.clinicId, clinicId), gte(trainingSession.day, since))),
  ],
  [
    'mornings',
    (db) => db.select().from(morning).where(eq(morning.clinicId, clinicId)).limit(sql.placeholder('most')),
  ],
  ['decisions', (db) => db.select().from(decision).where(eq(decision.clinicId, clinicId))],
  [
    'figures of its own',
    (db) =>
      db
        .select({
          name: patientIdentity.familyName,
          letters: sql<number>`length(${patientIdentity.familyName})`.mapWith(Number),
          said: sql<string>`${'a fixed value'}`,
        })
        .from(patientIdentity)
        .where(eq(patientIdentity.clinicId, clinicId)),
  ],
];

const values = { clinicId: 'a', since: '2026-01-01', most: 3 };

describe('a query that was put together once', () => {
  it.each(queries)('is read as the builder itself reads it: %s', async (_, build) => {
    const { read } = clinic.store;
    const byBuilder = (build(read).prepare() as { readonly all: (given: object) => readonly unknown[] }).all(
      values,
    );
    expect(byBuilder.length).toBeGreaterThan(0);
    expect(await prepared(build as never)(read, values)).toEqual(byBuilder);
  });

  it('leaves a row that holds a joined table, which may be missing as a whole, to the builder', async () => {
    const build = (db: Db) =>
      db
        .select()
        .from(correction)
        .leftJoin(planSeen, eq(planSeen.correctionId, correction.id))
        .where(eq(correction.clinicId, clinicId));
    const query = build(clinic.store.read).prepare() as unknown as PreparedQuery;
    expect(rowReaderOf(query.fields)).toBeNull();
    expect(await prepared(build)(clinic.store.read, values)).toEqual([]);
  });

  it('refuses to be asked without a value it needs', () => {
    expect(() => binderOf([clinicId, 'fixed'])({})).toThrow('clinicId');
    expect(binderOf([clinicId, 'fixed', since])(values)).toEqual(['a', 'fixed', '2026-01-01']);
  });
});
