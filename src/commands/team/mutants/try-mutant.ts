/**
 * A process of its own that keeps a test runner warm. It is handed one changed file at a time and answers which test
 * failed. Whoever started it ends it where a mutant never comes to an end.
 */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { createVitest } from 'vitest/node';

export interface Trial {
  readonly file: string;
  readonly before: string;
  readonly after: string;
  /** Groups of tests, tried one after the other until one fails. */
  readonly groups: readonly (readonly string[])[];
  /** Seconds each file took when nothing was changed, as far as known. */
  readonly secondsOf: Readonly<Record<string, number>>;
}

export type Told =
  | { readonly kind: 'ready' }
  /** The next group has begun; so many milliseconds are ample for it. */
  | { readonly kind: 'began'; readonly ample: number }
  /** The first test that failed; null where all passed. */
  | { readonly kind: 'tried'; readonly killedBy: string | null; readonly secondsOf: Record<string, number> };

const [scratch = ''] = process.argv.slice(2);
const tell = (told: Told): void => void process.send?.(told);

const vitest = await createVitest('test', {
  root: scratch,
  config: path.join(scratch, 'tests', 'vitest.config.ts'),
  watch: false,
  bail: 1,
  maxWorkers: 1,
  reporters: [{}],
});
await vitest.standalone();

/** Seconds each file took the first time, when nothing was changed. */
const usual = new Map<string, number>();
const leastAmple = 60_000;

const ampleFor = (files: readonly string[]): number =>
  files.some((file) => !usual.has(file))
    ? 20 * leastAmple
    : leastAmple + 8000 * files.reduce((sum, file) => sum + (usual.get(file) ?? 0), 0);

const firstFailure = async (files: readonly string[]): Promise<string | null> => {
  tell({ kind: 'began', ample: ampleFor(files) });
  const specifications = files.flatMap((file) => vitest.getModuleSpecifications(path.join(scratch, file)));
  vitest.state.filesMap.clear();
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specifications, false);
  for (const module of testModules) {
    const seconds = module.diagnostic().duration / 1000;
    if (!usual.has(module.relativeModuleId)) usual.set(module.relativeModuleId, seconds);
    if (module.state() !== 'failed') continue;
    const [test] = module.children.allTests('failed');
    return test ? `${module.relativeModuleId}: ${test.fullName}` : module.relativeModuleId;
  }
  return unhandledErrors.length > 0 ? 'an error outside of a test' : null;
};

const replace = (file: string, text: string): void => {
  const place = path.join(scratch, file);
  writeFileSync(place, text);
  vitest.invalidateFile(place);
};

process.on('message', async ({ file, before, after, groups, secondsOf }: Trial) => {
  for (const [test, seconds] of Object.entries(secondsOf)) usual.set(test, seconds);
  replace(file, after);
  let killedBy: string | null = null;
  for (const group of groups) killedBy ??= await firstFailure(group);
  replace(file, before);
  tell({ kind: 'tried', killedBy, secondsOf: Object.fromEntries(usual) });
});
// Whoever started it is gone.
process.on('disconnect', () => process.exit());
tell({ kind: 'ready' });
