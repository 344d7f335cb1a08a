/** One idea, one word: the glossary is read as it stands, and nothing keeps a word it replaces. */
import { describe, expect, it } from 'vitest';
import { allFiles, isCode, textOf, treeOf, walk } from './repository.ts';

const page = 'src/operations/glossary.md';

/** Names that say something else than the word the glossary replaces; at most ten. */
const exceptions: ReadonlyMap<string, string> = new Map();

interface Entry {
  readonly word: string;
  /** Whole names. */
  readonly names: readonly string[];
  /** Words that no name may hold as a part. */
  readonly parts: readonly string[];
  /** Said in no comment, text or page. */
  readonly phrases: readonly string[];
  /** Names, or folders ending in a slash, that may keep the old word. */
  readonly allowed: readonly string[];
}

/** Tables of a page, each as the cells of its rows without the head. */
const tablesOf = (text: string): readonly (readonly (readonly string[])[])[] =>
  text
    .split(/\n{2,}/)
    .filter((block) => block.startsWith('|'))
    .map((block) =>
      block
        .trim()
        .split('\n')
        .slice(2)
        .map((line) => line.slice(1, -1).split('|'))
        .map((cells) => cells.map((cell) => cell.trim())),
    );

const quoted = (cell: string, marks: RegExp) => [...cell.matchAll(marks)].map(([, inner = '']) => inner);
const codeIn = (cell: string) => quoted(cell, /`([^`]+)`/g);

const [words = [], contracts = []] = tablesOf(textOf(page));

const glossary: readonly Entry[] = words.map(([word = '', , replaces = '', allowed = '']) => ({
  word,
  names: codeIn(replaces).filter((name) => !name.startsWith('*')),
  parts: codeIn(replaces)
    .filter((name) => name.startsWith('*'))
    .map((name) => name.slice(1, -1)),
  phrases: quoted(replaces, /“([^”]+)”/g),
  allowed: codeIn(allowed),
}));

/** "bloodPressureResult", "too-many-tries" → their words. */
const partsOf = (name: string): readonly string[] =>
  name
    .replace(/([a-z0-9])([A-Z])/g, '$1-$2')
    .toLowerCase()
    .split(/[^a-z0-9]+/);

/** Names of a file of code, the file's own among them. */
const namesIn = (file: string): ReadonlySet<string> => {
  const own = file.split('/').flatMap((part) => part.replace(/\..*$/, ''));
  const inside = [...walk(treeOf(file))].flatMap(({ type, name }) =>
    /Identifier$/.test(type) && typeof name === 'string' ? [name] : [],
  );
  return new Set([...own, ...inside]);
};

const isAllowed = (entry: Entry, file: string, name: string): boolean =>
  entry.allowed.some((place) => (place.endsWith('/') ? file.startsWith(place) : name === place));

const namesFound = (file: string, names: ReadonlySet<string>): readonly string[] =>
  [...names].flatMap((name) =>
    glossary
      .filter(
        ({ names, parts }) => names.includes(name) || partsOf(name).some((part) => parts.includes(part)),
      )
      .filter((entry) => !isAllowed(entry, file, name) && !exceptions.has(name))
      .map(({ word }) => `${file}: ${name} → ${word}`),
  );

/** A text as it is read: over the ends of lines, without the marks of a comment. */
const asRead = (text: string): string =>
  text
    .replace(/\s*\n\s*(\*|\/\/)?\s*/g, ' ')
    .replace(/\s+/g, ' ')
    .toLowerCase();

const phrasesFound = (file: string, text: string): readonly string[] => {
  const read = asRead(text);
  return glossary.flatMap(({ word, phrases }) =>
    phrases.filter((phrase) => read.includes(phrase)).map((phrase) => `${file}: “${phrase}” → ${word}`),
  );
};

const folders = /^(src|tests|demo-clinic|drizzle)\//;
const searched = allFiles().filter((file) => folders.test(file) && file !== page);

describe('the glossary', () => {
  it('gives every word once, with a meaning, and replaces nothing by two words', () => {
    expect(words.filter((cells) => cells.length !== 4 || cells.some((cell) => cell === ''))).toEqual([]);
    expect(words.length).toBeGreaterThan(30);
    const old = glossary.flatMap(({ names, parts, phrases }) => [...names, ...parts, ...phrases]);
    for (const given of [words.map(([word]) => word), old]) {
      expect(given.filter((one, at) => given.indexOf(one) !== at)).toEqual([]);
    }
  });

  it('is kept to by the names of files, types, functions and values', () => {
    expect(searched.filter(isCode).flatMap((file) => namesFound(file, namesIn(file)))).toEqual([]);
  });

  it('is kept to by comments, texts and pages', () => {
    const read = searched.filter((file) => isCode(file) || /\.(md|css|sql)$/.test(file));
    expect(read.flatMap((file) => phrasesFound(file, textOf(file)))).toEqual([]);
  });

  it('has at most ten exceptions, each in use', () => {
    expect(exceptions.size).toBeLessThanOrEqual(10);
    const used = new Set(searched.filter(isCode).flatMap((file) => [...namesIn(file)]));
    expect([...exceptions.keys()].filter((name) => !used.has(name))).toEqual([]);
  });

  it('would find an old word, in a name and over the end of a line', () => {
    const names = new Set(['openMatters', 'gateTable', 'mattress', 'rung', 'nextRung']);
    expect(namesFound('src/x.ts', names)).toEqual([
      'src/x.ts: openMatters → worklist item',
      'src/x.ts: gateTable → pain lookup',
      'src/x.ts: nextRung → level',
    ]);
    expect(phrasesFound('src/x.ts', `a stretch\n * of ${'care'}`)).toHaveLength(1);
  });
});

describe('contract words', () => {
  it.each(contracts)('%s: %s', (_kind, contractWords = '', _calls, place = '') => {
    const text = textOf(codeIn(place)[0] ?? '');
    expect(codeIn(contractWords).filter((word) => !text.includes(word))).toEqual([]);
  });
});
