/** The command that creates a clinic, as an operator runs it. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run as createClinic } from '#commands/create-clinic.ts';
import { openStore } from '#data/open-store.ts';
import { runHere } from '#tests/support/command-here.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

const given: readonly string[] = [
  ...['--name', 'Test Clinic', '--zone', 'Europe/Lisbon', '--phone', '210 000 000', '--emergency', '112'],
  ...[
    '--monitoring-hours',
    'Mon-Fri 08:30-18:30; Sat 09:00-12:00',
    '--administrator',
    'First Person',
    '--email',
    'first@test.invalid',
  ],
];

describe('npm run create-clinic', () => {
  let folder: string;
  let file: string;
  const run = (args: readonly string[]) => runHere(createClinic, args, { DATABASE_FILE: file });
  const runByItself = (args: readonly string[]) => {
    const done = spawnSync(process.execPath, ['src/commands/run.mjs', 'create-clinic', ...args], {
      cwd: root,
      env: { ...process.env, DATABASE_FILE: file },
    });
    return { code: done.status, out: done.stdout.toString(), problem: done.stderr.toString() };
  };
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'loadgate-create-'));
    file = path.join(folder, 'clinic.sqlite');
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('opens one administrator with a passphrase that is in no file, and refuses the same address again', async () => {
    const { code, out } = await run(given);
    expect(code).toBe(0);
    expect(out).toContain('No --urgent number was given: enter under Administration');
    const passphrase = /good for seven days: ([0-9a-z-]{23})\n/.exec(out)?.[1];
    expect(passphrase).toBeDefined();
    const again = await run(given);
    expect([again.code, again.problem.includes('already')]).toEqual([1, true]);
    const store = openStore(file);
    const users = store.reader.client.prepare('SELECT * FROM auth_user').all() as { role: string }[];
    expect(users).toMatchObject([{ role: 'administrator', email: 'first@test.invalid', administers: 1 }]);
    expect(store.reader.client.prepare('SELECT name, monitoring_hours FROM clinic').all()).toMatchObject([
      { name: 'Test Clinic', monitoring_hours: expect.stringMatching(/^\[{"days":\["Mon"/) },
    ]);
    const rows = JSON.stringify(store.reader.client.prepare('SELECT * FROM auth_account').all());
    expect(rows).not.toContain(passphrase);
    store.close();
  });

  it('keeps the urgent number apart from the emergency number when it is given', async () => {
    const other = given.with(13, 'second@test.invalid');
    const { code, out } = await run([...other, '--urgent', '116 117']);
    expect([code, out.includes('No --urgent')]).toEqual([0, false]);
    const store = openStore(file);
    const rows = store.reader.client.prepare('SELECT emergency_number, urgent_number FROM clinic').all();
    expect(rows).toEqual(
      expect.arrayContaining([
        { emergency_number: '112', urgent_number: null },
        { emergency_number: '112', urgent_number: '116 117' },
      ]),
    );
    store.close();
  });

  it('names what is missing or wrong and ends with 2', async () => {
    expect(await run(given.slice(2))).toMatchObject({
      code: 2,
      problem: expect.stringContaining('Missing: name'),
    });
    expect(await run(given.with(3, 'Nowhere/Town'))).toMatchObject({
      code: 2,
      problem: expect.stringContaining('not the name of a time zone'),
    });
    expect((await run(['--unknown', 'x'])).code).toBe(2);
  });

  it('refuses hours that it cannot read, and says how to write them', () => {
    expect(runByItself(given.with(9, 'Weekdays'))).toMatchObject({
      code: 2,
      problem: expect.stringMatching(/"Weekdays" cannot be read as hours.*"Mon-Fri 08:30-18:30; Sat/),
    });
  });
});
