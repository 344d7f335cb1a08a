/** Writes one after another on the one writing connection; those that wait together share a commit. */
import { AsyncResource } from 'node:async_hooks';
import { setImmediate as turn } from 'node:timers/promises';
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

/** Runs some writes and commits them together. Nobody is told anything before the commit. */
const commitTogether = async (connection: Connection, batch: readonly Waiting[]): Promise<void> => {
  const { client, statements } = connection;
  const worked: Worked[] = [];
  const refused: (() => void)[] = [];
  try {
    client.exec('BEGIN IMMEDIATE');
    statements.remembered.begin();
    for (const waiting of batch) {
      try {
        // Alone it needs none: rolling back the transaction undoes the same.
        const value = batch.length === 1 ? waiting.work() : inSavepoint(connection, waiting.work);
        worked.push({ waiting, value: await value });
      } catch (error) {
        refused.push(() => waiting.failed(error));
        if (batch.length === 1 || !isOpen(connection)) throw error;
      }
    }
    client.exec('COMMIT');
  } catch (error) {
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

export const writeQueue = (connection: Connection) => {
  const queue: Waiting[] = [];
  let isRunning = false;
  const drain = async (): Promise<void> => {
    isRunning = true;
    while (queue.length > 0) {
      await commitTogether(connection, queue.splice(0, mostTogether));
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
