/** Files as each earlier step of the schema left them, brought to this release. */
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { appendAudit } from '#data/audit.ts';
import { headsFileOf, readHeads, storeHeads } from '#data/audit-heads.ts';
import { migrateStore } from '#data/store/migrate.ts';
import { openStore } from '#data/store/store.ts';
import { verifyChain } from '#data/verify-chain.ts';
import { accessOf, auditKey, clinicNamed } from '#tests/support/clinic.ts';
import { freshFile, migrationsFolder } from '#tests/support/store.ts';

interface Journal {
  readonly entries: readonly { readonly tag: string }[];
}

const journal = JSON.parse(
  readFileSync(path.join(migrationsFolder, 'meta', '_journal.json'), 'utf8'),
) as Journal;
const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-older-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The migrations as they stood when there were so many. */
const migrationsUpTo = (count: number): string => {
  const target = path.join(folder, String(count));
  cpSync(migrationsFolder, target, { recursive: true });
  const cut = { ...journal, entries: journal.entries.slice(0, count) };
  writeFileSync(path.join(target, 'meta', '_journal.json'), JSON.stringify(cut));
  return target;
};

const olderFile = async (count: number) => {
  const store = openStore(freshFile());
  migrateStore(store, migrationsUpTo(count));
  await clinicNamed(store, 'a');
  const access = accessOf(store, 'a', 'clinician-a');
  for (const subject of ['one', 'two']) {
    await store.write((tx) => appendAudit(tx, access, { act: 'write', subject }));
  }
  await storeHeads(store, auditKey, ['a'], 1);
  return store;
};

// The first step has no triggers yet and was never a file of its own.
const steps = journal.entries.slice(2).map(({ tag }, place) => [tag, place + 2] as const);

describe('a file of an earlier step of the schema', () => {
  it.each(steps)('before %s: copied first, brought up to date, its audit chain whole', async (_, count) => {
    const store = await olderFile(count);
    const migrated = migrateStore(store, migrationsFolder);
    expect(migrated).toMatchObject({ ok: true, applied: journal.entries.length - count });
    expect(migrateStore(store, migrationsFolder)).toMatchObject({ applied: 0 });
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: true, rows: 2 });
    const check = store.reader.client.pragma('integrity_check') as { integrity_check: string }[];
    expect(check[0]?.integrity_check).toBe('ok');
    expect(store.reader.client.pragma('foreign_key_check')).toEqual([]);
    const backup = migrated.ok ? migrated.backup! : '';
    store.close();
    const copy = openStore(backup);
    const heads = readHeads(headsFileOf(backup), auditKey);
    expect(heads).toMatchObject({ ok: true, heads: [{ clinicId: 'a', sequence: 2 }] });
    expect(await verifyChain(copy, auditKey, 'a', heads.ok ? heads.heads : [])).toMatchObject({ ok: true });
    copy.close();
    expect(existsSync(backup)).toBe(true);
  });
});
