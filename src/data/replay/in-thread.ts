/** Inside the thread: one job after another, on a connection of its own that only reads. */
import type { MessagePort } from 'node:worker_threads';
import type { Access } from '../access.ts';
import { openFile } from '../database/store.ts';
import { type ClinicWhatIf, type Progress, type WhatIfAsked, whatIfOfClinic } from './what-if.ts';

export interface Job {
  readonly id: number;
  readonly file: string;
  readonly asking: Pick<Access, 'clinicId' | 'actorId' | 'actorName' | 'now' | 'day'>;
  readonly asked: WhatIfAsked;
}

export type ToThread = Job | { readonly stop: number };

export type FromThread =
  | { readonly id: number; readonly progress: Progress }
  | { readonly id: number; readonly found: ClinicWhatIf | null }
  | { readonly id: number; readonly fault: string };

/** Nothing is written from here, so nothing is sealed. */
const noKey = new Uint8Array();

const answerTo = async (port: MessagePort, job: Job, stopped: ReadonlySet<number>): Promise<FromThread> => {
  const { id, file, asking, asked } = job;
  const store = openFile(file);
  try {
    const found = await whatIfOfClinic({ ...asking, store, auditKey: noKey }, asked, async (progress) => {
      port.postMessage({ id, progress } satisfies FromThread);
      // Lets a stop be heard that was said meanwhile.
      await new Promise((heard) => setImmediate(heard));
      return !stopped.has(id);
    });
    return { id, found };
  } catch (error) {
    return { id, fault: error instanceof Error ? error.message : String(error) };
  } finally {
    store.close();
  }
};

export const answerOn = (port: MessagePort): void => {
  const stopped = new Set<number>();
  let last: Promise<void> = Promise.resolve();
  port.on('message', (told: ToThread) => {
    if ('stop' in told) {
      stopped.add(told.stop);
      return;
    }
    last = last.then(async () => {
      const answer = stopped.has(told.id)
        ? { id: told.id, found: null }
        : await answerTo(port, told, stopped);
      stopped.delete(told.id);
      port.postMessage(answer satisfies FromThread);
    });
  });
};
