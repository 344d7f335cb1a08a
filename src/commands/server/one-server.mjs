/** One server on one file. A second one would count tries and calls apart and keep a clock of its own. */
import { lockedBy } from '#data/database/file-lock.mjs';
import { CannotGoOn } from '../say.mjs';

export const lockFileOf = (databaseFile) => `${databaseFile}.lock`;

const serving = (file, holder) =>
  `Another server${holder} is running on ${file}. End that one first, or name another file with DATABASE_FILE.`;

/**
 * Takes the lock of a file until this process ends, or `release` is called.
 * @param {string} databaseFile
 * @param {(file: string, holder: string) => string} taken what is said when somebody else has it
 */
export const holdFile = (databaseFile, taken = serving) => {
  const lock = lockedBy(lockFileOf(databaseFile));
  if ('release' in lock) return lock;
  throw new CannotGoOn(taken(databaseFile, lock.holder === null ? '' : ` (process ${lock.holder})`));
};
