/** Backups: made beside a file at work, never half, proven when they are restored. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { run as backup } from '#commands/backup.ts';
import { run as checkFile } from '#commands/check-file.ts';
import { readEnvironment } from '#commands/environment.mjs';
import { run as restore } from '#commands/restore.ts';
import { storeHeads } from '#data/audit/audit-heads.ts';
import { contentsOf, manifestFileOf, readManifest } from '#data/backup/manifest.ts';
import { unprovenFile } from '#data/backup/restore-backup.ts';
import { backupsIn } from '#data/backup/write-backup.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { addPatient } from '#data/patients/people.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { accessOf, clinicNamed, sessionEntry, signedExercise } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshFile } from '#tests/support/store.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

let at: Runtime;
let file: string;
let folder: string;
let patientId: string;
const access = () => ({ ...accessOf(at.store, 'a', 'clinician-a'), auditKey: at.keys.audit });
const save = (entryId: string) => takeSession(access(), patientId, sessionEntry({ entryId }));

const person = { givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: null };

/** A clinic at work, its keys beside it; each test has a copy of its own. */
let first: string;
beforeAll(async () => {
  first = freshFile();
  at = openRuntime(readEnvironment({ DATABASE_FILE: first }));
  await clinicNamed(at.store, 'a');
  patientId = await addPatient(access(), person);
  await signedExercise(access(), patientId);
  await save('before');
  await storeHeads(at.store, at.keys.audit, ['a'], 1);
  at.store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
  at.store.close();
});
beforeEach(() => {
  file = freshFile();
  folder = fs.mkdtempSync(path.join(tmpdir(), 'loadgate-backup-'));
  for (const end of ['', '.keys', '.audit-heads'])
    fs.cpSync(`${first}${end}`, `${file}${end}`, { recursive: true });
  at = openRuntime(readEnvironment({ DATABASE_FILE: file }));
});
afterEach(() => {
  at.store.close();
  fs.rmSync(folder, { recursive: true });
});

const env = () => ({ DATABASE_FILE: file });
const made = async (...more: string[]): Promise<string> => {
  const { code, out } = await runHere(backup, ['--to', folder, ...more], env());
  expect(code).toBe(0);
  return /^backup (.*)$/m.exec(out)![1]!;
};
/** A fresh machine: the keys were put there by hand. */
const freshPlace = (name = 'fresh'): string => {
  const to = path.join(folder, 'elsewhere', `${name}.sqlite`);
  fs.cpSync(`${file}.keys`, `${to}.keys`, { recursive: true });
  return to;
};
const restored = (from: string, to = freshPlace()) => runHere(restore, ['--from', from, '--to', to], {});
const sessionsIn = (one: string): readonly string[] => {
  const { store } = openRuntime(readEnvironment({ DATABASE_FILE: one }));
  try {
    const rows = store.reader.client.prepare('SELECT entry_id AS id FROM training_session ORDER BY id').all();
    return (rows as { id: string }[]).map(({ id }) => id);
  } finally {
    store.close();
  }
};

describe('a backup', () => {
  it('restored into a fresh place holds what the file held, says so, and works', async () => {
    const from = await made();
    expect(path.basename(from)).toMatch(/^loadgate-\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d-\d{3}Z\.sqlite$/);
    await save('after');
    const to = freshPlace();
    const { code, out } = await restored(from, to);
    expect(code).toBe(0);
    expect(out).toMatch(/^clinic a: \d+ rows hold; 1 kept heads agree$/m);
    expect(out).toMatch(/^records: \d+ rows are as they were written$/m);
    expect(out).toMatch(/rows in \d+ tables and the ends of 1 audit chains are those of the backup of /);
    expect(readManifest(from, at.keys.audit)).toMatchObject({ manifest: { rows: contentsOf(to).rows } });
    expect(sessionsIn(to)).toEqual(['before']);
    expect(sessionsIn(file)).toEqual(['after', 'before']);
  });

  it('is readable by its owner alone and holds no key', async () => {
    const from = await made();
    const parts = fs.readdirSync(folder).filter((name) => name.startsWith('loadgate-'));
    expect(parts).toHaveLength(3);
    for (const name of parts) expect(fs.statSync(path.join(folder, name)).mode & 0o077).toBe(0);
    for (const name of ['audit', 'encryption']) {
      const key = fs.readFileSync(path.join(`${file}.keys`, `${name}.key`), 'utf8');
      for (const part of parts) expect(fs.readFileSync(path.join(folder, part)).includes(key)).toBe(false);
    }
    expect((await runHere(checkFile, ['--file', from], env())).out).toContain(`${from} is whole`);
  });

  it('takes the place of the oldest when only so many are kept, and of no other file', async () => {
    fs.writeFileSync(path.join(folder, 'letters.sqlite'), 'x');
    const all = [await made(), await made(), await made('--keep', '2')];
    expect(backupsIn(folder, 'loadgate')).toEqual(all.slice(1));
    expect(fs.existsSync(manifestFileOf(all[0]!))).toBe(false);
    expect(fs.existsSync(path.join(folder, 'letters.sqlite'))).toBe(true);
  });

  it.each([[[]], [['--to']], [['--to', 'x', '--keep', '0']], [['--to', 'x', '--mend']]])(
    'asked for as %j ends with 2 and how to ask',
    async (args) => {
      expect(await runHere(backup, args, env())).toMatchObject({
        code: 2,
        problem: expect.stringContaining('Usage'),
      });
    },
  );
});

describe('restoring', () => {
  let from: string;
  beforeEach(async () => {
    from = await made();
  });
  const spoilt = async (spoil: () => void) => {
    spoil();
    const to = freshPlace('spoilt');
    const { code, out, problem } = await restored(from, to);
    expect([fs.existsSync(to), fs.existsSync(unprovenFile(to))]).toEqual([false, false]);
    return { code, said: `${out}${problem}` };
  };

  it.each([
    [
      'a byte was changed',
      () => {
        const bytes = fs.readFileSync(from);
        bytes[bytes.length - 100]! ^= 1;
        fs.writeFileSync(from, bytes);
      },
      /sha256: .*Nothing was restored/s,
    ],
    [
      'its end is missing',
      () => fs.writeFileSync(from, fs.readFileSync(from).subarray(0, 40_960)),
      /bytes: .*Nothing was restored/s,
    ],
    [
      'its manifest was changed',
      () => {
        const text = fs.readFileSync(manifestFileOf(from), 'utf8');
        fs.writeFileSync(
          manifestFileOf(from),
          text.replace(/"training_session": 1/, '"training_session": 2'),
        );
      },
      /was changed, or was not made with this audit key/,
    ],
    ['its manifest is missing', () => fs.rmSync(manifestFileOf(from)), /is not a finished backup/],
    [
      'a line of its heads was changed',
      () => fs.appendFileSync(`${from}.audit-heads`, '{"x":1}\n'),
      /line 2 of .* does not hold.*history in this backup does not hold/s,
    ],
  ] as const)('%s: refused with what is wrong, and nothing is left behind', async (_, spoil, reason) => {
    const { code, said } = await spoilt(spoil);
    expect(code).toBe(1);
    expect(said).toMatch(reason);
  });

  it('without the keys, or with others, says where they belong, and makes none', async () => {
    const bare = path.join(folder, 'bare', 'clinic.sqlite');
    const missing = await restored(from, bare);
    expect([missing.code, missing.problem]).toEqual([
      2,
      expect.stringMatching(/A backup holds no keys.*audit\.key/),
    ]);
    expect(fs.existsSync(`${bare}.keys`)).toBe(false);
    const to = freshPlace('other-key');
    fs.writeFileSync(path.join(`${to}.keys`, 'encryption.key'), 'ab'.repeat(32));
    const other = await restored(from, to);
    expect([other.code, other.out]).toEqual([
      1,
      expect.stringContaining('the encryption key is not the one'),
    ]);
  });

  it('never writes over anything', async () => {
    const to = freshPlace('taken');
    fs.mkdirSync(path.dirname(to), { recursive: true });
    for (const end of ['', '-wal', '.audit-heads']) {
      fs.writeFileSync(`${to}${end}`, 'mine');
      expect(await restored(from, to)).toMatchObject({
        code: 2,
        problem: expect.stringContaining('is there already'),
      });
      expect(fs.readFileSync(`${to}${end}`, 'utf8')).toBe('mine');
      fs.rmSync(`${to}${end}`);
    }
  });
});

describe('the command that looks at a file', () => {
  it('finds a whole one whole, and names damage, rights, triggers and keys', async () => {
    expect(await runHere(checkFile, [], env())).toMatchObject({ code: 0, out: `${file} is whole\n` });
    at.store.writer.client.exec('DROP TRIGGER audit_no_replace');
    fs.copyFileSync(path.join(`${file}.keys`, 'audit.key'), path.join(`${file}.keys`, 'encryption.key'));
    const { code, out } = await runHere(checkFile, [], env());
    expect(code).toBe(1);
    expect(out).toContain('triggers: trigger audit_no_replace is missing');
    expect(out).toMatch(/keys: The key in .*encryption\.key is not the one/);
    expect(out).toContain(`${file}: 2 findings`);
  });

  it('names of a backup what would keep it from being restored: another key, a missing trigger', async () => {
    const from = await made();
    fs.copyFileSync(path.join(`${file}.keys`, 'audit.key'), path.join(`${file}.keys`, 'encryption.key'));
    const key = await runHere(checkFile, ['--file', from], env());
    expect([key.code, key.out]).toEqual([1, expect.stringContaining('the encryption key is not the one')]);
    fs.cpSync(`${first}.keys`, `${file}.keys`, { recursive: true });
    at.store.writer.client.exec('DROP TRIGGER audit_no_replace');
    const open = await made();
    const trigger = await runHere(checkFile, ['--file', open], env());
    expect([trigger.code, trigger.out]).toEqual([
      1,
      expect.stringContaining('trigger audit_no_replace is missing'),
    ]);
    expect((await restored(open)).code).toBe(1);
  });
});

/** A process of its own that backs up; ended hard at the so-manieth thing that happens in the folder. */
const backedUpBeside = async (killAt: number): Promise<void> => {
  const program = `
    const { openFile } = await import('./src/data/database/store.ts');
    const { writeBackup } = await import('./src/data/backup/write-backup.ts');
    const key = Buffer.from(${JSON.stringify(Buffer.from(at.keys.audit).toString('hex'))}, 'hex');
    const place = { folder: ${JSON.stringify(folder)}, name: 'loadgate', at: Date.now() };
    writeBackup(openFile(${JSON.stringify(file)}), key, place);`;
  const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', program], {
    cwd: root,
    stdio: 'ignore',
  });
  let seen = 0;
  const watcher = fs.watch(folder, () => {
    seen += 1;
    if (seen === killAt) child.kill('SIGKILL');
  });
  await once(child, 'close');
  watcher.close();
};

const patientsIn = (one: string): readonly string[] => {
  const { store } = openRuntime(readEnvironment({ DATABASE_FILE: one }));
  try {
    return (store.reader.client.prepare('SELECT id FROM patient').all() as { id: string }[]).map(
      ({ id }) => id,
    );
  } finally {
    store.close();
  }
};

describe('the drill: backing up under load, killed, made again, restored and compared', () => {
  it('gives a whole backup or none, and all that was acknowledged before it began', async () => {
    let isOver = false;
    const acknowledged = [patientId];
    const saver = async (): Promise<void> => {
      while (!isOver) acknowledged.push(await addPatient(access(), person));
    };
    const savers = Array.from({ length: 2 }, saver);
    await backedUpBeside(6);
    const before = [...acknowledged];
    await backedUpBeside(Number.POSITIVE_INFINITY);
    isOver = true;
    await Promise.all(savers);
    expect(fs.readdirSync(folder).filter((name) => name.includes('unfinished'))).toEqual([]);
    const all = backupsIn(folder, 'loadgate');
    for (const [place, one] of all.entries()) {
      const to = freshPlace(`drill-${place}`);
      expect(await restored(one, to)).toMatchObject({ code: 0 });
      const there = new Set(patientsIn(to));
      expect([...there].filter((id) => !acknowledged.includes(id))).toEqual([]);
      if (place === all.length - 1) expect(before.filter((id) => !there.has(id))).toEqual([]);
    }
    expect([before.length > 4, all.length > 0]).toEqual([true, true]);
  }, 60_000);
});
