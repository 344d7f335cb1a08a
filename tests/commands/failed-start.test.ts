/** A start that cannot work ends by itself, says why, and is seen by whoever watches the process. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, chownSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { untilReady } from '#commands/server/server-process.mjs';
import { openRuntime } from '#server/runtime.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import { freshFile } from '#tests/support/store.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What the page framework does: runs the start, then stays up whatever came of it. */
const framework = `
  const { register } = await import('./src/instrumentation.ts');
  await register().catch(() => undefined);
  process.stderr.write('still up');
  if (process.env.STAYS_UP === '1') process.exit(0);
  setInterval(() => undefined, 1000);
`;

const startedOn = (file: string, env: Record<string, string> = {}, uid?: number) => {
  const done = spawnSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', framework], {
    cwd: root,
    env: { ...process.env, NEXT_RUNTIME: 'nodejs', DATABASE_FILE: file, JOBS: '0', DEMO: '0', ...env },
    uid,
    // A start that fails and lives on is ended here, and its code is then none.
    timeout: 60_000,
    killSignal: 'SIGKILL',
  });
  return { code: done.status, problem: done.stderr.toString() };
};

/** A file with a clinic in it, closed, its keys beside it. */
const usedFile = async (): Promise<string> => {
  const file = freshFile();
  const { store } = openRuntime(readEnvironment({ DATABASE_FILE: file }));
  await clinicNamed(store, 'a');
  store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
  store.close();
  for (const end of ['-wal', '-shm']) rmSync(`${file}${end}`, { force: true });
  return file;
};

const withSql = (statement: string) => (file: string) => {
  const { store } = openRuntime(readEnvironment({ DATABASE_FILE: file }));
  store.writer.client.exec(statement);
  store.close();
};

interface Fault {
  readonly what: string;
  readonly spoil?: (file: string) => void;
  readonly env?: Record<string, string>;
  readonly reason: RegExp;
}

const keyOf = (file: string, name: string) => path.join(`${file}.keys`, `${name}.key`);

const faults: readonly Fault[] = [
  {
    what: 'its beginning was overwritten',
    spoil: (file) => writeFileSync(file, readFileSync(file).fill(0x7a, 0, 100)),
    reason: /cannot be used.*not a database.*backup/s,
  },
  {
    what: 'it was cut short',
    spoil: (file) => truncateSync(file, 40_960),
    reason: /cannot be used.*cut short.*backup/s,
  },
  {
    what: 'its key is no key',
    spoil: (file) => writeFileSync(keyOf(file, 'audit'), 'x'),
    reason: /64 hexadecimal/,
  },
  {
    what: 'its key is missing',
    spoil: (file) => rmSync(keyOf(file, 'encryption')),
    reason: /encryption.key is missing/,
  },
  {
    what: 'a newer release wrote it',
    spoil: withSql("INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('x', 4102444800000)"),
    reason: /newer release/,
  },
  {
    what: 'it holds the demo clinic alone, and the demo was not asked for',
    spoil: withSql("UPDATE clinic SET id = 'demo-clinic'"),
    reason: /holds the demo clinic.*DEMO=1/,
  },
  {
    what: 'others may read it',
    spoil: (file) => chmodSync(file, 0o640),
    reason: /Other users of this machine may read or write .*chmod go= '/,
  },
  {
    what: 'others may read a key',
    spoil: (file) => chmodSync(keyOf(file, 'audit'), 0o604),
    reason: /chmod go= '[^']*audit\.key'$/m,
  },
  { what: 'a setting is wrong', env: { PORT: 'x' }, reason: /PORT is a whole number/ },
  {
    what: 'its folder is a file',
    env: { DATABASE_FILE: path.join(root, 'package.json', 'x') },
    reason: /cannot be opened/,
  },
];

describe('a start on a file that cannot be used', () => {
  it.each(faults)('$what: ends with a code other than 0 and one reason', async ({ spoil, env, reason }) => {
    const file = await usedFile();
    spoil?.(file);
    const { code, problem } = startedOn(file, env);
    expect([code, problem]).toEqual([1, expect.stringMatching(reason)]);
    expect(problem).toMatch(/^loadgate: the server does not start\. /);
    expect(problem).not.toMatch(/still up|\n {4}at /);
  });

  it('it may be read only: ends with a code other than 0 and one reason', async () => {
    const file = await usedFile();
    chmodSync(file, 0o400);
    // Who may do everything may write to it all the same, so the server runs as somebody else then.
    const uid = process.getuid?.() === 0 ? 65_534 : undefined;
    if (uid !== undefined) {
      chmodSync(path.dirname(file), 0o777);
      for (const one of [file, `${file}.keys`, keyOf(file, 'audit'), keyOf(file, 'encryption')])
        chownSync(one, uid, uid);
    }
    const { code, problem } = startedOn(file, {}, uid);
    expect([code, problem]).toEqual([1, expect.stringMatching(/cannot be used.*written to/s)]);
  });

  it('is not what happens on a file that can: the same process stays up', async () => {
    expect(startedOn(await usedFile(), { STAYS_UP: '1' })).toEqual({ code: 0, problem: 'still up' });
  });
});

describe('the command that serves', () => {
  it('ends with the reason when the server ended before it was ready', async () => {
    const child = spawn(process.execPath, ['--eval', 'process.exit(1)']);
    await once(child, 'exit');
    await expect(untilReady({ child }, 'http://127.0.0.1:9')).rejects.toThrow(/ended before it was ready/);
  });
});
