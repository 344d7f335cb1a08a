/** A command as the runner runs it, in this process: what it wrote, and the code it ended with. */
import { vi } from 'vitest';
import { CannotGoOn } from '#commands/say.mjs';

type Run = (args: readonly string[]) => Promise<number>;

export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly problem: string;
}

const endOf = async (run: Run, args: readonly string[]): Promise<{ code: number; said: string }> => {
  try {
    return { code: await run(args), said: '' };
  } catch (error) {
    if (!(error instanceof CannotGoOn)) throw error;
    return { code: error.exitCode, said: error.message };
  }
};

export const runHere = async (
  run: Run,
  args: readonly string[],
  env: Readonly<Record<string, string>>,
): Promise<Ended> => {
  const out: string[] = [];
  const problem: string[] = [];
  const log = vi.spyOn(console, 'log').mockImplementation((line: unknown = '') => {
    out.push(`${line}\n`);
  });
  const written = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out.push(String(text));
    return true;
  });
  const error = vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    problem.push(String(text));
    return true;
  });
  for (const [name, value] of Object.entries(env)) vi.stubEnv(name, value);
  try {
    const { code, said } = await endOf(run, args);
    return { code, out: out.join(''), problem: problem.join('') + said };
  } finally {
    vi.unstubAllEnvs();
    log.mockRestore();
    written.mockRestore();
    error.mockRestore();
  }
};
