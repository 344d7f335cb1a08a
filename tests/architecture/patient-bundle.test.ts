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

/** Every file that comes with some files; those it fetches later as well where `follows` is told what to follow. */
const readWith = (starts: readonly string[], follows?: (target: string) => boolean): ReadonlySet<string> => {
  const files = new Set(starts);
  for (const file of files) {
    for (const { from, isType, isFetched } of importsOfTree(treeOf(file))) {
      const target = isType || (isFetched && !follows) ? null : resolveImport(file, from);
      if (target && isCode(target) && (follows?.(target) ?? true)) files.add(target);
    }
  }
  return files;
};

const isOfStaff = (file: string) => file.startsWith('src/messages/en/staff');

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
    expect(wayTo(graph, 'patients', isOfStaff)).toBeNull();
  });

  it('reach none from the account page, which staff have too, before it is fetched for them', () => {
    expect([...readWith(['src/ui/account/account-screen.tsx'])].filter(isOfStaff)).toEqual([]);
    expect([...readWith(['src/ui/account/staff-sign-in.tsx'])].filter(isOfStaff)).not.toEqual([]);
  });

  it('carry nothing of what would have changed a decision, nor does a procedure of theirs', () => {
    // The server's own caller knows every procedure; what a page calls there is the patient's.
    const isServer = (file: string) => file.startsWith('src/server/');
    const read = (...folders: string[]) => [
      ...readWith(codeFiles(...folders), (target) => !isServer(target)),
    ];
    const tells = (file: string) => /what-would-change|other-answers/.test(file);
    const theirs = read('src/ui/patient', 'src/app/(patient)', 'src/api/patient');
    expect(theirs.filter(tells)).toEqual([]);
    expect(read('src/app/(clinician)').filter(tells).length).toBeGreaterThan(3);
    expect(read('src/api/clinician').filter(tells)).toContain('src/core/decision/what-would-change.ts');
  });

  it('would find one behind a detour', () => {
    const ways = packagesOf('src/api/batch/answer-line.ts').filter(isHeavy);
    expect(ways).toContain(
      'src/api/batch/answer-line.ts → src/api/inputs/evaluate.ts → src/api/inputs/from-descriptor.ts → zod',
    );
  });
});
