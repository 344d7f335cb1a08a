/** What the pages on safety of operation claim is shown by a test that exists. */
import { describe, expect, it } from 'vitest';
import { allFiles, textOf } from './repository.ts';

const pages = [
  'src/operations/data-protection.md',
  'src/operations/disk-encryption.md',
  'src/operations/exchange.md',
  'src/operations/findings.md',
  'src/operations/hazards.md',
  'src/operations/programs.md',
  'src/operations/security-verification.md',
  'src/operations/threat-model.md',
];

const namedIn = (page: string): readonly string[] =>
  [...textOf(page).matchAll(/`((?:tests|src)\/[^`\s]+)`/g)].map(([, place = '']) => place);

const exists = (place: string): boolean =>
  allFiles().some((file) => file === place || file.startsWith(`${place}/`));

/** Cells of each row of a table, its head left out. */
const rowsOf = (page: string): readonly (readonly string[])[] =>
  textOf(page)
    .split('\n')
    .filter((line) => /^\|/.test(line) && !/^\|[-| ]+$/.test(line))
    .slice(1)
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );

describe('pages on how the product is kept', () => {
  it.each(pages)('%s names only files and folders that exist', (page) => {
    expect(namedIn(page).filter((place) => !exists(place))).toEqual([]);
  });

  it('every hazard has a control and a test', () => {
    const rows = rowsOf('src/operations/hazards.md');
    expect(rows.length).toBeGreaterThan(10);
    expect(rows.filter((cells) => cells.length !== 4 || cells.some((cell) => cell === ''))).toEqual([]);
    expect(rows.filter((cells) => !/`tests\//.test(cells[3] ?? ''))).toEqual([]);
  });

  it('every finding has a state; what is closed names a test, what is not says what is left', () => {
    const rows = rowsOf('src/operations/findings.md').filter(([found]) => found !== 'Found');
    expect(rows.length).toBeGreaterThan(30);
    for (const [found, state, shown] of rows) {
      expect([found, /^(closed|part|open)$/.test(state ?? '')]).toEqual([found, true]);
      const isShown = state === 'closed' ? /`tests\/[^`]+`/.test(shown ?? '') : (shown ?? '').length > 10;
      expect([found, isShown]).toEqual([found, true]);
    }
  });

  it('every requirement has a state; what is met names a test', () => {
    const rows = rowsOf('src/operations/security-verification.md').filter((cells) => cells.length === 5);
    expect(rows.length).toBeGreaterThan(30);
    for (const [, , asked, state, shown] of rows) {
      expect([asked, /^(met|part|not met|n\/a)$/.test(state ?? '')]).toEqual([asked, true]);
      const isShown = state === 'met' ? /`tests\//.test(shown ?? '') : (shown ?? '').length > 3;
      expect([asked, isShown]).toEqual([asked, true]);
    }
  });
});
