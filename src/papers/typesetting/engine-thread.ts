/** Hands a paper to the engine's thread and waits for it; a thread that died is begun anew by the next paper. */
import path from 'node:path';
import type { Worker } from 'node:worker_threads';
import { paperFonts } from './fonts.ts';

export interface SetPaper {
  readonly pdf: Uint8Array;
  readonly pages: number;
  /** Of the looks, the one it was set in. */
  readonly place: number;
}

export interface ToSet {
  readonly template: string;
  readonly data: string;
  readonly looks: readonly string[];
  readonly mostPages: number;
  readonly counted: string | null;
  readonly timestamp: number;
}

interface Waiting {
  readonly done: (paper: SetPaper) => void;
  readonly failed: (fault: Error) => void;
}

type Answer = { readonly id: number } & (SetPaper | { readonly fault: string });

const folder = path.join(process.cwd(), 'src', 'papers');

const waiting = new Map<number, Waiting>();
let thread: Worker | null = null;
let count = 0;

/** While nobody waits the thread keeps no process from ending. */
const answer = (worker: Worker, told: Answer): void => {
  const { done, failed } = waiting.get(told.id)!;
  waiting.delete(told.id);
  if (waiting.size === 0) worker.unref();
  if ('fault' in told) failed(new Error(told.fault));
  else done(told);
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
  const worker = new threads.Worker(path.join(folder, 'typesetting', 'engine.mjs'), {
    workerData: { workspace: path.join(folder, 'templates'), fonts: paperFonts() },
    // What the process was started with to read our own sources is nothing to plain JavaScript.
    execArgv: [],
  });
  worker.on('message', (told: Answer) => answer(worker, told));
  worker.on('error', (fault) => died(worker, fault as Error));
  worker.on('exit', (code) => died(worker, new Error(`The engine’s thread ended with ${code}.`)));
  return worker;
};

export const setPaper = (job: ToSet): Promise<SetPaper> =>
  new Promise((done, failed) => {
    thread ??= begun();
    const id = ++count;
    waiting.set(id, { done, failed });
    thread.ref();
    const template = path.join(folder, 'templates', `${job.template}.typ`);
    thread.postMessage({ ...job, id, template });
  });
