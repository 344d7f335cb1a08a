/** Nothing of the server comes along into a browser: followed from every file that begins with 'use client'. */
import { describe, expect, it } from 'vitest';
import { codeFiles, importsOfTree, resolveImport, textOf, treeOf, withoutComments } from './repository.ts';

const isClient = (file: string): boolean => /^\s*(\/\*[\s\S]*?\*\/\s*)?['"]use client['"]/.test(textOf(file));

/** Files a browser would get, and what they import from outside the repository. Types are erased and do not count. */
const reached = (start: readonly string[]) => {
  const files = new Set<string>();
  const packages = new Set<string>();
  const waiting = [...start];
  for (let file = waiting.pop(); file; file = waiting.pop()) {
    if (files.has(file) || !/\.(ts|tsx|mjs|js)$/.test(file)) continue;
    files.add(file);
    for (const { from, isType } of importsOfTree(treeOf(file))) {
      if (isType) continue;
      const target = resolveImport(file, from);
      if (target) waiting.push(target);
      else packages.add(from);
    }
  }
  return { files: [...files], packages: [...packages] };
};

const clients = codeFiles('src').filter(isClient);

describe('what a browser gets', () => {
  it('begins at the parts that run there', () => {
    expect(clients.length).toBeGreaterThan(10);
  });

  it('holds nothing of the server, the store or the machine', () => {
    const { files, packages } = reached(clients);
    expect(files.filter((file) => /^src\/(server|data|commands)\//.test(file))).toEqual([]);
    expect(
      packages.filter((name) => /^(node:|libsql|drizzle|better-auth|pino|server-only)/.test(name)),
    ).toEqual([]);
  });

  it('reads no setting of the environment', () => {
    const found = reached(clients).files.filter((file) =>
      /process\.env\.(?!NODE_ENV\b)/.test(withoutComments(file)),
    );
    expect(found).toEqual([]);
  });

  it('would find a part that reaches the keys', () => {
    expect(reached(['src/server/runtime.ts']).files).toContain('src/server/keys.ts');
  });
});
