/** A folder one can read at a glance, named after what it holds. */
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { allFiles } from './repository.ts';

const most = 25;
const saysNothing = /^(utils?|utilities|helpers?|common|misc|shared|lib|stuff)$/;

const files = allFiles().filter((file) => /^(src|tests)\//.test(file));

/** Folders with more files of their own than a glance takes in. */
const tooFull = (places: readonly string[]): readonly string[] => {
  const counts = new Map<string, number>();
  for (const place of places) {
    const folder = path.posix.dirname(place);
    counts.set(folder, (counts.get(folder) ?? 0) + 1);
  }
  return [...counts].filter(([, count]) => count > most).map(([folder, count]) => `${folder}: ${count}`);
};

const namelessIn = (places: readonly string[]): readonly string[] =>
  places.filter((place) => place.split('/').some((part) => saysNothing.test(part.replace(/\..*$/, ''))));

describe('folders', () => {
  it('hold at most 25 files of their own', () => {
    expect(tooFull(files)).toEqual([]);
  });

  it('and files are named after what they hold, never "utils" under any name', () => {
    expect(namelessIn(files)).toEqual([]);
  });

  it('would be found when too full or nameless', () => {
    const full = Array.from({ length: most + 1 }, (_, at) => `src/core/${at}.ts`);
    expect(tooFull(full)).toEqual(['src/core: 26']);
    expect(tooFull(full.slice(1))).toEqual([]);
    expect(
      namelessIn(['src/ui/utils/x.ts', 'src/core/helpers.ts', 'src/core/common-faults.ts']),
    ).toHaveLength(2);
  });
});
