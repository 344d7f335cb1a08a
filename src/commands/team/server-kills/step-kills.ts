/** Each act to a file, ended hard before each of its steps: the file stays whole, and the act done again succeeds. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { openStore } from '#data/open-store.ts';
import { inRoot, root } from '../../paths.mjs';
import { type Act, doAct, findingsAfter, rowsOfChains } from './acts.ts';

export interface KilledFile {
  readonly file: string;
  readonly auditKey: Uint8Array;
}

interface Journal {
  readonly entries: readonly { readonly tag: string; readonly idx: number; readonly when: number }[];
}

/** A step as a later release may add one: a column, a table with rows, a trigger. */
const laterStep = [
  'ALTER TABLE site ADD COLUMN parking text;',
  'CREATE TABLE room (id text PRIMARY KEY NOT NULL, site_id text REFERENCES site(id));',
  "INSERT INTO room (id) VALUES ('one'), ('two');",
  'CREATE INDEX room_of_site ON room (site_id);',
].join('\n--> statement-breakpoint\n');

/** The schema of this release with a made-up step behind it. */
const laterRelease = (folder: string): string => {
  const release = path.join(folder, 'later-release');
  cpSync(inRoot('drizzle'), release, { recursive: true });
  const file = path.join(release, 'meta', '_journal.json');
  const journal = JSON.parse(readFileSync(file, 'utf8')) as Journal;
  const last = journal.entries.at(-1)!;
  const step = { ...last, idx: last.idx + 1, when: last.when + 1000, tag: '9999_rooms' };
  writeFileSync(file, JSON.stringify({ ...journal, entries: [...journal.entries, step] }));
  writeFileSync(path.join(release, '9999_rooms.sql'), laterStep);
  return release;
};

const parts = ['', '-wal', '.keys', '.audit-heads'];

/** A copy of a closed file with what belongs to it, in a folder of its own. */
const copyOf = ({ file }: KilledFile, folder: string): string => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const copy = path.join(folder, 'clinic.sqlite');
  for (const end of parts)
    if (existsSync(`${file}${end}`)) cpSync(`${file}${end}`, `${copy}${end}`, { recursive: true });
  return copy;
};

/** Whether it was killed; one that has fewer steps ends by itself. */
const killedAt = async (
  act: Act,
  file: string,
  { auditKey, release, at }: { auditKey: Uint8Array; release: string; at: number | string },
): Promise<boolean> => {
  const asked = { act, file, auditKeyHex: Buffer.from(auditKey).toString('hex'), release, at };
  const program = inRoot('src', 'commands', 'team', 'server-kills', 'killed-step.ts');
  const child = spawn(process.execPath, ['--import', 'tsx', program, JSON.stringify(asked)], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const [code, signal] = await once(child, 'close');
  if (signal === 'SIGKILL') return true;
  if (code !== 0) throw new Error(`the ${act} ended with ${code}`);
  return false;
};

/** Kills an act once before `at`. Answers null where it has no such step, else what does not hold afterwards. */
export const killOnce = async (
  from: KilledFile,
  act: Act,
  at: number | string,
  folder: string,
): Promise<readonly string[] | null> => {
  const { auditKey } = from;
  const release = laterRelease(folder);
  const file = copyOf(from, path.join(folder, 'killed'));
  const store = openStore(file);
  const { rows } = await rowsOfChains(store, auditKey);
  store.close();
  if (!(await killedAt(act, file, { auditKey, release, at }))) return null;
  const after = await findingsAfter(file, auditKey, rows, false);
  await doAct(act, file, auditKey, release);
  const again = await findingsAfter(file, auditKey, rows, true);
  return [...after, ...again].map((finding) => `${act}, before step ${at}: ${finding}`);
};

/** Kills an act before each of its steps, or each `every`-th. */
export const killEachStep = async (
  from: KilledFile,
  act: Act,
  folder: string,
  every = 1,
): Promise<{ readonly kills: number; readonly faults: readonly string[] }> => {
  const faults: string[] = [];
  for (let at = 1; ; at += every) {
    const found = await killOnce(from, act, at, folder);
    if (!found) return { kills: Math.ceil((at - 1) / every), faults };
    faults.push(...found);
  }
};
