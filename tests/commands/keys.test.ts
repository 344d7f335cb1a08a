/** Keys on paper and encrypted backups: what is lost is got back, and nothing that was changed is opened. */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { run as backup } from '#commands/backup.ts';
import { run as checkFile } from '#commands/check-file.ts';
import { readEnvironment } from '#commands/environment.mjs';
import { run as keys } from '#commands/keys.ts';
import { run as restore } from '#commands/restore.ts';
import { backupsIn } from '#data/backup/write-backup.ts';
import { addPatient } from '#data/patients/people.ts';
import { keyFromTyped, linesOfKey } from '#server/key-page.ts';
import { openRuntime } from '#server/runtime.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshFile } from '#tests/support/store.ts';

const key = Buffer.from('0123456789abcdef'.repeat(4), 'hex');

describe('a key on paper', () => {
  it('is read back from its own lines, however spaced, in any order and with look-alikes', () => {
    const lines = linesOfKey('audit', key);
    expect(lines).toHaveLength(4);
    const typed = [...lines].reverse().join('\n').toUpperCase().replaceAll('0', 'O').replaceAll(' ', '  ');
    expect(keyFromTyped('audit', `anything else\n${typed}`)).toEqual({ ok: true, key });
  });

  it('with one digit of it wrong, whichever, is refused with the line it is in', () => {
    const lines = linesOfKey('audit', key);
    for (const [n, line] of lines.entries())
      for (let place = line.indexOf('.') + 1; place < line.length; place += 1) {
        if (!/[0-9a-f]/.test(line[place]!)) continue;
        const wrong = `${line.slice(0, place)}${line[place] === '7' ? '2' : '7'}${line.slice(place + 1)}`;
        const said = keyFromTyped('audit', lines.with(n, wrong).join('\n'));
        expect(said).toEqual({
          ok: false,
          problems: [expect.stringContaining(`Line ${n + 1} does not fit`)],
        });
      }
  });

  it.each([
    ['a line missing', (lines: readonly string[]) => lines.slice(1), 'Line 1 is missing.'],
    [
      'two lines changed about',
      (lines: readonly string[]) => [
        `1. ${lines[1]!.slice(3)}`,
        `2. ${lines[0]!.slice(3)}`,
        ...lines.slice(2),
      ],
      'Line 1 does not fit',
    ],
    [
      'a digit too few',
      (lines: readonly string[]) => lines.with(2, lines[2]!.slice(0, -1)),
      'Line 3 has 19 digits',
    ],
    ['a digit too many', (lines: readonly string[]) => lines.with(2, `${lines[2]}0`), 'Line 3 has 21 digits'],
    [
      'a letter that is none',
      (lines: readonly string[]) => lines.with(3, '4. xyz'),
      'Line 4 holds something other',
    ],
  ] as const)('with %s says so', (_, spoil, problem) => {
    const said = keyFromTyped('backup', spoil(linesOfKey('backup', key)).join('\n'));
    expect(said).toMatchObject({ ok: false });
    expect(said.ok ? '' : said.problems.join(' ')).toContain(problem);
  });

  it('of another name is not taken for this one', () => {
    expect(keyFromTyped('encryption', linesOfKey('audit', key).join('\n')).ok).toBe(false);
  });
});

/** A clinic at work, its keys beside it, a backup key elsewhere. */
let first: string;
let patientId: string;
beforeAll(async () => {
  first = freshFile();
  const { store, keys: own } = openRuntime(readEnvironment({ DATABASE_FILE: first }));
  await clinicNamed(store, 'a');
  const access = { ...accessOf(store, 'a', 'clinician-a'), auditKey: own.audit };
  patientId = await addPatient(access, {
    ...{ givenName: 'Zephyrine', familyName: 'Person', birthDay: '1958-06-01', phone: null },
  });
  store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
  store.close();
});

describe('the drill: the machine, its disk and its keys are gone', () => {
  let file: string;
  let away: string;
  beforeEach(() => {
    away = fs.mkdtempSync(path.join(tmpdir(), 'loadgate-drill-'));
    file = path.join(away, 'machine', 'clinic.sqlite');
    fs.cpSync(first, file, { recursive: true });
    fs.cpSync(`${first}.keys`, `${file}.keys`, { recursive: true });
  });
  afterEach(() => fs.rmSync(away, { recursive: true }));
  const backupKey = () => path.join(away, 'machine', 'backup.key');
  const folder = () => path.join(away, 'backups');
  const env = () => ({ DATABASE_FILE: file, BACKUP_KEY_FILE: backupKey() });
  const made = async (): Promise<string> => {
    const { out, code } = await runHere(backup, ['--to', folder()], env());
    expect(code).toBe(0);
    return /^backup (.*)$/m.exec(out)![1]!;
  };
  const makeKey = () => runHere(keys, ['--make-backup-key', backupKey()], {});
  /** The lines of one key as somebody copies them from the page. */
  const typedFrom = (page: string, name: string) => async () =>
    page
      .slice(page.indexOf(`${name.toUpperCase()} KEY`))
      .split('\n')
      .slice(1, 5)
      .join('\n');

  it('the printed page, typed back, and an encrypted backup give everything back', async () => {
    await makeKey();
    const from = await made();
    expect(fs.readdirSync(folder()).filter((name) => name !== 'backup.lock')).toEqual([path.basename(from)]);
    expect(path.basename(from)).toMatch(/^loadgate-.*Z\.encrypted$/);
    expect(fs.readFileSync(from).includes('Zephyrine')).toBe(false);
    expect(fs.readdirSync(path.dirname(file)).filter((name) => name.includes('backup-'))).toEqual([]);
    expect(await runHere(checkFile, ['--file', from], env())).toMatchObject({ code: 0 });
    const { out: page } = await runHere(keys, ['--page'], env());
    fs.rmSync(path.dirname(file), { recursive: true });

    const to = path.join(away, 'fresh', 'clinic.sqlite');
    for (const name of ['audit', 'encryption', 'backup']) {
      const place = name === 'backup' ? backupKey() : path.join(`${to}.keys`, `${name}.key`);
      const typed = await runHere(
        (args) => keys(args, typedFrom(page, name)),
        ['--type-back', name, '--to', place],
        {},
      );
      expect(typed).toMatchObject({ code: 0, problem: '' });
    }
    const back = await runHere(restore, ['--from', from, '--to', to], { BACKUP_KEY_FILE: backupKey() });
    expect(back).toMatchObject({ code: 0, problem: '' });
    expect(fs.readdirSync(path.dirname(to)).some((name) => name.includes('unpacked'))).toBe(false);
    const { store } = openRuntime(readEnvironment({ DATABASE_FILE: to }));
    expect(store.reader.client.prepare('SELECT id FROM patient').all()).toEqual([{ id: patientId }]);
    store.close();
  });

  it('another key, or none, is refused with the way out; an earlier backup opens with its own after a change of keys', async () => {
    await makeKey();
    const from = await made();
    const earlier = path.join(away, 'earlier.key');
    fs.renameSync(backupKey(), earlier);
    await makeKey();
    const to = path.join(away, 'fresh', 'clinic.sqlite');
    fs.cpSync(`${file}.keys`, `${to}.keys`, { recursive: true });
    const other = await runHere(restore, ['--from', from, '--to', to], env());
    expect(other).toMatchObject({
      code: 1,
      problem: expect.stringMatching(/another key\. Name the file .*--key/),
    });
    const none = await runHere(restore, ['--from', from, '--to', to], {});
    expect(none).toMatchObject({ code: 2, problem: expect.stringContaining('no key is named') });
    expect(fs.existsSync(to)).toBe(false);
    const own = await runHere(restore, ['--from', from, '--to', to, '--key', earlier], env());
    expect(own).toMatchObject({ code: 0 });
    expect(await runHere(checkFile, ['--file', await made()], env())).toMatchObject({ code: 0 });
  });

  it('a backup cut short is refused with the way out, and leaves nothing behind', async () => {
    await makeKey();
    const from = await made();
    fs.truncateSync(from, fs.statSync(from).size - 1);
    const to = path.join(away, 'fresh', 'clinic.sqlite');
    fs.cpSync(`${file}.keys`, `${to}.keys`, { recursive: true });
    const { code, problem } = await runHere(restore, ['--from', from, '--to', to], env());
    expect([code, problem]).toEqual([1, expect.stringMatching(/was not opened.*Take another backup/)]);
    expect(fs.readdirSync(path.dirname(to))).toEqual(['clinic.sqlite.keys']);
  });

  it('a backup key in the folder of the backups is refused, and a key that is there is never written over', async () => {
    await makeKey();
    const inside = await runHere(backup, ['--to', path.dirname(backupKey())], env());
    expect(inside).toMatchObject({
      code: 2,
      problem: expect.stringContaining('lies in the folder of the backups'),
    });
    const before = fs.readFileSync(backupKey(), 'utf8');
    expect(await makeKey()).toMatchObject({ code: 2, problem: expect.stringContaining('is there already') });
    expect(fs.readFileSync(backupKey(), 'utf8')).toBe(before);
  });

  it('clearing up takes away whole backups of its own and what its own left half-way, and nothing else', async () => {
    await makeKey();
    const all = [await made(), await made()];
    const own = 'loadgate-2026-01-02T03-04-05-678Z';
    const others = [
      'letters.sqlite',
      'loadgate-old.sqlite',
      `${own}.sqlite`,
      `${own}.encrypted`,
      'x.unfinished',
    ];
    for (const name of others) fs.writeFileSync(path.join(folder(), name), 'mine');
    const left = [
      `${own}.sqlite.unfinished`,
      `${own}.sqlite.audit-heads.unfinished`,
      `${own}.encrypted.unfinished`,
    ];
    for (const name of left) fs.writeFileSync(path.join(folder(), name), 'half');
    const { out } = await runHere(backup, ['--to', folder(), '--keep', '1'], env());
    expect(out.match(/^removed /gm)).toHaveLength(2);
    const there = fs.readdirSync(folder());
    expect(others.filter((name) => !there.includes(name))).toEqual([]);
    expect(left.filter((name) => there.includes(name))).toEqual([]);
    expect(all.filter((one) => fs.existsSync(one))).toEqual([]);
    expect(backupsIn(folder(), 'loadgate')).toHaveLength(1);
  });

  it.each([
    [[]],
    [['--page', '--make-backup-key', 'x']],
    [['--type-back', 'audit']],
    [['--type-back', 'x', '--to', 'y']],
  ])('asked for as %j ends with 2 and how to ask', async (args) => {
    const said = await runHere(keys, args, env());
    expect(said).toMatchObject({ code: 2, problem: expect.stringContaining('Usage') });
  });
});
