/** What a browser is sent holds nothing of the server: no keys, no store, no record, no demo secret. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { demoPassphrase, reviewerCodeSecret } from '#demo/clinic.ts';

const folder = path.join(process.cwd(), '.next', 'static');

const scripts = (): readonly string[] =>
  (readdirSync(folder, { recursive: true }) as string[])
    .filter((name) => name.endsWith('.js'))
    .map((name) => path.join(folder, name));

const never = [
  demoPassphrase,
  reviewerCodeSecret,
  'audit.key',
  'encryption.key',
  'BEGIN IMMEDIATE',
  'PRAGMA ',
  'CREATE TABLE',
  'AUDIT_KEY_FILE',
  // People of the demo, who stand for the values of any record.
  'Tarrowby',
  'Aklavi',
  'Coldrick',
] as const;

test('no script sent to a browser holds a key, a statement of the store, a demo secret or a person of the record', () => {
  const files = scripts();
  expect(files.length).toBeGreaterThan(5);
  const found = files.flatMap((file) => {
    const text = readFileSync(file, 'utf8');
    return never.filter((mark) => text.includes(mark)).map((mark) => `${path.basename(file)}: ${mark}`);
  });
  expect(found).toEqual([]);
});
