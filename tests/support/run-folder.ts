/**
 * One folder for all that a run of the tests writes: in memory where the machine has room for it there, since
 * every save waits for the file to be synced. A worker that is ended takes nothing away, so the run does it.
 */
import { accessSync, chmodSync, constants, mkdtempSync, readdirSync, rmSync, statfsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

const memory = '/dev/shm';
/** A whole run leaves well under one. */
const leastFreeBytes = 3 * 1024 ** 3;
const named = /^loadgate-run-(\d+)-/;

const hasRoom = (): boolean => {
  try {
    accessSync(memory, constants.W_OK);
    const { bavail, bsize } = statfsSync(memory);
    return bavail * bsize >= leastFreeBytes;
  } catch {
    return false;
  }
};

const isRunning = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
};

/** A run that was killed could not tidy up behind itself. */
const clearOlderRuns = (place: string): void => {
  for (const name of readdirSync(place)) {
    const pid = Number(named.exec(name)?.[1] ?? process.pid);
    if (!isRunning(pid)) rmSync(path.join(place, name), { recursive: true, force: true });
  }
};

export const setup = (): (() => void) => {
  const before = process.env.TMPDIR;
  const place = hasRoom() ? memory : tmpdir();
  clearOlderRuns(place);
  const folder = mkdtempSync(path.join(place, `loadgate-run-${process.pid}-`));
  // One test starts the server as another user, who writes here too.
  chmodSync(folder, 0o1777);
  process.env.TMPDIR = folder;
  return () => {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
    rmSync(folder, { recursive: true, force: true });
  };
};
