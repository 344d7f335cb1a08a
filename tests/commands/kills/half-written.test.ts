/** What other backups have left half-written is named, since no restore will take it and no clearing-up removes it. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { run as backup } from '#commands/backup.ts';
import { readEnvironment } from '#commands/environment.mjs';
import { openRuntime } from '#server/runtime.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshFile } from '#tests/support/store.ts';

it('in the folder of the backups and beside the file, and left where it is', async () => {
  const file = freshFile();
  const { store } = openRuntime(readEnvironment({ DATABASE_FILE: file }));
  await clinicNamed(store, 'a');
  store.close();
  const folder = `${file}.copies`;
  const name = 'before-7-at-2026-03-02T09-00-00-000Z.sqlite.unfinished';
  const half = [folder, `${file}.backups`].map((one) => path.join(one, name));
  for (const one of half) {
    fs.mkdirSync(path.dirname(one), { recursive: true });
    fs.writeFileSync(one, 'half');
  }
  fs.writeFileSync(path.join(folder, 'letter.unfinished'), 'mine');
  const { code, out } = await runHere(backup, ['--to', folder], { DATABASE_FILE: file });
  expect([code, out.match(/^half-written .*: no backup/gm)]).toEqual([
    0,
    half.map((one) => `half-written ${one}: no backup`),
  ]);
  expect(half.filter((one) => !fs.existsSync(one))).toEqual([]);
});
