/** What is installed: exact, for every Node the project promises, under licences that allow it. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { allows } from './node-range.ts';
import { root } from './repository.ts';

interface LockEntry {
  readonly version?: string;
  readonly license?: string;
  readonly engines?: { readonly node?: string };
  readonly optional?: boolean;
  readonly resolved?: string;
  readonly integrity?: string;
  /** Comes inside another package, whose checksum covers it. */
  readonly inBundle?: boolean;
}

const readJson = (file: string) => JSON.parse(readFileSync(path.join(root, file), 'utf8'));
const manifest = readJson('package.json');
const lock: Readonly<Record<string, LockEntry>> = readJson('package-lock.json').packages;
const packages = Object.entries(lock).filter(([place]) => place !== '');

const allowedLicences = new Set([
  'MIT',
  'MIT-0',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  '0BSD',
  'CC0-1.0',
  'BlueOak-1.0.0',
  'Python-2.0',
  'Unlicense',
  // Letters: may be embedded and handed on; sold only as part of something larger.
  'Bitstream-Vera',
  // Only in tools and in data about browsers; neither is changed here.
  'MPL-2.0',
  'CC-BY-4.0',
]);

/** Packages outside the list, each with the reason why they may stay. */
const exceptions: readonly (readonly [RegExp, string])[] = [
  [
    /^node_modules\/@img\/sharp-/,
    'Optional picture scaler of the page framework: a separate library, loaded at run time, never changed or linked in; the pages use none of it.',
  ],
];

/** "MIT OR Apache-2.0", "(MIT AND ISC)": one of the alternatives must be allowed as a whole. */
const isAllowed = (expression: string): boolean =>
  expression
    .replace(/[()]/g, '')
    .split(/\s+OR\s+/)
    .some((alternative) =>
      alternative.split(/\s+AND\s+/).every((licence) => allowedLicences.has(licence.trim())),
    );

/** What the package itself says; the older spellings are an object or a list. */
const licenceOf = (place: string, entry: LockEntry): string | null => {
  const file = `${place}/package.json`;
  if (!existsSync(path.join(root, file))) return entry.optional ? (entry.license ?? null) : null;
  const { license, licenses } = readJson(file);
  const own = license?.type ?? license ?? licenses?.map((one: { type: string }) => one.type).join(' OR ');
  return own ?? entry.license ?? null;
};

/** Packages that name their licence in a file only, read and found to be the one given here. */
const readByHand: ReadonlyMap<string, string> = new Map([
  // Its LICENSE: Bitstream Vera’s terms, the changes to it in the public domain.
  ['node_modules/dejavu-fonts-ttf', 'Bitstream-Vera'],
]);

describe('dependencies', () => {
  it('are all under licences that allow this use', () => {
    const found = packages
      .filter(([place]) => !exceptions.some(([pattern]) => pattern.test(place)))
      .map(
        ([place, entry]) =>
          [place, readByHand.get(place) ?? licenceOf(place, entry) ?? 'none named'] as const,
      )
      .filter(([, licence]) => !isAllowed(licence))
      .map(([place, licence]) => `${place}: ${licence}`);
    expect(found).toEqual([]);
  });

  it('would find a licence that is not on the list', () => {
    expect(['GPL-3.0', 'MIT AND GPL-3.0', 'none named'].map(isAllowed)).toEqual([false, false, false]);
    expect(['MIT', '(MIT OR GPL-3.0)', 'MIT AND ISC'].map(isAllowed)).toEqual([true, true, true]);
  });

  it('are pinned to exact versions, and the lock file agrees', () => {
    const wanted: Record<string, string> = { ...manifest.dependencies, ...manifest.devDependencies };
    const loose = Object.entries(wanted).filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version));
    expect(loose).toEqual([]);
    const differing = Object.entries(wanted).filter(
      ([name, version]) => lock[`node_modules/${name}`]?.version !== version,
    );
    expect(differing).toEqual([]);
  });

  it('have each a line with its reason in DEVELOPERS.md, and no line speaks of one that is gone', () => {
    const text = readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8');
    const table = /\| package \| why \|\n\| --- \| --- \|\n((?:\|.*\|\n)+)/.exec(text)?.[1] ?? '';
    const lines = table
      .trim()
      .split('\n')
      .map((line) => line.split('|').map((cell) => cell.trim()));
    const named = lines.flatMap(([, names = '', why = '']) => (why ? names.split(', ') : []));
    const wanted = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(named.toSorted()).toEqual(wanted.toSorted());
  });

  it('run on Node 20.19, as the project promises', () => {
    expect(manifest.engines.node).toBe('>=20.19');
    const found = packages
      .filter(([, entry]) => entry.engines?.node && !allows(entry.engines.node, [20, 19, 0]))
      .map(([place, entry]) => `${place}: ${entry.engines?.node}`);
    expect(found).toEqual([]);
  });

  it('come with a checksum each, and the lock file names no host', () => {
    expect(
      packages.filter(([, entry]) => !entry.integrity && !entry.inBundle).map(([place]) => place),
    ).toEqual([]);
    expect(packages.filter(([, entry]) => entry.resolved).map(([place]) => place)).toEqual([]);
  });
});

describe('ranges of Node versions', () => {
  it.each([
    ['>=18', true],
    ['>=20.19.0', true],
    ['>=20.19.1', false],
    ['^20.19.0 || ^22.13.0 || >=24', true],
    ['^18 || >=22', false],
    ['20 || >=22', true],
    ['>= 10.*', true],
    ['>=14 <21', true],
    ['>=14 <20', false],
    ['~20.18.0', false],
    ['20.x', true],
    ['*', true],
  ])('%s lets Node 20.19.0 in: %s', (range, expected) => {
    expect(allows(range, [20, 19, 0])).toBe(expected);
  });
});
