/**
 * A lock that belongs to one process and goes with it, however that ends: the operating system's own, on a small
 * file of its own.
 */
import Client from 'libsql';

/** One that is just ending may take this long to let go. */
const waitMilliseconds = 1000;

const isBusy = (error) => /^SQLITE_(BUSY|LOCKED)/.test(error?.code ?? '');

const holderIn = (client) => {
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

/**
 * Takes the lock until this process ends or `release` is called; when another process has it, says which.
 * @param {string} lockFile
 * @returns {{ release: () => void } | { holder: number | null }}
 */
export const lockedBy = (lockFile) => {
  const client = new Client(lockFile, { timeout: waitMilliseconds });
  try {
    take(client);
  } catch (error) {
    const holder = isBusy(error) ? holderIn(client) : null;
    client.close();
    if (!isBusy(error)) throw error;
    return { holder };
  }
  return {
    release: () => {
      client.exec('ROLLBACK');
      client.close();
    },
  };
};
