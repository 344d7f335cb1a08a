import { AsyncLocalStorage } from 'node:async_hooks';
import { asc, eq } from 'drizzle-orm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { connect } from '#data/database/connection.ts';
import type { Store } from '#data/database/store.ts';
import { site } from '#data/schema/schema.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const row = (id: string) => ({ id, clinicId: 'a', name: id, address: null, openedAt: 1, closedAt: null });

describe('writes that wait at the same time share one commit', () => {
  let store: Store;
  beforeEach(async () => {
    store = freshStore();
    await clinicNamed(store, 'a');
  });
  afterEach(() => store.close());

  const names = async (from = store.read) =>
    (await from.select({ id: site.id }).from(site).orderBy(asc(site.id))).map((one) => one.id);

  it('one that fails is undone alone, the others stand', async () => {
    const ended = await Promise.allSettled(
      ['1', '2', '3', '4', '5'].map((id) =>
        store.write(async (tx) => {
          await tx.insert(site).values(row(id));
          if (id === '3') throw new Error('not this one');
        }),
      ),
    );
    expect(ended.map((one) => one.status)).toEqual([
      'fulfilled',
      'fulfilled',
      'rejected',
      'fulfilled',
      'fulfilled',
    ]);
    expect(await names()).toEqual(['1', '2', '4', '5']);
  });

  it('one that the file refuses is undone alone', async () => {
    const ended = await Promise.allSettled(
      ['1', '1', '2'].map((id) => store.write((tx) => Promise.resolve(tx.insert(site).values(row(id))))),
    );
    expect(ended.map((one) => one.status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect(await names()).toEqual(['1', '2']);
  });

  it('one that waits for another program lets everybody else go on, and is written when that lets go', async () => {
    const other = connect(store.file);
    other.client.exec('BEGIN IMMEDIATE');
    let isWritten = false;
    const waiting = store
      .write((tx) => Promise.resolve(tx.insert(site).values(row('1'))))
      .then(() => {
        isWritten = true;
      });
    // Each is a turn of the process that a wait inside the driver would not have given.
    for (let turn = 0; turn < 5; turn += 1) {
      expect(await names()).toEqual([]);
      await new Promise((resolve) => setImmediate(resolve));
    }
    expect(isWritten).toBe(false);
    other.client.exec('COMMIT');
    await waiting;
    other.client.close();
    expect(await names()).toEqual(['1']);
  });

  it('what the file says of it is known: a commit, a fault of the file, and no fault of the rows', async () => {
    const put = (id: string) => store.write((tx) => Promise.resolve(tx.insert(site).values(row(id))));
    await put('1');
    expect(store.health).toEqual({ committedAt: expect.any(Number), isFailing: false });
    await expect(put('1')).rejects.toThrow(/UNIQUE/);
    expect(store.health.isFailing).toBe(false);
    const full = new Error('Failed query', {
      cause: Object.assign(new Error('full'), { code: 'SQLITE_FULL' }),
    });
    await expect(store.write(() => Promise.reject(full))).rejects.toThrow();
    expect(store.health.isFailing).toBe(true);
    await put('3');
    expect(store.health.isFailing).toBe(false);
    store.writer.client.pragma('query_only = ON');
    await expect(put('2')).rejects.toThrow();
    expect(store.health.isFailing).toBe(true);
    store.writer.client.pragma('query_only = OFF');
    await put('2');
    expect(store.health.isFailing).toBe(false);
  });

  it('nobody is told before another connection can read what was written', async () => {
    const other = connect(store.file);
    const seen = await Promise.all(
      ['1', '2', '3'].map(async (id) => {
        await store.write((tx) => Promise.resolve(tx.insert(site).values(row(id))));
        return (await names(other.db)).includes(id);
      }),
    );
    other.client.close();
    expect(seen).toEqual([true, true, true]);
  });

  it('a write that asks again after writing gets the new answer, and after a fault the old one', async () => {
    const counts: number[] = [];
    await store.write(async (tx) => {
      counts.push((await names(tx)).length);
      await tx.insert(site).values(row('1'));
      counts.push((await names(tx)).length);
      await tx.update(site).set({ name: 'other' }).where(eq(site.id, '1'));
      counts.push((await tx.select().from(site).where(eq(site.name, 'other'))).length);
      await tx.delete(site).where(eq(site.id, '1'));
      counts.push((await names(tx)).length);
    });
    const later: number[] = [];
    await Promise.allSettled([
      store.write(async (tx) => {
        await tx.insert(site).values(row('1'));
        later.push((await names(tx)).length);
        throw new Error('undone');
      }),
      store.write(async (tx) => later.push((await names(tx)).length)),
    ]);
    expect([counts, later]).toEqual([
      [0, 1, 1, 0],
      [1, 0],
    ]);
  });

  it('each write runs as part of the request that asked for it', async () => {
    const requests = new AsyncLocalStorage<string>();
    const seen = await Promise.all(
      ['first', 'second', 'third'].map((name) =>
        requests.run(name, () => store.write(async () => requests.getStore())),
      ),
    );
    expect(seen).toEqual(['first', 'second', 'third']);
  });

  it('what a write left running does not join it after its end', async () => {
    let late: Promise<unknown> = Promise.resolve();
    await store.write(async () => {
      late = new Promise((resolve) => setImmediate(resolve)).then(() =>
        store.write((tx) => Promise.resolve(tx.insert(site).values(row('late')))),
      );
    });
    await late;
    expect([await names(), store.writer.client.inTransaction]).toEqual([['late'], false]);
  });
});
