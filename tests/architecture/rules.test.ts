/** The rules of the engine: each one file under its id, with a test of the same name, and no number typed twice. */
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { rulesOf } from '#core/decision/rules/table.ts';
import { newestVersion } from '#core/decision/settings.ts';
import { allFiles, lineOf, type Node, parse, treeOf, walk } from './repository.ts';

const folder = 'src/core/decision/rules/';
const inGroups = allFiles().filter((file) => new RegExp(`^${folder}[a-z-]+/[a-z0-9-]+\\.ts$`).test(file));
const ofRule = (file: string) => /^[a-z]\d+[a-z]?$/.test(path.posix.basename(file, '.ts'));
const files = inGroups.filter(ofRule);

/** Figures in words that no condition of the rule holds: the window of a fact, or what a fact counts. */
const ofFacts: Readonly<Record<string, readonly string[]>> = {
  A1: [' or more missed in 14 days and under '],
  B2: ['14-day mean of mornings once '],
  P5r: [' answered mornings in a row 1 over the top of usual pain'],
};

/** Pieces of the title and of the threshold in words that hold a typed figure. */
const typedFigures = (tree: Node): readonly { readonly text: string; readonly at: number }[] =>
  [...walk(tree)]
    .filter(
      ({ type, key }) => type === 'Property' && /^(title|threshold)$/.test((key as Node).name as string),
    )
    .flatMap((property) => [...walk(property)])
    .flatMap(({ type, value, start }) => {
      const text = type === 'TemplateElement' ? (value as { readonly raw: string }).raw : value;
      return typeof text === 'string' && /\d/.test(text) ? [{ text, at: start }] : [];
    });

describe('a rule of the engine', () => {
  it('is one file named by its id, each file one rule', () => {
    const ids = rulesOf(newestVersion).map(({ id }) => `${id.toLowerCase()}.ts`);
    expect(files.map((file) => path.posix.basename(file)).toSorted()).toEqual(ids.toSorted());
  });

  it('has a test of the same name', () => {
    const tests = files.map((file) => file.replace(/^src/, 'tests').replace(/\.ts$/, '.test.ts'));
    const all = new Set(allFiles());
    expect(tests.filter((file) => !all.has(file))).toEqual([]);
  });

  it('types no figure in its title or threshold: both take it from where the condition does', () => {
    const idOf = new Map(rulesOf(newestVersion).map(({ id }) => [id.toLowerCase(), id]));
    const found = files.flatMap((file) =>
      typedFigures(treeOf(file))
        .filter(({ text }) => !ofFacts[idOf.get(path.posix.basename(file, '.ts'))!]?.includes(text))
        .map(({ text, at }) => `${file}:${lineOf(file, at)}: ${text}`),
    );
    expect(found).toEqual([]);
  });

  it('would be found with a figure typed in words, and passes with one taken over', () => {
    const rule = (threshold: string) => parse(`const p = { threshold: () => ${threshold} };`, 'x.ts');
    expect(typedFigures(rule("'during 5 or more'"))).toHaveLength(1);
    expect(typedFigures(rule(`\`during 5 or \${more}\``))).toHaveLength(1);
    expect(typedFigures(rule(`\`during \${raiseBelow} or more\``))).toHaveLength(0);
  });
});
