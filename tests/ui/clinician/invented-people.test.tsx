/** The chart of the trial: every arm has its mark, its word and its row, and nothing is said of anybody real. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { InventedPeople, TrialRow } from '#ui/clinician/answers.ts';
import { InventedPeopleView } from '#ui/clinician/rules/invented/invented-people.tsx';
import { classOf, pathOf } from '#ui/clinician/rules/invented/mark-shape.tsx';
import { axisFor, placeLabels, pointsFor } from '#ui/clinician/rules/invented/trial-points.ts';

const row = (arm: string, badDays: number, more: Partial<TrialRow> = {}): TrialRow => ({
  arm,
  title: `Title of ${arm}`,
  onFrontier: false,
  type: 'all',
  strengthPercent: 10 + badDays / 10,
  badDays,
  loadCausedBadDays: 0.5,
  clinicianActions: 3,
  finalDose: 1.25,
  ...more,
});
const rows = [
  row('version-1', 8),
  row('version-9', 9),
  row('same-dose', 12),
  row('oracle', 7, { onFrontier: true }),
  row('oracle-1', 14, { onFrontier: true }),
  row('version-1', 3, { type: 'fragile' }),
];
const own = [row('own-rule', 10, { title: null })];
const answer = {
  seed: 5,
  people: 50,
  weeks: 12,
  ranOn: '2026-02-03',
  models: [
    { id: 'first', rows },
    { id: 'second', rows },
  ],
  fields: [{ name: 'mostPain', kind: 'integer', unit: '{score}', min: 0, max: 10, about: 'highest pain' }],
  usual: { mostPain: 5 },
} as unknown as InventedPeople;

describe('invented people on the rules page', () => {
  const page = renderToStaticMarkup(<InventedPeopleView answer={answer} />);

  it('stand under their heading with the sentence that nobody is real and nothing is shown of loading', () => {
    expect(page).toMatch(/<h2[^>]*>Invented people<\/h2>/);
    expect(page).toContain('Every person here is invented');
    expect(page).toContain('Nothing here says that loading helps or harms anybody.');
    expect(page).toContain('seed 5, run on 2026-02-03');
  });

  it('have a row for each arm, one nobody knew included, with the figures of its mark', () => {
    const table = page.slice(page.indexOf('<table'), page.indexOf('</table>'));
    expect(table.match(/scope="row"/g)).toHaveLength(5);
    expect(table).toContain('Title of version-9');
    expect(table).toContain('<td class="number">1.25</td>');
  });

  it('start the own rule with the usual figures', () => {
    expect(page).toMatch(/<input[^>]*value="5"/);
  });
});

describe('the points', () => {
  it('are those of one type, arms in their order, then the own rule, then the line', () => {
    expect(pointsFor(rows, own, 'all').map(({ arm }) => arm)).toEqual([
      'version-1',
      'version-9',
      'same-dose',
      'own-rule',
      'oracle',
      'oracle-1',
    ]);
    expect(pointsFor(rows, own, 'fragile').map(({ arm, badDays }) => [arm, badDays])).toEqual([
      ['version-1', 3],
    ]);
  });

  it('differ in shape and in word, the line apart, which is named once', () => {
    const points = pointsFor(rows, own, 'all');
    const [line, others] = [
      points.filter(({ onFrontier }) => onFrontier),
      points.filter((one) => !one.onFrontier),
    ];
    expect(new Set(others.map(({ kind }) => pathOf(kind))).size).toBe(others.length);
    expect(new Set(others.map(({ label }) => label)).size).toBe(others.length);
    expect(others.map(({ label }) => label)).toContain('version 9');
    expect(line.map(({ label }) => label)).toEqual(['sees the joint', '']);
    expect(new Set([classOf('own'), classOf('line'), classOf(0)]).size).toBe(3);
  });
});

describe('the drawing', () => {
  it.each([[[0.2]], [[5.9, 3]], [[12.4]], [[48]]])(
    'has an axis from 0 over %j in at most 8 even steps',
    (values) => {
      const ticks = axisFor(values);
      expect(ticks[0]).toBe(0);
      expect(ticks.at(-1)!).toBeGreaterThan(Math.max(...values));
      expect(ticks.length).toBeLessThanOrEqual(8);
      expect(new Set(ticks.slice(1).map((tick, place) => tick - ticks[place]!)).size).toBe(1);
    },
  );

  it('keeps words off each other and inside, left of a mark at the right edge', () => {
    const marks = [
      { x: 100, y: 50, label: 'version 1' },
      { x: 104, y: 52, label: 'version 2' },
      { x: 290, y: 50, label: 'by hand hold' },
    ];
    const boxes = placeLabels(marks, { left: 20, right: 300 });
    for (const [place, box] of boxes.entries()) {
      expect(box.x).toBeGreaterThanOrEqual(20);
      expect(box.x + box.width).toBeLessThanOrEqual(300);
      for (const other of boxes.slice(place + 1)) {
        const isApart =
          Math.abs(other.y - box.y) >= 14 || other.x >= box.x + box.width || other.x + other.width <= box.x;
        expect(isApart).toBe(true);
      }
    }
  });
});
