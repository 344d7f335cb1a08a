/** Who else on the machine may read the clinic's files. Everything of it is for the user the server runs as. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { CannotGoOn } from '#commands/say.mjs';
import { headsFileOf } from '#data/audit/audit-heads.ts';

/** Rights of the group and of everybody else. */
const others = 0o077;

const within = (folder: string): readonly string[] =>
  existsSync(folder) ? [folder, ...readdirSync(folder).map((name) => path.join(folder, name))] : [];

/** The files beside a database that are its own. */
const placesOf = (databaseFile: string, named: readonly (string | null)[]): readonly string[] =>
  [
    ...['', '-wal', '-shm', '.lock'].map((end) => `${databaseFile}${end}`),
    headsFileOf(databaseFile),
    ...['.keys', '.backups', '.audit-archive'].flatMap((end) => within(`${databaseFile}${end}`)),
    ...named.filter((file) => file !== null),
  ].filter((place) => existsSync(place));

/** Of these, what others may read or write. Windows keeps its rights elsewhere. */
export const openToOthers = (
  databaseFile: string,
  named: readonly (string | null)[] = [],
): readonly string[] =>
  process.platform === 'win32'
    ? []
    : placesOf(databaseFile, named).filter((place) => (statSync(place).mode & others) !== 0);

const quoted = (place: string): string => `'${place.replaceAll("'", "'\\''")}'`;

/** Throws with the command that puts it right. */
export const requireOwnFiles = (databaseFile: string, named: readonly (string | null)[]): void => {
  const open = openToOthers(databaseFile, named);
  if (open.length === 0) return;
  throw new CannotGoOn(
    `Other users of this machine may read or write ${open.join(', ')}. Take that right away: chmod go= ${open.map(quoted).join(' ')}`,
  );
};
