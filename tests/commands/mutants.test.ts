/** What `npm run mutants` makes of a text, which tests it runs, and that what it excuses is still there. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { equivalentMutants } from '#commands/team/mutants/equivalent.ts';
import { mutantsOf, mutated } from '#commands/team/mutants/find-mutants.ts';
import { filesUnder, reachedBy } from '#commands/team/mutants/reached-by.ts';

const root = path.resolve(import.meta.dirname, '../..');

const changed = (text: string): readonly string[] =>
  mutantsOf('x.ts', text).map((mutant) => mutated(text, mutant));

describe('mutants', () => {
  it.each([
    ['a < b', ['a <= b', 'a >= b']],
    ['a >= b', ['a > b', 'a < b']],
    ['a === b', ['a !== b']],
    ['a + b', ['a - b']],
    ['a && b', ['a || b']],
    ['f(7)', ['f(8)', 'f(6)']],
    ['f(0)', ['f(1)', 'f((-1))']],
    ['f(true)', ['f(false)']],
    ['a ?? b', ['(a)', '(b)']],
    ['Math.min(a, b)', ['Math.max(a, b)']],
    ['list.every(f)', ['list.some(f)']],
    ['const f = (a: 3 | 4): boolean => a as never', []],
    ["f('1 < 2 && 3')", []],
    ['f(0.5)', []],
  ])('%s becomes one small change at a time', (text, expected) => {
    expect(changed(text)).toEqual(expected);
  });

  it('say the line they are on', () => {
    expect(
      mutantsOf('x.ts', 'f();\ng(a < b);\n').map(({ line, before, after }) => [line, before, after]),
    ).toEqual([
      [2, '<', '<='],
      [2, '<', '>='],
    ]);
  });

  it('are tried by the tests that reach the file when they run, and by no other', () => {
    const [limit, facts] = ['baseline/pain-limit', 'facts/facts-of-version-2'].map(
      (name) => `tests/core/decision/${name}.test.ts`,
    );
    const reach = reachedBy([limit!, facts!]);
    expect(reach('src/core/decision/baseline/propose-pain-limit.ts')).toEqual([limit]);
    expect(reach('src/core/decision/facts/morning-scores.ts')).toEqual([facts]);
    // Reached by a type alone.
    expect(reach('src/core/decision/facts/indexed-record.ts')).toEqual([]);
  });

  it('that are excused stand for a line that is still there, each with a reason', () => {
    const lineOf = (text: string, line: number) => text.split('\n')[line - 1]?.trim();
    const isIn = (file: string, { line, mutant }: (typeof equivalentMutants)[number]): boolean => {
      const text = readFileSync(path.join(root, file), 'utf8');
      return mutantsOf(file, text).some(
        (one) => lineOf(text, one.line) === line && lineOf(mutated(text, one), one.line) === mutant,
      );
    };
    const gone = equivalentMutants.filter((one) => {
      const files = one.file.endsWith('/') ? filesUnder(one.file.slice(0, -1), '.ts') : [one.file];
      return !files.some((file) => isIn(file, one));
    });
    expect(gone).toEqual([]);
    expect(equivalentMutants.filter(({ reason }) => reason.length < 20)).toEqual([]);
  });
});
