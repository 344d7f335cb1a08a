/**
 * `npm run mutants -- [--count N] [--minutes N] [--seed N]`: makes one small change at a time in a copy of the rules, the
 * dose, the facts and the baseline, and looks whether the engine's own tests notice. Exit 1 where fewer than 95
 * of 100 are noticed that a test could notice, 2 on wrong use.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { seeded } from '#simulation/raises/seeded.ts';
import { inRoot } from '../paths.mjs';
import { readNumbers } from './check-monotonic.ts';
import { equivalentMutants } from './mutants/equivalent.ts';
import { type Mutant, mutantsOf, mutated } from './mutants/find-mutants.ts';
import { filesUnder, reachedBy } from './mutants/reached-by.ts';
import { type Runner, startRunner } from './mutants/runner.ts';

const folders = ['rules', 'dose', 'facts', 'baseline'].map((name) => `src/core/decision/${name}`);
const ownTests = 'tests/core/decision';
const leastNoticed = 0.95;
/** Files of tests that take longer are tried one by one, after the others. */
const quickSeconds = 1;
const usage = 'Use: npm run mutants -- [--count N] [--minutes N] [--seed N]';

const textOf = (file: string): string => readFileSync(inRoot(file), 'utf8');

const drawn = (seed: number, count: number): readonly Mutant[] => {
  const random = seeded(seed);
  const all = folders
    .flatMap((folder) => filesUnder(folder, '.ts'))
    .flatMap((file) => mutantsOf(file, textOf(file)));
  console.log(`${all.length} mutants in all`);
  return all
    .map((mutant) => ({ mutant, place: random.next() }))
    .sort((a, b) => a.place - b.place)
    .slice(0, count)
    .map(({ mutant }) => mutant);
};

const lineOf = (text: string, { line }: Mutant): string => text.split('\n')[line - 1]?.trim() ?? '';

const reasonFor = (mutant: Mutant): string | undefined => {
  const text = textOf(mutant.file);
  const [line, after] = [text, mutated(text, mutant)].map((one) => lineOf(one, mutant));
  return equivalentMutants.find(
    (one) => one.file === mutant.file && one.line === line && one.mutant === after,
  )?.reason;
};

/** The test of the same name first, its folder, the other quick ones, then the slow ones, the shortest first. */
const groupsFor = (
  file: string,
  tests: readonly string[],
  { secondsOf }: Runner,
): readonly (readonly string[])[] => {
  const seconds = secondsOf();
  const isQuick = (test: string) => (seconds[test] ?? 0) < quickSeconds;
  const own = file.replace(/^src/, 'tests').replace(/\.ts$/, '.test.ts');
  const nearness = (test: string): number =>
    test === own ? 0 : path.posix.dirname(test) === path.posix.dirname(own) ? 1 : 2;
  const shortestFirst = tests
    .filter((test) => !isQuick(test))
    .sort((a, b) => (seconds[a] ?? 0) - (seconds[b] ?? 0));
  const quick = tests.filter(isQuick);
  const together = [0, 1, 2].map((near) => quick.filter((test) => nearness(test) === near));
  return [...together, ...shortestFirst.map((test) => [test])].filter((group) => group.length > 0);
};

const inWords = (mutant: Mutant): string =>
  `${mutant.file}:${mutant.line}: ${mutant.before} → ${mutant.after}   ${lineOf(textOf(mutant.file), mutant)}`;

interface Counts {
  killed: number;
  survived: number;
  equivalent: number;
}

const tryAll = async (mutants: readonly Mutant[], until: number, runner: Runner): Promise<Counts | null> => {
  const tests = filesUnder(ownTests, '.test.ts');
  const [first] = mutants;
  if (!first) return { killed: 0, survived: 0, equivalent: 0 };
  const unchanged = { file: first.file, before: textOf(first.file), after: textOf(first.file) };
  const failed = await runner.kill({ ...unchanged, groups: [tests] });
  if (failed) {
    console.error(`Without any change a test fails already: ${failed}`);
    return null;
  }
  const testsOf = reachedBy(tests);
  const counts: Counts = { killed: 0, survived: 0, equivalent: 0 };
  for (const mutant of mutants) {
    if (Date.now() > until) break;
    const reason = reasonFor(mutant);
    if (reason) {
      counts.equivalent++;
      console.log(`no difference  ${inWords(mutant)}   (${reason})`);
      continue;
    }
    const before = textOf(mutant.file);
    const groups = groupsFor(mutant.file, testsOf(mutant.file), runner);
    const killedBy = await runner.kill({ file: mutant.file, before, after: mutated(before, mutant), groups });
    counts[killedBy ? 'killed' : 'survived']++;
    console.log(
      `${killedBy ? 'killed   ' : 'SURVIVED '} ${inWords(mutant)}${killedBy ? `   by ${killedBy}` : ''}`,
    );
  }
  return counts;
};

export const run = async (args: string[]): Promise<number> => {
  const options = readNumbers(args, { minutes: 0, seed: 20_260_131, count: 150 });
  if (!options) {
    console.error(usage);
    return 2;
  }
  const until = options.minutes > 0 ? Date.now() + options.minutes * 60_000 : Number.POSITIVE_INFINITY;
  console.log(`seed ${options.seed}`);
  const runner = await startRunner();
  try {
    const counts = await tryAll(drawn(options.seed, options.count), until, runner);
    if (!counts) return 1;
    const { killed, survived, equivalent } = counts;
    const share = killed / Math.max(1, killed + survived);
    console.log(
      `${killed} killed, ${survived} survived, ${equivalent} make no difference: ${(share * 100).toFixed(1)} % killed`,
    );
    return share >= leastNoticed ? 0 : 1;
  } finally {
    runner.end();
  }
};
