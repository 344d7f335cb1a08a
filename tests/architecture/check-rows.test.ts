/**
 * Every published check figure is tested, or is listed with the reason why not. A test says which
 * rows it covers by tags in its title, such as [strength 12] or [nutrition 40].
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { type LeftOut, leftOutExchange } from './left-out-exchange.ts';
import { allFiles, root } from './repository.ts';

interface Sheet {
  readonly area: string;
  readonly first: number;
  readonly last: number;
}

/** The numbering of screening goes on through nutrition and exchange. */
const sheets: readonly Sheet[] = [
  { area: 'strength', first: 1, last: 123 },
  { area: 'occlusion', first: 1, last: 52 },
  { area: 'screening', first: 1, last: 35 },
  { area: 'nutrition', first: 36, last: 83 },
  { area: 'exchange', first: 84, last: 120 },
  { area: 'symptoms', first: 1, last: 79 },
];

/** Titles as the runner itself lists them, so that generated titles count and unreachable ones do not. */
const titlesOfTests = (): readonly string[] => {
  const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-titles-'));
  const file = path.join(folder, 'titles.json');
  const vitest = path.join(root, 'node_modules', 'vitest', 'vitest.mjs');
  const places = ['tests/core/', 'tests/api/', 'tests/data/', 'tests/batch/', 'tests/exchange/'];
  const args = [vitest, 'list', '--config', 'tests/vitest.config.ts', `--json=${file}`, ...places];
  try {
    execFileSync(process.execPath, args, { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
    return (JSON.parse(readFileSync(file, 'utf8')) as { name: string }[]).map(({ name }) => name);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

/** "[strength 12]" and "[strength 12, 13]" → area and rows. */
const tagsOf = (title: string): readonly (readonly [string, number])[] =>
  [...title.matchAll(/\[([a-z]+) (\d+(?:, ?\d+)*)\]/g)].flatMap(([, area = '', numbers = '']) =>
    numbers.split(',').map((number) => [area, Number(number)] as const),
  );

/** Rows left out, from here and from the lists that stand beside the tests of an area. */
const leftOutRows = async (): Promise<readonly LeftOut[]> => {
  const lists = allFiles().filter((file) => /^tests\/core\/.*\/left-out[a-z-]*\.ts$/.test(file));
  const modules: { leftOut: readonly LeftOut[] }[] = await Promise.all(
    lists.map((file) => import(path.join(root, file))),
  );
  return [...leftOutExchange, ...modules.flatMap(({ leftOut }) => leftOut)];
};

interface Ledger {
  readonly tested: number;
  readonly listed: number;
  readonly neither: readonly string[];
  /** A row of several figures may be tested in part and listed for the rest. */
  readonly inPart: readonly string[];
  readonly unknown: readonly string[];
}

const ledgerOf = (tags: readonly (readonly [string, number])[], leftOut: readonly LeftOut[]): Ledger => {
  const tested = new Set(tags.map(([area, row]) => `${area} ${row}`));
  const listed = new Set(leftOut.map(({ sheet, row }) => `${sheet} ${row}`));
  const every = sheets.flatMap(({ area, first, last }) =>
    Array.from({ length: last - first + 1 }, (_, at) => `${area} ${first + at}`),
  );
  const known = new Set(every);
  return {
    tested: every.filter((row) => tested.has(row)).length,
    listed: every.filter((row) => listed.has(row) && !tested.has(row)).length,
    neither: every.filter((row) => !tested.has(row) && !listed.has(row)),
    inPart: every.filter((row) => tested.has(row) && listed.has(row)),
    unknown: [...tested, ...listed].filter(
      (row) => !known.has(row) && sheets.some(({ area }) => row.startsWith(`${area} `)),
    ),
  };
};

/** "strength 1–70, strength 75": a list one can read when much is missing. */
const asRuns = (rows: readonly string[]): readonly string[] => {
  const runs: { area: string; from: number; to: number }[] = [];
  for (const text of rows) {
    const [area = '', number = ''] = text.split(' ');
    const last = runs.at(-1);
    if (last?.area === area && last.to === Number(number) - 1) last.to += 1;
    else runs.push({ area, from: Number(number), to: Number(number) });
  }
  return runs.map(({ area, from, to }) => (from === to ? `${area} ${from}` : `${area} ${from}–${to}`));
};

describe('the ledger of published check figures', () => {
  it('accounts for each of the 374 rows: tested, or listed with a reason', async () => {
    const leftOut = await leftOutRows();
    const ledger = ledgerOf(titlesOfTests().flatMap(tagsOf), leftOut);
    console.log(
      `check rows: ${ledger.tested} tested (${ledger.inPart.length} in part, the rest listed), ` +
        `${ledger.listed} listed with a reason, ${ledger.neither.length} neither`,
    );
    expect({ neither: asRuns(ledger.neither), unknown: ledger.unknown }).toEqual({
      neither: [],
      unknown: [],
    });
    expect(ledger.tested + ledger.listed).toBe(374);
    expect(leftOut.filter(({ reason }) => reason.trim().length < 15)).toEqual([]);
  });

  it('tells a row that is in neither place, in both, or does not exist', () => {
    const every = sheets.flatMap(({ area, first, last }) =>
      Array.from({ length: last - first + 1 }, (_, at) => [area, first + at] as const),
    );
    expect(ledgerOf(every.slice(1), []).neither).toEqual(['strength 1']);
    expect(ledgerOf(every, [{ sheet: 'symptoms', row: 79, reason: '' }]).inPart).toEqual(['symptoms 79']);
    expect(ledgerOf([...every, ['occlusion', 53]], []).unknown).toEqual(['occlusion 53']);
  });
});
