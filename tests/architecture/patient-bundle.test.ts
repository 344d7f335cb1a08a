/** The patient's pages stay light: no widget library, tRPC client, zod or charts, not even by a detour. */
import { describe, expect, it } from 'vitest';
import {
  allFiles,
  codeFiles,
  importGraph,
  importsOfTree,
  isCode,
  resolveImport,
  treeOf,
  wayTo,
} from './repository.ts';

const heavy = /^(recharts|react-aria|@react-|@trpc\/|@tanstack\/|zod|temporal-polyfill|drizzle-orm|libsql)/;

/** Every package that runs because a file runs, with the way to it. */
const packagesOf = (
  file: string,
  way: readonly string[] = [],
  seen = new Set<string>(),
): readonly string[] => {
  if (seen.has(file)) return [];
  seen.add(file);
  return importsOfTree(treeOf(file))
    .filter(({ isType }) => !isType)
    .flatMap(({ from }) => {
      const target = resolveImport(file, from);
      if (target === null) return [[...way, file, from].join(' → ')];
      return isCode(target) && allFiles().includes(target) ? packagesOf(target, [...way, file], seen) : [];
    });
};

const isHeavy = (way: string) => heavy.test(way.split(' → ').at(-1) ?? '');

describe('the patient’s pages', () => {
  it('reach no heavy package', () => {
    const found = codeFiles('src/ui/patient').flatMap((file) => packagesOf(file).filter(isHeavy));
    expect([...new Set(found)]).toEqual([]);
  });

  it('reach no word of the staff screens', () => {
    const pages = codeFiles(
      'src/ui/patient',
      'src/ui/account/sign-in',
      'src/app/(patient)',
      'src/app/sign-in',
    );
    const graph = new Map([...importGraph('src/ui', 'src/app', 'src/messages'), ['patients', pages]]);
    expect(wayTo(graph, 'patients', (file) => file.startsWith('src/messages/en/staff'))).toBeNull();
  });

  it('would find one behind a detour', () => {
    const ways = packagesOf('src/api/batch/answer-line.ts').filter(isHeavy);
    expect(ways).toContain(
      'src/api/batch/answer-line.ts → src/api/inputs/evaluate.ts → src/api/inputs/from-descriptor.ts → zod',
    );
  });
});
