/** The tests themselves: each belongs to a part of `npm test`, none is switched off. */
import { describe, expect, it } from 'vitest';
import { foldersOfParts, lanes } from '#commands/team/test-parts.mjs';
import budgets from '#tests/budgets.json' with { type: 'json' };
import { allFiles, codeFiles, textOf } from './repository.ts';

describe('every test runs', () => {
  it('belongs to a part of the whole check', () => {
    const folders = Object.values(foldersOfParts).flat();
    const tests = allFiles().filter((file) => /\.(test|spec)\.tsx?$/.test(file));
    expect(tests.filter((file) => !folders.some((folder) => file.startsWith(`${folder}/`)))).toEqual([]);
  });

  it('each part has a budget and each budget a part', () => {
    expect(Object.keys(budgets).sort()).toEqual(
      lanes
        .flat()
        .map((part) => part.name)
        .sort(),
    );
  });

  it('none is skipped, left for later, expected to fail or run alone', () => {
    const switches = /\b(it|test|describe)\.(skip|only|todo|fails|skipIf|runIf|fixme|fail)\b/;
    const found = codeFiles('tests').filter(
      (file) => file !== 'tests/architecture/tests.test.ts' && switches.test(textOf(file)),
    );
    expect(found).toEqual([]);
  });
});
