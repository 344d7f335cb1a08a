/**
 * A whole clinic is worked out on a thread of its own, so that saves go on beside it. Whoever asked is told how far it
 * is and may stop it; each job is named by whoever asks and known to nobody else.
 */
import path from 'node:path';
import type { Worker } from 'node:worker_threads';
import type { Access } from '../access.ts';
import type { FromThread, Job, ToThread } from './in-thread.ts';
import type { ClinicWhatIf, Progress, WhatIfAsked } from './what-if.ts';

interface Waiting {
  readonly name: string;
  progress: Progress;
  readonly done: (found: ClinicWhatIf | null) => void;
  readonly failed: (fault: Error) => void;
}

const waiting = new Map<number, Waiting>();
let thread: Worker | null = null;
let count = 0;

/** While nobody waits the thread keeps no process from ending. */
const leave = (worker: Worker, id: number): Waiting | undefined => {
  const one = waiting.get(id);
  waiting.delete(id);
  if (waiting.size === 0) worker.unref();
  return one;
};

const hear = (worker: Worker, told: FromThread): void => {
  if ('progress' in told) {
    const one = waiting.get(told.id);
    if (one) one.progress = told.progress;
  } else if ('fault' in told) leave(worker, told.id)?.failed(new Error(told.fault));
  else leave(worker, told.id)?.done(told.found);
};

const died = (worker: Worker, fault: Error): void => {
  if (thread !== worker) return;
  thread = null;
  for (const { failed } of waiting.values()) failed(fault);
  waiting.clear();
};

/** Asked for as the program runs: a build that saw it would put the thread’s file together anew. */
const begun = (): Worker => {
  const threads = process.getBuiltinModule('node:worker_threads');
  const file = path.join(process.cwd(), 'src', 'data', 'replay', 'thread.mjs');
  const worker = new threads.Worker(file, { execArgv: [] });
  worker.on('message', (told: FromThread) => hear(worker, told));
  worker.on('error', (fault) => died(worker, fault as Error));
  worker.on('exit', (code) => died(worker, new Error(`The thread of the replay ended with ${code}.`)));
  return worker;
};

/** Of one person: nobody hears of another's job, nor ends it. */
const nameOf = ({ clinicId, actorId }: Pick<Access, 'clinicId' | 'actorId'>, name: string): string =>
  JSON.stringify([clinicId, actorId, name]);

/** Null where it was stopped. */
export const whatIfOnThread = (
  access: Access,
  asked: WhatIfAsked,
  name: string,
): Promise<ClinicWhatIf | null> =>
  new Promise((done, failed) => {
    thread ??= begun();
    const id = ++count;
    waiting.set(id, { name: nameOf(access, name), progress: { done: 0, of: 0 }, done, failed });
    thread.ref();
    const { clinicId, actorId, actorName, now, day } = access;
    const asking = { clinicId, actorId, actorName, now, day };
    thread.postMessage({ id, file: access.store.file, asking, asked } satisfies Job);
  });

const jobNamed = (access: Access, name: string): [number, Waiting] | undefined =>
  [...waiting].find(([, one]) => one.name === nameOf(access, name));

/** How far a job is; null where there is none of this name any more. */
export const progressOf = (access: Access, name: string): Progress | null =>
  jobNamed(access, name)?.[1].progress ?? null;

/** Ends a job after the person it is at. */
export const stopJob = (access: Access, name: string): void => {
  const [id] = jobNamed(access, name) ?? [];
  if (id !== undefined) thread?.postMessage({ stop: id } satisfies ToThread);
};
