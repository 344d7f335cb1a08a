/**
 * Looks at the database file before the server opens it, in a process of its own: the driver ends the process
 * that reads certain damage, and nobody would be told why.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, statSync } from 'node:fs';
import { inRoot } from '../paths.mjs';
import { CannotGoOn, say } from '../say.mjs';

/** Looked through before a start in some seconds; a larger file would keep a clinic waiting for its server. */
const mostBytes = 500_000_000;

const wayOut =
  'Stop every program that uses it, and put a backup in its place: npm run restore -- --from BACKUP --to FILE';

const look = async (file) => {
  const child = spawn(process.execPath, [inRoot('src', 'data', 'database', 'file-check.mjs'), file], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const end = () => child.kill('SIGKILL');
  process.once('exit', end);
  let said = '';
  child.stdout.on('data', (part) => {
    said += part;
  });
  const [code, signal] = await once(child, 'close').catch((error) => {
    throw new CannotGoOn(
      `The program that looks at the database file could not be started (${error.code ?? error.message}). Give the user the server runs as the right to start ${process.execPath} and to use /dev/null.`,
    );
  });
  process.off('exit', end);
  return { code, signal, lines: said.split('\n').filter(Boolean) };
};

/**
 * Ends with the reason when the file is damaged.
 * @param {string} file
 * @param {number} most bytes up to which it is looked through
 */
export const requireWholeFile = async (file, most = mostBytes) => {
  if (!existsSync(file) || statSync(file).size === 0) return;
  if (statSync(file).size > most) {
    say(`${file} is too large to be looked through before each start. Do it at night: npm run check-file`);
    return;
  }
  const { code, signal, lines } = await look(file);
  if (code === 0) return;
  const reason = lines[0] ?? `reading it ended the program that looked at it (${signal ?? code})`;
  const more = lines.length > 1 ? ` and ${lines.length - 1} more` : '';
  throw new CannotGoOn(`The database file ${file} cannot be used: ${reason}${more}. ${wayOut}`);
};
