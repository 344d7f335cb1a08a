/** Nothing stands in the house that no way in reaches, but what waits to be wired on purpose. */
import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { root } from './repository.ts';
import { waitingToBeWired } from './waiting-to-be-wired.ts';

type Found = Readonly<Record<string, string | readonly { readonly name: string }[]>>;

/** What is called from outside: `run` of a command, a language by its tag; the year-long stories, by tests. */
const waysIn =
  /^(src\/(commands\/((team|exchange)\/)?[a-z-]+\.ts: run|messages\/[a-z]+\/(language\.ts: language|pages\/[a-z-]+\.ts: (words|forms)))|demo-clinic\/long-stories\/[a-z-]+\.ts: (longStories|followAYear))$/;

const knip = path.join(root, 'node_modules', 'knip', 'bin', 'knip.js');

/** "file" or "file: name" for everything the tool finds, of whatever kind. */
const findings = async (...args: readonly string[]): Promise<readonly string[]> => {
  const config = path.join(root, 'tests', 'knip.js');
  const options = ['--config', config, '--reporter', 'json', '--no-exit-code', '--no-progress', ...args];
  const { stdout } = await promisify(execFile)(process.execPath, [knip, ...options], { cwd: root });
  const { issues } = JSON.parse(stdout) as { readonly issues: readonly Found[] };
  const found = issues.flatMap(({ file, ...kinds }) =>
    Object.entries(kinds).flatMap(([kind, list]) =>
      Array.isArray(list)
        ? list.map((one) => (kind === 'files' ? String(file) : `${String(file)}: ${one.name}`))
        : [],
    ),
  );
  return found.filter((finding) => !waysIn.test(finding));
};

const [ofProduct, ofEverything] = await Promise.all([findings('--production'), findings()]);
const waiting = waitingToBeWired.map(({ finding }) => finding);

describe('dead code', () => {
  it('is nowhere in the product: no file, export or package that only tests reach, or nothing', () => {
    expect(ofProduct.filter((finding) => !waiting.includes(finding))).toEqual([]);
  });

  it('is nowhere else: no needless export, unused file or unused tool, tests included', () => {
    expect(ofEverything.filter((finding) => !waiting.includes(finding))).toEqual([]);
  });

  it('that waits to be wired is still there and still unused', () => {
    expect(waiting.filter((finding) => !ofProduct.includes(finding))).toEqual([]);
  });

  it('would be found: an export only a test imports, one nobody imports, a file nobody reaches', async () => {
    const house = mkdtempSync(path.join(tmpdir(), 'loadgate-dead-code-'));
    const write = (file: string, text: string) => {
      mkdirSync(path.dirname(path.join(house, file)), { recursive: true });
      writeFileSync(path.join(house, file), text);
    };
    write('package.json', '{ "name": "house", "type": "module" }');
    write(
      'src/commands/begin.ts',
      "import { used } from '../core/a.ts';\nexport const run = used;\nexport const here = 4;\n",
    );
    write('src/core/a.ts', 'export const used = 1;\nexport const tested = 2;\nexport const dead = 3;\n');
    write('src/core/b.ts', 'export const lost = 1;\n');
    write('tests/a.test.ts', "import { tested } from '../src/core/a.ts';\nconsole.log(tested);\n");
    try {
      const found = async (...args: string[]) => (await findings('--directory', house, ...args)).toSorted();
      expect(await found('--production')).toEqual([
        'src/commands/begin.ts: here',
        'src/core/a.ts: dead',
        'src/core/a.ts: tested',
        'src/core/b.ts',
      ]);
      expect(await found()).toEqual(['src/core/a.ts: dead', 'src/core/b.ts']);
    } finally {
      rmSync(house, { recursive: true, force: true });
    }
  });
});
