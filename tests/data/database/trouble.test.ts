/** A disk that is full, a clock that is wrong: what was acknowledged stands once, and the history verifies. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { verifyRows } from '#data/audit/verify-rows.ts';
import type { Store } from '#data/database/store.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import {
  accessOf,
  auditKey,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
} from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let patientId: string;
let done: { prescriptionId: string; itemId: string };
beforeEach(async () => {
  store = freshStore();
  const made = await twoClinics(store);
  patientId = made.patientId;
  done = await signedExercise(made.clinician, patientId);
});
afterEach(() => store.close());

const save = (entryId: string, now = start) => {
  const set = { set: 1, repetitions: 20, loadKg: 4, reserve: 2, stopReason: 'none' as const };
  const entry = { ...sessionEntry({ entryId, sets: [{ ...done, ...set }] }), ...{ sentAt: now } };
  return takeSession(accessOf(store, 'a', patientId, now), patientId, entry);
};
const stored = (): readonly string[] =>
  (store.reader.client.prepare('SELECT entry_id AS id FROM training_session').all() as { id: string }[]).map(
    ({ id }) => id,
  );
const holds = async () => ({
  chain: (await verifyChain(store, auditKey, 'a')).ok,
  rows: (await verifyRows(store, auditKey, ['a', 'b'])).findings,
});

/** The file may grow by so many pages and then finds no more room; null: as much as it likes. */
const room = (pages: number | null): void => {
  const { client } = store.writer;
  const [{ page_count: now }] = client.pragma('page_count') as [{ page_count: number }];
  client.pragma(`max_page_count = ${pages === null ? 1_000_000 : now + pages}`);
};

describe('a disk that fills up while entries are saved', () => {
  it('refuses the rest with its reason, keeps what it acknowledged, and goes on once there is room', async () => {
    room(15);
    const names = Array.from({ length: 60 }, (_, n) => `entry-${n}`);
    const answers = await Promise.allSettled(names.map((name) => save(name)));
    const acknowledged = names.filter((_, n) => answers[n]!.status === 'fulfilled');
    const refused = answers.flatMap((one) => (one.status === 'rejected' ? [one.reason] : []));
    expect(acknowledged.length).toBeGreaterThan(0);
    expect(refused.length).toBeGreaterThan(0);
    for (const reason of refused)
      expect(String(reason.code ?? reason.cause?.code ?? reason)).toMatch(/SQLITE_FULL/);
    expect([...stored()].sort()).toEqual([...acknowledged].sort());
    expect(store.health.isFailing).toBe(true);
    expect(await holds()).toEqual({ chain: true, rows: [] });
    room(null);
    for (const name of names) await save(name);
    expect([...stored()].sort()).toEqual([...names].sort());
    expect(store.health.isFailing).toBe(false);
    expect(await holds()).toEqual({ chain: true, rows: [] });
  });
});

const day = 86_400_000;

describe('a machine whose clock was wrong and is put right', () => {
  it.each([
    ['forward by a year and back again', 365 * day],
    ['back by two days and forward again', -2 * day],
  ])('%s: each entry stands once, and the history holds', async (_, wrongBy) => {
    for (const [n, now] of [start, start + wrongBy, start + 1000].entries())
      expect(await save(`entry-${n}`, now)).toMatchObject({ kind: 'stored' });
    expect(await save('entry-1', start + 2000)).toMatchObject({ kind: 'known' });
    expect([...stored()].sort()).toEqual(['entry-0', 'entry-1', 'entry-2']);
    expect(await holds()).toEqual({ chain: true, rows: [] });
  });
});
