/** The core computes: same input, same answer, on any machine, at any hour. */
import { describe, expect, it } from 'vitest';
import { codeFiles, lineOf, type Node, parse, treeOf, walk } from './repository.ts';

/** Globals that read a clock, draw at random, or reach outside. */
const impureGlobals = new Set([
  'performance',
  'process',
  'crypto',
  'fetch',
  'setTimeout',
  'setInterval',
  'queueMicrotask',
  'console',
  'Temporal',
  'window',
  'document',
  'localStorage',
  'navigator',
  'globalThis',
  'require',
]);

const nameOf = (node: unknown): string | undefined => (node as Node | undefined)?.name as string | undefined;

const isImpure = (node: Node): string | null => {
  if (node.type === 'MemberExpression') {
    const [object, property] = [nameOf(node.object), nameOf(node.property)];
    if (object === 'Math' && property === 'random') return 'Math.random';
    if (object === 'Date' && property === 'now') return 'Date.now';
    return object !== undefined && impureGlobals.has(object) ? object : null;
  }
  const callee = nameOf(node.callee);
  if (node.type === 'NewExpression' && callee === 'Date') {
    return (node.arguments as unknown[]).length === 0 ? 'new Date()' : null;
  }
  if (node.type === 'CallExpression' && callee !== undefined) {
    return callee === 'Date' || impureGlobals.has(callee) ? callee : null;
  }
  return node.type === 'AwaitExpression' ? 'await' : null;
};

const impurities = (tree: Node) =>
  [...walk(tree)].flatMap((node) => {
    const what = isImpure(node);
    return what === null ? [] : [{ what, at: node.start }];
  });

describe('the core has no clock, no randomness and no way out', () => {
  it('in every file', () => {
    const found = codeFiles('src/core').flatMap((file) =>
      impurities(treeOf(file)).map(({ what, at }) => `${file}:${lineOf(file, at)} uses ${what}`),
    );
    expect(found).toEqual([]);
  });

  it.each([
    'Date.now()',
    'new Date()',
    'Math.random()',
    'process.env.X',
    'fetch("x")',
    'console.log(1)',
    'Date()',
  ])('would find %s', (code) => {
    expect(impurities(parse(`export const x = () => ${code};`, 'x.ts'))).not.toEqual([]);
  });

  it.each(['Date.UTC(2026, 0, 1)', 'Date.parse("2026-01-01")', 'new Date(0)', 'Math.max(1, 2)'])(
    'lets %s pass: its answer follows from its arguments',
    (code) => {
      expect(impurities(parse(`export const x = () => ${code};`, 'x.ts'))).toEqual([]);
    },
  );
});
