/**
 * `npm run mutants -- [--files PART] [--count N] [--minutes N] [--seed N]`: makes one small change at a time in a copy of
 * the rules, the dose, the facts and the baseline, and looks whether the engine's own tests notice. With a part of
 * a path it tries every change in the files whose path holds it. Exit 1 where fewer than 95 of 100 are noticed that
 * a test could notice, 2 on wrong use.
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
const usage = 'Use: npm run mutants -- [--files PART] [--count N] [--minutes N] [--seed N]';

const textOf = (file: string): string => readFileSync(inRoot(file), 'utf8');

const drawn = (part: string, seed: number, count: number): readonly Mutant[] => {
  const random = seeded(seed);
  const all = folders
    .flatMap((folder) => filesUnder(folder, '.ts'))
    .filter((file) => file.includes(part))
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
    (one) => mutant.file.startsWith(one.file) && one.line === line && one.mutant === after,
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
  survivors: string[];
  equivalent: number;
}

const nothing = (): Counts => ({ killed: 0, survivors: [], equivalent: 0 });

const tryAll = async (mutants: readonly Mutant[], until: number, runner: Runner): Promise<Counts | null> => {
  const tests = filesUnder(ownTests, '.test.ts');
  const [first] = mutants;
  if (!first) return nothing();
  const unchanged = { file: first.file, before: textOf(first.file), after: textOf(first.file) };
  const failed = await runner.kill({ ...unchanged, groups: [tests] });
  if (failed) {
    console.error(`Without any change a test fails already: ${failed}`);
    return null;
  }
  const testsOf = reachedBy(tests);
  const counts = nothing();
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
    if (killedBy) counts.killed++;
    else counts.survivors.push(inWords(mutant));
    console.log(killedBy ? `killed    ${inWords(mutant)}   by ${killedBy}` : `SURVIVED  ${inWords(mutant)}`);
  }
  return counts;
};

const report = ({ killed, survivors, equivalent }: Counts): boolean => {
  const tried = killed + survivors.length;
  const share = killed / Math.max(1, tried);
  if (survivors.length > 0) console.log(['Survivors:', ...survivors].join('\n  '));
  console.log(
    `${tried} tried, ${killed} killed, ${survivors.length} survived: ${(share * 100).toFixed(1)} % killed, the bar is ${leastNoticed * 100} %; ${equivalent} more make no difference`,
  );
  return share >= leastNoticed;
};

/** The part of a path that is asked for, and the other arguments. */
const filesAsked = (
  args: readonly string[],
): { readonly part: string; readonly others: readonly string[] } => {
  const at = args.indexOf('--files');
  const part = args[at + 1];
  return at < 0 || part === undefined ? { part: '', others: args } : { part, others: args.toSpliced(at, 2) };
};

export const run = async (args: string[]): Promise<number> => {
  const { part, others } = filesAsked(args);
  const count = part ? Number.MAX_SAFE_INTEGER : 150;
  const options = readNumbers(others, { minutes: 0, seed: 20_260_131, count });
  if (!options) {
    console.error(usage);
    return 2;
  }
  const until = options.minutes > 0 ? Date.now() + options.minutes * 60_000 : Number.POSITIVE_INFINITY;
  console.log(`seed ${options.seed}`);
  const mutants = drawn(part, options.seed, options.count);
  if (mutants.length === 0) {
    console.error(`There is nothing to change in files of the engine with "${part}" in their path. ${usage}`);
    return 2;
  }
  const runner = await startRunner();
  try {
    const counts = await tryAll(mutants, until, runner);
    return counts && report(counts) ? 0 : 1;
  } finally {
    runner.end();
  }
};
