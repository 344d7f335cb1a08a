/** The acceptable pain limit proposed from the usual pain told at a first visit. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';

describe('the proposed acceptable pain limit', () => {
  it.each([
    [0, 5],
    [2, 5],
    [3, 5],
    [4, 6],
    [5, 7],
    [6, 7],
    [10, 7],
  ])('for usual pain %s is %s: two points over it, at least 5 and at most 7', (usual, limit) => {
    expect(proposePainLimit(usual, 2)).toBe(limit);
  });

  it('follows the points a clinic chose, within the same bounds', () => {
    expect([4, 5, 6].map((usual) => proposePainLimit(usual, 1))).toEqual([5, 6, 7]);
    expect([2, 3, 4].map((usual) => proposePainLimit(usual, 3))).toEqual([5, 6, 7]);
  });

  it('is none where usual pain is not known', () => {
    expect(proposePainLimit(null, 2)).toBeNull();
  });
});
