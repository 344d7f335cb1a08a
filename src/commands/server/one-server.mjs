/**
 * One server on one file. A second one would count tries and calls apart and keep a clock of its own. The lock is
 * the operating system's, on a small file beside the database: it goes with the process, however that ends.
 */
import Client from 'libsql';
import { CannotGoOn } from '../say.mjs';

/** A server that is just ending may take this long to let go. */
const waitMilliseconds = 1000;

export const lockFileOf = (databaseFile) => `${databaseFile}.lock`;

const isBusy = (error) => /^SQLITE_(BUSY|LOCKED)/.test(error?.code ?? '');

const holderOf = (client) => {
  try {
    return client.prepare('SELECT pid FROM holder').get()?.pid ?? null;
  } catch {
    return null;
  }
};

const take = (client) => {
  client.exec('BEGIN IMMEDIATE');
  client.exec('CREATE TABLE IF NOT EXISTS holder (pid integer NOT NULL); DELETE FROM holder');
  client.prepare('INSERT INTO holder VALUES (?)').run(process.pid);
  client.exec('COMMIT; BEGIN IMMEDIATE');
};

const serving = (file, holder) =>
  `Another server${holder} is running on ${file}. End that one first, or name another file with DATABASE_FILE.`;

/**
 * Takes the lock until this process ends, or `release` is called.
 * @param {string} databaseFile
 * @param {(file: string, holder: string) => string} taken what is said when somebody else has it
 */
export const holdFile = (databaseFile, taken = serving) => {
  const client = new Client(lockFileOf(databaseFile), { timeout: waitMilliseconds });
  try {
    take(client);
  } catch (error) {
    const pid = isBusy(error) ? holderOf(client) : null;
    client.close();
    if (!isBusy(error)) throw error;
    throw new CannotGoOn(taken(databaseFile, pid === null ? '' : ` (process ${pid})`));
  }
  return {
    release: () => {
      client.exec('ROLLBACK');
      client.close();
    },
  };
};
