/** What is done to a clinic's file beside saving may be cut short anywhere: the file stays whole, and it is done again. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { type KilledFile, killOnce } from '#commands/team/server-kills/step-kills.ts';
import { appendAudit } from '#data/audit/audit.ts';
import { openRuntime } from '#server/runtime.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { freshFile } from '#tests/support/store.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-steps-'));
afterAll(() => rmSync(folder, { recursive: true }));
let from: KilledFile;
beforeAll(async () => {
  const { store, keys } = openRuntime(readEnvironment({ DATABASE_FILE: freshFile() }));
  await clinicNamed(store, 'a');
  const access = { ...accessOf(store, 'a', 'clinician-a'), auditKey: keys.audit };
  for (const subject of ['one', 'two', 'three'])
    await store.write((tx) => appendAudit(tx, access, { act: 'write', subject }));
  store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
  store.close();
  from = { file: store.file, auditKey: keys.audit };
});

describe('ended hard, with no time to put anything in order', () => {
  it.each([
    ['migration', 'between the statements of a step of the schema', 'CREATE INDEX room_of_site'],
    ['backup', 'before its first part has its name', 'renameSync'],
    [
      'archive',
      'after rows were written to their file, before they leave the database',
      'delete from "audit"',
    ],
  ] as const)('%s, %s', async (act, _, step) => {
    expect(await killOnce(from, act, step, folder)).toEqual([]);
  });
});
