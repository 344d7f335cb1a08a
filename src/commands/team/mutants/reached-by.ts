/** Which files of tests run because a file of the engine is there: along their imports, types left out. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { inRoot } from '../../paths.mjs';

const imported = /^(?:import|export)\s(?!type\s)[^'"]*?from\s+'([#.][^']+)'/gm;

const resolved = (file: string, from: string): string =>
  from.startsWith('#')
    ? from
        .replace(/^#tests\//, 'tests/')
        .replace(/^#demo\//, 'demo-clinic/')
        .replace(/^#/, 'src/')
    : path.posix.join(path.posix.dirname(file), from);

const known = new Map<string, readonly string[]>();

const importsOf = (file: string): readonly string[] => {
  const held = known.get(file);
  if (held) return held;
  const text = /\.tsx?$/.test(file) ? readFileSync(inRoot(file), 'utf8') : '';
  const found = [...text.matchAll(imported)].map(([, from = '']) => resolved(file, from));
  known.set(file, found);
  return found;
};

const reach = (start: string): ReadonlySet<string> => {
  const files = new Set([start]);
  for (const file of files) for (const target of importsOf(file)) files.add(target);
  return files;
};

export const filesUnder = (folder: string, ending: string): readonly string[] =>
  readdirSync(inRoot(folder), { recursive: true, encoding: 'utf8' })
    .map((name) => path.posix.join(folder, name.replaceAll('\\', '/')))
    .filter((file) => file.endsWith(ending))
    .sort();

/** The given files of tests that reach a file. */
export const reachedBy = (tests: readonly string[]): ((file: string) => readonly string[]) => {
  const reached = new Map(tests.map((test) => [test, reach(test)]));
  return (file) => tests.filter((test) => reached.get(test)?.has(file));
};
