/** Every figure names its source, and the bibliography holds nothing that is not used. */
import { describe, expect, it } from 'vitest';
import { marks } from '#core/sources/citation.ts';
import { sourceLists, sources } from '#core/sources/index.ts';
import { codeFiles, type Node, treeOf, walk } from './repository.ts';

/** Core, without the bibliography itself. */
const citing = () => codeFiles('src/core').filter((file) => !file.startsWith('src/core/sources/'));

interface Cited {
  readonly file: string;
  readonly source: string;
  readonly mark: string | undefined;
  readonly locator: string | undefined;
}

const textValue = (node: Node | undefined): string | undefined =>
  typeof node?.value === 'string' ? node.value : undefined;

/** Citations written out in a file: an object with a source, a locator and a mark. */
const citationsOf = (file: string): readonly Cited[] =>
  [...walk(treeOf(file))].flatMap((node) => {
    if (node.type !== 'ObjectExpression') return [];
    const values = new Map<string, Node>();
    for (const property of node.properties as Node[]) {
      const key = (property.key as Node | undefined)?.name as string | undefined;
      if (key) values.set(key, property.value as Node);
    }
    const source = textValue(values.get('source'));
    if (source === undefined || !values.has('locator')) return [];
    return [{ file, source, mark: textValue(values.get('mark')), locator: textValue(values.get('locator')) }];
  });

/** Every text of the core that could be a key: also supports and rules that name a source by its key alone. */
const wordsOf = (file: string): readonly string[] =>
  [...walk(treeOf(file))].flatMap((node) => (node.type === 'Literal' ? (textValue(node) ?? []) : []));

describe('the bibliography', () => {
  it('holds every source that is cited', () => {
    const found = citing()
      .flatMap(citationsOf)
      .filter(({ source }) => !Object.hasOwn(sources, source))
      .map(({ file, source }) => `${file} cites ${source}`);
    expect(found).toEqual([]);
  });

  it('holds no source that nothing cites', () => {
    const used = new Set(citing().flatMap(wordsOf));
    expect(Object.keys(sources).filter((key) => !used.has(key))).toEqual([]);
  });

  it('uses a key for one source only', () => {
    const all = sourceLists.flatMap((list) => Object.entries(list));
    const twice = all.filter(([key, source]) => JSON.stringify(source) !== JSON.stringify(sources[key]));
    expect(twice.map(([key]) => key)).toEqual([]);
  });

  it('says of each source who, what and of which kind; a year or plainly none', () => {
    const poor = Object.entries(sources).filter(
      ([, { authors, title, year }]) =>
        authors.trim() === '' || title.trim() === '' || (year !== null && (year < 1850 || year > 2100)),
    );
    expect(poor.map(([key]) => key)).toEqual([]);
    const withScheme = Object.entries(sources).filter(([, { identifier }]) =>
      /^https?:/.test(identifier ?? ''),
    );
    expect(withScheme.map(([key]) => key)).toEqual([]);
  });

  it('marks every citation by how it was seen and names the place in the source', () => {
    const found = citing()
      .flatMap(citationsOf)
      .filter(
        ({ mark, locator }) => (mark !== undefined && !marks.includes(mark as never)) || locator === '',
      );
    expect(found).toEqual([]);
  });
});
