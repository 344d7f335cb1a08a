import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equationIds, equations } from '#core/assessment/strength/equations/all.ts';
import { percentForEffort } from '#core/assessment/strength/percent-for-effort.ts';
import { percentForRepetitions } from '#core/assessment/strength/repetition-percent-table.ts';
import { repetitionsAtPercent } from '#core/assessment/strength/repetitions-at-percent.ts';
import { reserveConfidence } from '#core/assessment/strength/reserve-confidence.ts';
import { exertionFromReserve, reserveFromExertion } from '#core/assessment/strength/reserve-scale.ts';
import { holds, holdsIn } from '#tests/support/holds.ts';
import { codesOf, resultOf } from './result-of.ts';

describe('equations turned round', () => {
  it('Epley gives 10 repetitions at 75 % and, flagged, 70 at 30 % [strength 21] [strength 22]', () => {
    const inside = repetitionsAtPercent({ equation: 'epley', percent: 75 });
    expect(resultOf(inside).repetitions).toBeCloseTo(10, 9);
    expect(resultOf(inside).withinShownRange).toBe(true);
    const outside = repetitionsAtPercent({ equation: 'epley', percent: 30 });
    expect(resultOf(outside).repetitions).toBeCloseTo(70, 9);
    expect(codesOf(outside)).toContain('outside-validity');
  });

  it('Brzycki gives 26.2 repetitions at 30 %, flagged as outside its range [strength 23]', () => {
    const outcome = repetitionsAtPercent({ equation: 'brzycki', percent: 30 });
    expect(resultOf(outcome).repetitions).toBeCloseTo(26.2, 9);
    expect(codesOf(outcome)).toContain('outside-validity');
  });

  it('Mayhew cannot go below 52.2 % and Wathan not below 48.8 % [strength 24] [strength 25]', () => {
    expect(equations.mayhew.floorPercent).toBeCloseTo(52.2, 9);
    expect(equations.wathan.floorPercent).toBeCloseTo(48.8, 9);
    expect(100 / equations.mayhew.factor(1e6)).toBeCloseTo(52.2, 9);
    expect(100 / equations.wathan.factor(1e6)).toBeCloseTo(48.8, 9);
    const ok = [
      repetitionsAtPercent({ equation: 'mayhew', percent: 52.2 }).ok,
      repetitionsAtPercent({ equation: 'mayhew', percent: 52.3 }).ok,
      repetitionsAtPercent({ equation: 'wathan', percent: 48.8 }).ok,
      repetitionsAtPercent({ equation: 'wathan', percent: 48.9 }).ok,
      repetitionsAtPercent({ equation: 'kemmler', percent: 65 }).ok,
      repetitionsAtPercent({ equation: 'kemmler', percent: 66 }).ok,
    ];
    expect(ok).toEqual([false, true, false, true, false, true]);
  });

  it('Lombardi would need 169,351 repetitions at 30 % (computed), so it is flagged and not used', () => {
    const outcome = repetitionsAtPercent({ equation: 'lombardi', percent: 30 });
    expect(Math.round(resultOf(outcome).repetitions)).toBe(169_351);
    expect(resultOf(outcome).withinShownRange).toBe(false);
  });

  it('reads the computed table at 70 and 90 %', () => {
    const at = (percent: number) =>
      equationIds.map((equation) =>
        Number(resultOf(repetitionsAtPercent({ equation, percent })).repetitions.toFixed(1)),
      );
    expect(at(70)).toEqual([12.9, 11.8, 35.4, 15.6, 17.1, 12.4, 11.7, 17.1]);
    expect(at(90)).toEqual([3.3, 4.6, 2.9, 1.9, 4.4, 3.6, 4.2, 6.2]);
  });

  it('comes back to the percentage it started from, for every equation that can answer', () => {
    holds(
      fc.constantFrom(...equationIds),
      fc.double({ min: 10, max: 100, noNaN: true }),
      (equation, percent) => {
        const outcome = repetitionsAtPercent({ equation, percent });
        if (!outcome.ok) return;
        const back = 100 / equations[equation].factor(outcome.result.repetitions);
        expect(Math.abs(back - percent)).toBeLessThan(1e-6);
      },
    );
  });
});

describe('repetition charts', () => {
  const percent = (repetitions: number) => resultOf(percentForRepetitions({ repetitions })).percent;

  it('load chart: 80 % at 8 and 75 % at 10 repetitions [strength 26] [strength 27]', () => {
    expect([percent(8), percent(10)]).toEqual([80, 75]);
  });

  it('load chart as printed for every row it has', () => {
    const printed = [100, 95, 93, 90, 87, 85, 83, 80, 77, 75];
    expect(printed.map((_, place) => percent(place + 1))).toEqual(printed);
    expect([percent(11), percent(12)]).toEqual([72.5, 70]);
  });

  it('shows both printings where they disagree, says which is used and that one is from memory', () => {
    const outcome = percentForRepetitions({ repetitions: 12 });
    expect(resultOf(outcome)).toEqual({
      percent: 70,
      editionUsed: 'load-chart',
      byEdition: { loadChart: 70, textbookFromMemory: 67 },
    });
    expect(codesOf(outcome)).toContain('sources-disagree');
    expect(codesOf(percentForRepetitions({ repetitions: 10 }))).not.toContain('sources-disagree');
    expect(codesOf(percentForRepetitions({ repetitions: 11 }))).toContain('between-rows');
  });

  it('says nothing beyond 12 repetitions, the 15 of the textbook included', () => {
    expect([12, 13, 15].map((repetitions) => percentForRepetitions({ repetitions }).ok)).toEqual([
      true,
      false,
      false,
    ]);
  });

  it('8 repetitions at exertion 8 read the chart at 10: 75 % [strength 28]', () => {
    const { reserveLow } = resultOf(reserveFromExertion({ exertion: 8 }));
    const outcome = percentForEffort({ repetitions: 8, reserve: reserveLow ?? Number.NaN });
    expect(resultOf(outcome)).toEqual({ effectiveRepetitions: 10, percent: 75, oneRepMaxKg: null });
  });

  it('120 kg × 8 implies 150 kg by the chart [strength 29]', () => {
    const outcome = percentForEffort({ repetitions: 8, reserve: 0, loadKg: 120 });
    expect(resultOf(outcome).oneRepMaxKg).toBeCloseTo(150, 9);
  });

  it('the grid of repetitions and reserve is the chart shifted, empty beyond 12 together', () => {
    const grid = [7, 9, 11].map((repetitions) =>
      [0, 1, 2, 3, 4].map((reserve) => {
        const outcome = percentForEffort({ repetitions, reserve });
        return outcome.ok ? outcome.result.percent : null;
      }),
    );
    expect(grid).toEqual([
      [83, 80, 77, 75, 72.5],
      [77, 75, 72.5, 70, null],
      [72.5, 70, null, null, null],
    ]);
  });

  it('never gives a higher percentage for more repetitions or more reserve', () => {
    holdsIn(1000, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 10 }), (r, reserve) => {
      const outcome = percentForEffort({ repetitions: r, reserve });
      const more = percentForEffort({ repetitions: r, reserve: reserve + 1 });
      if (outcome.ok && more.ok) expect(more.result.percent).toBeLessThan(outcome.result.percent);
    });
  });
});

describe('repetitions in reserve', () => {
  const reserve = (exertion: number) => {
    const { reserveLow, reserveHigh } = resultOf(reserveFromExertion({ exertion }));
    return [reserveLow, reserveHigh];
  };

  it('exertion 8.5 is 1–2 in reserve, 5 and 6 are 4–6 (Zourdos 2016, secondary) [strength 30] [strength 31]', () => {
    expect(reserve(8.5)).toEqual([1, 2]);
    expect([reserve(5), reserve(6)]).toEqual([
      [4, 6],
      [4, 6],
    ]);
  });

  it('gives no count under exertion 5 and refuses a rating the scale does not have', () => {
    expect([reserve(4), reserve(1)]).toEqual([
      [null, null],
      [null, null],
    ]);
    expect(reserveFromExertion({ exertion: 8.2 }).ok).toBe(false);
  });

  it('goes back from reserve to the rating that names it', () => {
    const ratings = [0, 1, 1.5, 2, 2.5, 3, 4, 6].map((count) => {
      const { exertionLow, exertionHigh } = resultOf(exertionFromReserve({ reserve: count }));
      return [exertionLow, exertionHigh];
    });
    expect(ratings).toEqual([
      [10, 10],
      [9, 9],
      [8.5, 8.5],
      [8, 8],
      [7.5, 7.5],
      [7, 7],
      [5, 6],
      [5, 6],
    ]);
    expect([exertionFromReserve({ reserve: 3.5 }).ok, exertionFromReserve({ reserve: 7 }).ok]).toEqual([
      false,
      false,
    ]);
  });

  it('is trusted less beyond 12 repetitions (Halperin 2022) and far from failure (Hackett 2017)', () => {
    const confidence = (repetitions: number, count: number) =>
      resultOf(reserveConfidence({ repetitions, reserve: count })).confidence;
    expect([confidence(12, 2), confidence(13, 2), confidence(10, 5), confidence(10, 6)]).toEqual([
      'usual',
      'low',
      'usual',
      'low',
    ]);
  });
});
