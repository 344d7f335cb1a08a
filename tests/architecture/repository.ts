/** The repository as the house tests read it: its files, their text, their syntax and their imports. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseAst } from 'vite';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Made by tools, or kept apart from the repository. */
const leftOut = new Set([
  'node_modules',
  '.git',
  '.next',
  '.local',
  'output',
  'test-results',
  'next-env.d.ts',
]);

const under = (folder: string): string[] =>
  readdirSync(path.join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const place = path.posix.join(folder, entry.name);
    if (leftOut.has(entry.name) || entry.name.endsWith('.tsbuildinfo')) return [];
    return entry.isDirectory() ? under(place) : entry.isFile() ? [place] : [];
  });

let known: readonly string[] | undefined;

/** Every file of the repository, as a path from its root with forward slashes. */
export const allFiles = (): readonly string[] => {
  known ??= under('.').sort();
  return known;
};

export const isCode = (file: string): boolean => /\.(ts|tsx|mjs|js)$/.test(file);

/** Files of code under the given folders. */
export const codeFiles = (...folders: string[]): readonly string[] =>
  allFiles().filter((file) => isCode(file) && folders.some((folder) => file.startsWith(`${folder}/`)));

const texts = new Map<string, string>();

export const textOf = (file: string): string => {
  const held = texts.get(file);
  if (held !== undefined) return held;
  const text = readFileSync(path.join(root, file), 'utf8');
  texts.set(file, text);
  return text;
};

/** A node of the syntax tree, as far as the house tests look into it. */
export interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

export const childrenOf = (node: Node): readonly Node[] =>
  Object.values(node).flatMap((value) =>
    Array.isArray(value) ? value.filter(isNode) : isNode(value) ? [value] : [],
  );

/** Every node under and including the given one. */
export const walk = function* (node: Node): Generator<Node> {
  yield node;
  for (const child of childrenOf(node)) yield* walk(child);
};

export const parse = (text: string, file: string): Node => {
  const lang = file.endsWith('x') ? 'tsx' : file.endsWith('.ts') ? 'ts' : 'js';
  return parseAst(text, { lang }, file) as unknown as Node;
};

const trees = new Map<string, Node>();

export const treeOf = (file: string): Node => {
  const held = trees.get(file);
  if (held) return held;
  const tree = parse(textOf(file), file);
  trees.set(file, tree);
  return tree;
};

export interface Import {
  readonly from: string;
  /** Erased before anything runs. */
  readonly isType: boolean;
  /** Asked for while the page runs, and a file of its own in what is built. */
  readonly isFetched?: true;
}

const literal = (node: unknown): string | null =>
  isNode(node) && typeof node.value === 'string' ? node.value : null;

const languageTags = (): readonly string[] =>
  allFiles().flatMap((file) => /^src\/messages\/([a-z]+)\/language\.ts$/.exec(file)?.[1] ?? []);

/** What `import(`…/${tag}/page.ts`)` may fetch: the file of every language. */
const inEachLanguage = (source: unknown): readonly Import[] => {
  if (!isNode(source) || source.type !== 'TemplateLiteral') return [];
  const parts = (source.quasis as readonly { readonly value: { readonly raw: string } }[]).map(
    ({ value }) => value.raw,
  );
  return languageTags().map((tag) => ({ from: parts.join(tag), isType: false, isFetched: true }));
};

export const importsOfTree = (tree: Node): readonly Import[] =>
  [...walk(tree)].flatMap((node) => {
    const from = literal(node.source);
    if (from === null) return node.type === 'ImportExpression' ? inEachLanguage(node.source) : [];
    if (/^(ImportDeclaration|ExportNamedDeclaration|ExportAllDeclaration)$/.test(node.type)) {
      return [{ from, isType: node.importKind === 'type' || node.exportKind === 'type' }];
    }
    if (node.type === 'TSImportType') return [{ from, isType: true }];
    return node.type === 'ImportExpression' ? [{ from, isType: false, isFetched: true }] : [];
  });

const aliases: readonly (readonly [string, string])[] = [
  ['#core/', 'src/core/'],
  ['#data/', 'src/data/'],
  ['#api/', 'src/api/'],
  ['#messages/', 'src/messages/'],
  ['#simulation/', 'src/simulation/'],
  ['#ui/', 'src/ui/'],
  ['#server/', 'src/server/'],
  ['#commands/', 'src/commands/'],
  ['#demo/', 'demo-clinic/'],
  ['#tests/', 'tests/'],
];

/** The file of this repository an import means; null for a package or a Node module. */
export const resolveImport = (file: string, from: string): string | null => {
  if (from.startsWith('.')) return path.posix.normalize(path.posix.join(path.posix.dirname(file), from));
  const alias = aliases.find(([prefix]) => from.startsWith(prefix));
  return alias ? alias[1] + from.slice(alias[0].length) : null;
};

/** Files of code, each with the files it imports: types and what is fetched later included. */
export type Graph = ReadonlyMap<string, readonly string[]>;

export const importGraph = (...folders: string[]): Graph =>
  new Map(
    codeFiles(...folders).map((file) => [
      file,
      importsOfTree(treeOf(file)).flatMap(({ from }) => resolveImport(file, from) ?? []),
    ]),
  );

/** The shortest way along imports from a file to one that is meant; null where there is none. */
export const wayTo = (
  graph: Graph,
  file: string,
  isMeant: (target: string) => boolean,
): readonly string[] | null => {
  const ways: (readonly string[])[] = [[file]];
  const seen = new Set<string>();
  for (const way of ways) {
    for (const target of graph.get(way.at(-1)!) ?? []) {
      if (isMeant(target)) return [...way, target];
      if (!seen.has(target)) ways.push([...way, target]);
      seen.add(target);
    }
  }
  return null;
};

/** The text with comments blanked out, so that a word in a comment is no use of it. */
export const withoutComments = (file: string): string =>
  textOf(file).replace(
    /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|\/\/[^\n]*|\/\*[\s\S]*?\*\//g,
    (all, string) => (string === undefined ? all.replace(/[^\n]/g, ' ') : all),
  );

export const lineOf = (file: string, offset: number): number =>
  textOf(file).slice(0, offset).split('\n').length;
