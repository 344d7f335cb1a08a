/** A file can be read, moved and tested without those that import it. */
import { describe, expect, it } from 'vitest';
import { type Graph, importGraph, wayTo } from './repository.ts';

/** The shortest circle through each file that lies on one, each circle once. */
const circles = (graph: Graph): readonly string[] => {
  const found = new Map<string, string>();
  for (const file of graph.keys()) {
    const way = wayTo(graph, file, (target) => target === file);
    const members = [...new Set(way)].sort().join();
    if (way && !found.has(members)) found.set(members, way.join(' → '));
  }
  return [...found.values()];
};

describe('imports', () => {
  it('go round in no circle, types and what is fetched later included', () => {
    expect(circles(importGraph('src', 'demo-clinic'))).toEqual([]);
  });

  it('would be found on a circle, of two files or of more', () => {
    const graph = new Map([
      ['a', ['b', 'c']],
      ['b', ['a']],
      ['c', ['d']],
      ['d', ['e']],
      ['e', ['c']],
      ['f', ['a']],
    ]);
    expect(circles(graph)).toEqual(['a → b → a', 'c → d → e → c']);
  });
});
