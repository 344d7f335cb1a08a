/** Doses as the picture draws them: a staircase that breaks where nothing is known, and an axis without empty parts. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadRange, staircase, stepMarks } from '#core/review/chart-steps.ts';
import { reviewChartOf } from '#core/review/review-chart.ts';
import { firstDrawn, zoomed } from '#core/review/zoom.ts';
import { addDays } from '#core/time/day.ts';
import { holdsIn } from '#tests/support/holds.ts';
import { baseline, morning, series, session, since, today } from './builders.ts';

const step = (
  from: string,
  to: string | null,
  share: number | null,
  way: 'signed' | 'within-band' = 'signed',
) => ({
  from,
  to,
  share,
  way,
  inShort: '× 15',
});

const days = { since, today };

describe('the staircase', () => {
  it('joins a dose to the one that took its place, and holds the last one until today', () => {
    const steps = [step('2026-03-02', '2026-03-10', 1), step('2026-03-10', null, 1.25)];
    expect(staircase(steps, today)).toEqual([
      [
        { day: '2026-03-02', value: 1 },
        { day: '2026-03-10', value: 1.25 },
        { day: today, value: 1.25 },
      ],
    ]);
  });

  it('draws no line where the load is not known, and none after the exercise ended', () => {
    const steps = [
      step('2026-03-02', '2026-03-10', 1),
      step('2026-03-10', '2026-03-15', null),
      step('2026-03-15', '2026-03-20', 1.5),
    ];
    expect(staircase(steps, today).map((line) => line.map(({ day }) => day))).toEqual([
      ['2026-03-02', '2026-03-10'],
      ['2026-03-15', '2026-03-20'],
    ]);
  });

  it('tells a signature of its own from a step within what was signed', () => {
    const marks = stepMarks(
      [step('2026-03-02', null, 1), step('2026-03-05', null, 1.1, 'within-band')],
      days,
    );
    expect(marks.map(({ isSigned }) => isSigned)).toEqual([true, false]);
  });

  it('keeps the dose in force when the days begin, from their first day, and none that ended before', () => {
    const marks = stepMarks([step('2026-01-01', since, 1), step('2026-02-01', null, 1.2)], days);
    expect(marks).toMatchObject([{ from: since, share: 1.2, isEarlier: true }]);
  });
});

describe('the axis of loads', () => {
  it('runs from the lowest to the highest figure there is', () => {
    expect(loadRange([1, null, 1.5, 1.2], 1)).toEqual({ low: 1, high: 1.5, below: null });
  });

  it('leaves out the empty stretch down to easier sessions, and only a wide one: under, at and over', () => {
    // Of an axis of 1: 0.39, 0.4 and 0.41 of it stand empty.
    const below = (lowest: number) => loadRange([lowest, 1, 1 + lowest], 1).below;
    expect([1 - 0.39, 1 - 0.4, 1 - 0.41].map((lowest) => below(lowest) !== null)).toEqual([
      false,
      true,
      true,
    ]);
  });

  it('never parts the doses themselves, however far apart they lie', () => {
    expect(loadRange([1, 3], 1).below).toBeNull();
  });

  it('holds every figure, in its main part or under the break', () => {
    holdsIn(300, fc.array(fc.double({ min: 0.01, max: 4, noNaN: true }), { minLength: 1 }), (values) => {
      const { low, high, below } = loadRange(values, Math.max(...values));
      for (const value of values)
        expect(
          (value >= low - 1e-9 && value <= high + 1e-9) ||
            (below !== null && value >= below.low && value <= below.high),
        ).toBe(true);
      expect(below === null || below.high < low).toBe(true);
    });
  });
});

describe('the picture of a dose', () => {
  const dayOf = (place: number) => addDays(since, place);
  const seen = series(
    {
      sessions: [session(dayOf(2)), session(dayOf(9))],
      mornings: [
        morning(dayOf(3), 3),
        morning(dayOf(4), 4, { flare: true }),
        morning(dayOf(5), 6, { flare: true }),
        morning(dayOf(8), 4, { flare: true }),
      ],
      baselines: [baseline],
    },
    { measure: 'dose' },
  );
  const chart = reviewChartOf(
    seen,
    {},
    {
      steps: [{ ...step(dayOf(1), null, 1), prescriptionId: 'p', version: 1 }] as never,
    },
  );

  it('says by how much a morning lies over usual and a session over the limit, and nothing of one that does not', () => {
    expect(chart.pains.filter(({ of }) => of === 'morning').map(({ over }) => over)).toEqual([
      undefined,
      1,
      3,
      1,
      undefined,
    ]);
    expect(chart.pains.filter(({ of }) => of === 'session').map(({ over }) => over)).toEqual([
      undefined,
      undefined,
    ]);
  });

  it('ends its pain at the worst that was given, or at the limit where that lies deeper', () => {
    expect(chart.painFoot).toBe(6);
    expect(reviewChartOf(series({ baselines: [baseline] })).painFoot).toBe(5);
  });

  it('counts the mornings of each flare that follow each other', () => {
    expect(chart.flares).toEqual([
      { from: dayOf(4), to: dayOf(5), mornings: 2 },
      { from: dayOf(8), to: dayOf(8), mornings: 1 },
    ]);
  });

  it('begins where there is something to draw', () => {
    expect(firstDrawn(chart)).toBe(dayOf(1));
    expect(firstDrawn({ days: [], steps: [] })).toBeNull();
  });

  it('of a range within one dose still draws that dose, from edge to edge and at the same height', () => {
    const range = { from: dayOf(12), to: dayOf(27) };
    const shown = zoomed(chart, range);
    expect(shown.loadLine).toEqual([
      [
        { day: range.from, value: 1 },
        { day: range.to, value: 1 },
      ],
    ]);
    expect(shown.steps).toMatchObject([{ from: range.from, isEarlier: true }]);
    expect(shown.loadRange).toEqual(chart.loadRange);
  });

  it('is drawn for the dose alone: another measure has no steps', () => {
    const steps = [{ ...step(dayOf(1), null, 1), prescriptionId: 'p', version: 1 }] as never;
    expect(reviewChartOf({ ...seen, measure: 'sets' }, {}, { steps }).steps).toEqual([]);
  });
});
