/** The engine in a scratch copy, and the process that tries mutants in it; a new one after a mutant without end. */
import { type ChildProcess, fork } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { inRoot, root } from '../../paths.mjs';
import type { Told, Trial } from './try-mutant.ts';

/** What the engine's own tests read. */
const copied = ['src', 'tests', 'demo-clinic', 'package.json', 'tsconfig.json'];

export interface Runner {
  /** The first test that failed, "no end" where none came to one; null where all passed. */
  readonly kill: (trial: Omit<Trial, 'secondsOf'>) => Promise<string | null>;
  /** Seconds each file of tests took when nothing was changed. */
  readonly secondsOf: () => Readonly<Record<string, number>>;
  readonly end: () => void;
}

const started = (scratch: string): Promise<ChildProcess> =>
  new Promise((resolve) => {
    const child = fork(inRoot('src', 'commands', 'team', 'mutants', 'try-mutant.ts'), [scratch], {
      cwd: root,
      execArgv: ['--import', 'tsx'],
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    });
    child.once('message', () => resolve(child));
  });

const scratchCopy = (): string => {
  const scratch = mkdtempSync(path.join(tmpdir(), 'mutants-'));
  for (const name of copied) cpSync(inRoot(name), path.join(scratch, name), { recursive: true });
  symlinkSync(inRoot('node_modules'), path.join(scratch, 'node_modules'));
  return scratch;
};

export const startRunner = async (): Promise<Runner> => {
  const scratch = scratchCopy();
  let child = await started(scratch);
  let seconds: Readonly<Record<string, number>> = {};
  const answerOf = (trial: Omit<Trial, 'secondsOf'>): Promise<string | null | undefined> =>
    new Promise((resolve) => {
      let timer: NodeJS.Timeout | undefined;
      const done = (killedBy: string | null | undefined) => {
        clearTimeout(timer);
        child.removeAllListeners();
        resolve(killedBy);
      };
      child.on('message', (told: Told) => {
        clearTimeout(timer);
        if (told.kind === 'began') timer = setTimeout(() => done(undefined), told.ample);
        if (told.kind !== 'tried') return;
        seconds = told.secondsOf;
        done(told.killedBy);
      });
      child.on('exit', () => done(undefined));
      // A new process knows no times: without them it would wait far too long for a mutant without end.
      child.send({ ...trial, secondsOf: seconds });
    });
  return {
    kill: async (trial) => {
      const killedBy = await answerOf(trial);
      if (killedBy !== undefined) return killedBy;
      child.kill('SIGKILL');
      cpSync(inRoot(trial.file), path.join(scratch, trial.file));
      child = await started(scratch);
      return 'no end';
    },
    secondsOf: () => seconds,
    end: () => {
      child.kill();
      rmSync(scratch, { recursive: true, force: true });
    },
  };
};
