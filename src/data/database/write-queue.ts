/** Writes one after another on the one writing connection; those that wait together share a commit. */
import { AsyncResource } from 'node:async_hooks';
import { setImmediate as turn, setTimeout as wait } from 'node:timers/promises';
import type { Connection } from './connection.ts';

/** A write waits for at most this many neighbours before its own commit is synced. */
const mostTogether = 16;

interface Waiting {
  readonly work: () => Promise<unknown>;
  readonly done: (value: unknown) => void;
  readonly failed: (error: unknown) => void;
}

interface Worked {
  readonly waiting: Waiting;
  readonly value: unknown;
}

/** How long a write waits for another program that holds the file, and how long between two tries. */
const longestWaitMs = 5000;
const betweenTriesMs = 20;

interface Fault {
  readonly code?: unknown;
  readonly cause?: Fault;
}

/** The driver's word for a fault; the query builder wraps it in one of its own. */
const codeOf = (error: unknown): string => {
  const fault = error as Fault | null | undefined;
  return String(fault?.code ?? fault?.cause?.code ?? '');
};

const isBusy = (error: unknown): boolean => /^SQLITE_(BUSY|LOCKED)/.test(codeOf(error));

/**
 * Begins a transaction. While another program holds the file the driver would wait inside the call, and with it
 * everybody who only reads; here it is asked again and again, and others go on in between.
 */
const begin = async ({ client }: Connection): Promise<void> => {
  const last = performance.now() + longestWaitMs;
  try {
    for (;;) {
      try {
        client.exec('PRAGMA busy_timeout = 0; BEGIN IMMEDIATE');
        return;
      } catch (error) {
        if (!isBusy(error) || performance.now() >= last) throw error;
        await wait(betweenTriesMs);
      }
    }
  } finally {
    if (client.open) client.exec(`PRAGMA busy_timeout = ${longestWaitMs}`);
  }
};

/** What the file has lately said of being written to. */
export interface WriteHealth {
  /** Instant of the last commit that was synced; null = none yet. */
  committedAt: number | null;
  /** Whether the newest commit failed for a fault of the file. */
  isFailing: boolean;
}

/** The driver ends the process when a closed connection is asked whether it is in a transaction. */
const isOpen = ({ client }: Connection): boolean => client.open && client.inTransaction;

/** One write inside the open transaction; what it wrote is undone when it fails. */
const inSavepoint = async (connection: Connection, work: () => Promise<unknown>) => {
  const { client, statements } = connection;
  client.exec('SAVEPOINT one_write');
  try {
    const value = await work();
    client.exec('RELEASE one_write');
    return value;
  } catch (error) {
    statements.remembered.begin();
    // Some faults of the file end the whole transaction by themselves.
    if (isOpen(connection)) client.exec('ROLLBACK TO one_write; RELEASE one_write');
    throw error;
  }
};

const isFaultOfFile = (error: unknown): boolean => /^SQLITE_(?!CONSTRAINT|ERROR)/.test(codeOf(error));

/** Runs some writes and commits them together. Nobody is told anything before the commit. */
const commitTogether = async (
  connection: Connection,
  batch: readonly Waiting[],
  health: WriteHealth,
): Promise<void> => {
  const { client, statements } = connection;
  const worked: Worked[] = [];
  const refused: (() => void)[] = [];
  // One that the disk had no room for is a fault of the file, though its neighbours found some.
  let isFailing = false;
  try {
    await begin(connection);
    statements.remembered.begin();
    for (const waiting of batch) {
      try {
        // Alone it needs none: rolling back the transaction undoes the same.
        const value = batch.length === 1 ? waiting.work() : inSavepoint(connection, waiting.work);
        worked.push({ waiting, value: await value });
      } catch (error) {
        refused.push(() => waiting.failed(error));
        isFailing ||= isFaultOfFile(error);
        if (batch.length === 1 || !isOpen(connection)) throw error;
      }
    }
    client.exec('COMMIT');
    health.committedAt = Date.now();
    health.isFailing = isFailing;
  } catch (error) {
    if (isFaultOfFile(error)) health.isFailing = true;
    if (isOpen(connection)) client.exec('ROLLBACK');
    for (const tell of refused) tell();
    // Whatever had been done is undone, so everybody not refused already hears of the fault.
    for (const waiting of batch) waiting.failed(error);
    return;
  } finally {
    statements.remembered.end();
  }
  for (const tell of refused) tell();
  for (const { waiting, value } of worked) waiting.done(value);
};

export const writeQueue = (connection: Connection, health: WriteHealth) => {
  const queue: Waiting[] = [];
  let isRunning = false;
  const drain = async (): Promise<void> => {
    isRunning = true;
    while (queue.length > 0) {
      await commitTogether(connection, queue.splice(0, mostTogether), health);
      // Answers go out and further requests come in before the next commit.
      if (queue.length > 0) await turn();
    }
    isRunning = false;
  };
  return <T>(work: () => Promise<T>): Promise<T> =>
    new Promise<T>((resolve, reject) => {
      // Each write runs as part of the request that asked for it, whoever started the queue.
      queue.push({
        work: AsyncResource.bind(work),
        done: resolve as (value: unknown) => void,
        failed: reject,
      });
      if (!isRunning) void drain();
    });
};
