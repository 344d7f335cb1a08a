/** A real database per test: one template is migrated once, then copied. */
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { migrateStore } from '#data/database/migrate.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';

export const migrationsFolder = fileURLToPath(new URL('../../drizzle', import.meta.url));

const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));

let template: string | null = null;
let count = 0;

const templateFile = (): string => {
  if (template) return template;
  const file = path.join(folder, 'template.sqlite');
  const store = openStore(file);
  const migrated = migrateStore(store, migrationsFolder);
  if (!migrated.ok) throw new Error(migrated.reason);
  store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
  store.close();
  template = file;
  return file;
};

export const freshFile = (): string => {
  count += 1;
  return path.join(folder, `store-${count}.sqlite`);
};

export const freshStore = (): Store => {
  const file = freshFile();
  copyFileSync(templateFile(), file);
  return openStore(file);
};
