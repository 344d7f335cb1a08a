/** The rules of the engine: each one file under its id, with a test of the same name, and no number typed twice. */
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { type RuleId, rulesOf } from '#core/decision/rules/table.ts';
import { newestVersion } from '#core/decision/settings.ts';
import { ruleText } from '#messages/decisions.ts';
import { languages } from '#messages/languages.ts';
import { allFiles, lineOf, type Node, parse, textOf, treeOf, walk } from '#tests/architecture/repository.ts';

const folder = 'src/core/decision/rules/';
const inGroups = allFiles().filter((file) => new RegExp(`^${folder}[a-z-]+/[a-z0-9-]+\\.ts$`).test(file));
const ofRule = (file: string) => /^[a-z]\d+[a-z]?$/.test(path.posix.basename(file, '.ts'));
const files = inGroups.filter(ofRule);

const rules = rulesOf(newestVersion);
const idOf = (file: string): string =>
  rules.find(({ id }) => id.toLowerCase() === path.posix.basename(file, '.ts'))?.id ?? file;

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
    const ids = rules.map(({ id }) => `${id.toLowerCase()}.ts`);
    expect(files.map((file) => path.posix.basename(file)).toSorted()).toEqual(ids.toSorted());
  });

  it('has a test of the same name, which is of this rule', () => {
    const all = new Set(allFiles());
    const found = files.filter((file) => {
      const test = file.replace(/^src/, 'tests').replace(/\.ts$/, '.test.ts');
      return !all.has(test) || !textOf(test).includes(`describeRule('${idOf(file)}', {`);
    });
    expect(found).toEqual([]);
  });

  it('types no figure in what the patient reads, in any language', () => {
    const found = rules.flatMap(({ id }) =>
      languages.map(({ tag }) => ruleText(id as RuleId)[tag]).filter((text) => /\d/.test(text)),
    );
    expect(found).toEqual([]);
  });

  it('types no figure in its title or threshold: both take it from where the condition does', () => {
    const found = files.flatMap((file) =>
      typedFigures(treeOf(file))
        .filter(({ text }) => !ofFacts[idOf(file)]?.includes(text))
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
