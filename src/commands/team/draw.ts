/**
 * `npm run draw -- [--minutes N] [--seed N]`: the tests of drawn cases that `npm test` tries a part of, each
 * as often as its guarantee is meant, with one seed after the other until the minutes are over; one seed
 * unless told otherwise. Exit 1 at the first seed that finds a fault, 2 on wrong use.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { inRoot, root } from '../paths.mjs';
import { readNumbers } from './check-monotonic.ts';

const usage = 'Use: npm run draw -- [--minutes N] [--seed N]';

/** Test files that say how often they draw. */
const drawnTests = (): readonly string[] =>
  readdirSync(inRoot('tests'), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.test\.tsx?$/.test(file))
    .filter((file) =>
      readFileSync(inRoot('tests', file), 'utf8').includes("'#tests/support/drawn-rounds.ts'"),
    )
    .map((file) => `tests/${file}`);

const runWith = (seed: number, files: readonly string[]): boolean => {
  const vitest = inRoot('node_modules', 'vitest', 'vitest.mjs');
  const args = [vitest, 'run', '--config', 'tests/vitest.config.ts', '--testTimeout=3600000', ...files];
  const env = { ...process.env, DRAW_SEED: String(seed) };
  return spawnSync(process.execPath, args, { cwd: root, env, stdio: 'inherit' }).status === 0;
};

export const run = (args: readonly string[]): number => {
  const options = readNumbers(args, { minutes: 0, seed: 20_260_131 });
  if (!options) {
    console.error(usage);
    return 2;
  }
  const files = drawnTests();
  const until = Date.now() + options.minutes * 60_000;
  let { seed } = options;
  do {
    console.log(`seed ${seed}`);
    if (!runWith(seed, files)) return 1;
    seed += 1;
  } while (Date.now() < until);
  console.log(`${seed - options.seed} seeds, no fault found`);
  return 0;
};
