/** Between which doses the answers turned: two sessions at usual, more often than over it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { corridorOf, type DoseAnswers } from '#core/review/dose/corridor.ts';
import { holdsIn } from '#tests/support/holds.ts';

const at = (share: number, atUsual: number, overUsual = 0): DoseAnswers => ({
  share,
  dose: null,
  atUsual,
  overUsual,
});

const ends = (...doses: readonly DoseAnswers[]) => {
  const { highestAtUsual, lowestOverUsual, noneBecause } = corridorOf(doses);
  return [highestAtUsual?.share ?? null, lowestOverUsual?.share ?? null, noneBecause];
};

describe('a corridor', () => {
  it('lies between the highest dose at usual and the lowest over it', () => {
    expect(ends(at(0.83, 3), at(1, 10), at(1.17, 7), at(1.3, 1, 2))).toEqual([1.17, 1.3, null]);
  });

  it('begins at no dose that was at usual once: once, twice, three times', () => {
    expect([1, 2, 3].map((times) => ends(at(1, times), at(1.3, 0, 1))[0])).toEqual([null, 1, 1]);
  });

  it('begins at a dose more often at usual than over it, and ends at one that is not: 3, 4 and 5 of 8', () => {
    expect([3, 4, 5].map((times) => ends(at(1, times, 8 - times)))).toEqual([
      [null, 1, 'none-at-usual'],
      [null, 1, 'none-at-usual'],
      [1, null, 'none-over-usual'],
    ]);
  });

  it('ends at a dose that was over usual the one time it was done', () => {
    expect(ends(at(1, 2), at(1.1, 0, 1))).toEqual([1, 1.1, null]);
  });

  it('is none, with the reason, where nothing was counted, nothing was over, or a lower dose was', () => {
    expect(ends()).toEqual([null, null, 'nothing-counted']);
    expect(ends(at(1, 5))).toEqual([1, null, 'none-over-usual']);
    expect(ends(at(1, 0, 3), at(1.1, 4))).toEqual([1.1, 1, 'overlap']);
  });

  it('never ends where it begins, whatever was counted', () => {
    const drawn = fc.array(fc.tuple(fc.nat(9), fc.nat(9)), { maxLength: 8 });
    holdsIn(2_000, drawn, (counts) => {
      const doses = counts.map(([usual, over], place) => at(1 + place / 10, usual, over));
      const { highestAtUsual, lowestOverUsual, noneBecause } = corridorOf(doses);
      const isNone = highestAtUsual === null || lowestOverUsual === null;
      if (isNone) return noneBecause !== null && noneBecause !== 'overlap';
      return (noneBecause === null) === lowestOverUsual.share > highestAtUsual.share;
    });
  });
});
