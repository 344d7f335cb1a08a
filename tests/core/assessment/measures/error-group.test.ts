/** A change is judged by the error of this person’s own group, and by no other. */
import { describe, expect, it } from 'vitest';
import { testReliability } from '#core/assessment/change/test-reliability.ts';
import { early, late, lineFor } from '#tests/core/assessment/course-of.ts';

const mild = 'knee-osteoarthritis-mild';
const knee = 'knee-arthroplasty-awaited';
const hip = 'hip-arthroplasty-awaited';
const none = 'none-of-these';

const walk = (day: string, seconds: number) => ({ kind: 'timed-up-and-go', day, seconds }) as const;
const six = (day: string, metres: number) => ({ kind: 'six-minute-walk', day, metres }) as const;
const chair = (day: string, stands: number) => ({ kind: 'chair-stand-30s', day, stands }) as const;
const fast = (day: string, seconds: number) => ({ kind: 'fast-walk-40m', day, seconds }) as const;
const stairs = (day: string, seconds: number) => ({ kind: 'stair-climb', day, steps: 10, seconds }) as const;

describe('timed up and go (Naylor 2014, abstract: ±36.7 % awaiting a knee, ±44.6 % a hip)', () => {
  it.each([
    [knee, 12.7, 'within-error'],
    [knee, 12.66, 'within-error'],
    [knee, 12.65, 'better'],
    [knee, 27.35, 'worse'],
    [hip, 12.65, 'within-error'],
    [hip, 11.08, 'within-error'],
    [hip, 11.07, 'better'],
  ] as const)('%s, from 20 to %f s: %s', (group, after, verdict) => {
    expect(lineFor(group, walk(early, 20), walk(late, after)).change.verdict).toBe(verdict);
  });

  it('says whose error was taken, and the 1.1 s of early osteoarthritis beside it (Alghadir 2015)', () => {
    expect(lineFor(knee, walk(early, 20), walk(late, 16)).change.sentence).toBe(
      '−4 s, within the error of measuring 7.34 s: not called a change. The error is that of people awaiting a knee arthroplasty: Naylor 2014, 36.7 % of the first time. The care profile names this group. In early knee osteoarthritis it is 1.1 s.',
    );
    expect(lineFor(mild, walk(early, 20), walk(late, 16)).change.verdict).toBe('better');
  });

  it.each([
    [null, 'the care profile names no group'],
    [none, 'no group on file fits'],
  ] as const)('for the group %s is shown and not judged, with no error in the picture', (group, why) => {
    const { change, drawn } = lineFor(group, walk(early, 20), walk(late, 10));
    expect(change).toMatchObject({ verdict: 'not-judged', workings: [] });
    expect(change.sentence).toContain(why);
    expect(drawn.error).toBeNull();
  });

  it('draws the error that its sentence names', () => {
    expect(lineFor(knee, walk(early, 20), walk(late, 16)).drawn.error).toBeCloseTo(7.34, 10);
    expect(lineFor(hip, walk(early, 20), walk(late, 16)).drawn.error).toBeCloseTo(8.92, 10);
  });
});

describe('six-minute walk (Naylor 2014, abstract: 79 m awaiting a knee, 81.5 m a hip)', () => {
  it.each([
    [knee, 378, 'within-error'],
    [knee, 379, 'within-error'],
    [knee, 380, 'better'],
    [hip, 381, 'within-error'],
    [hip, 382, 'better'],
    [hip, 218, 'worse'],
    [mild, 400, 'not-judged'],
    [null, 400, 'not-judged'],
  ] as const)('%s, from 300 to %i m: %s', (group, after, verdict) => {
    expect(lineFor(group, six(early, 300), six(late, after)).change.verdict).toBe(verdict);
  });
});

describe('pain from 0 to 10', () => {
  const pain = (day: string, points: number) =>
    ({
      kind: 'pain-function-global',
      day,
      joint: 'right-knee',
      pain: points,
      difficulty: null,
      patientGlobal: 5,
    }) as const;
  // Naylor 2014, abstract: 2.8 cm knee, 3.3 cm hip. Alghadir 2018: 1.33 in knee osteoarthritis.
  it.each([
    [mild, 6, 'within-error'],
    [mild, 5, 'better'],
    [knee, 5, 'within-error'],
    [knee, 4, 'better'],
    [hip, 4, 'within-error'],
    [hip, 3, 'better'],
    [none, 0, 'not-judged'],
  ] as const)('%s, from 7 to %i: %s', (group, after, verdict) => {
    expect(lineFor(group, pain(early, 7), pain(late, after)).change.verdict).toBe(verdict);
  });
});

describe('tests of which only the reliability is known', () => {
  it('are not judged before a knee arthroplasty, and say so with 0.90, 0.93 and 0.94 (Tolk 2019, abstract)', () => {
    expect(testReliability).toEqual({ 'chair-stand-30s': 0.9, 'fast-walk-40m': 0.93, 'stair-climb': 0.94 });
    for (const [rows, figure] of [
      [[chair(early, 6), chair(late, 12)], '0.90'],
      [[fast(early, 50), fast(late, 30)], '0.93'],
      [[stairs(early, 30), stairs(late, 15)], '0.94'],
    ] as const) {
      const { change, drawn } = lineFor(knee, ...rows);
      expect(change.verdict).toBe('not-judged');
      expect(change.sentence).toContain(`(${figure}, Tolk 2019), which is no error`);
      expect(drawn.error).toBeNull();
    }
  });

  it('the chair stand is judged in early osteoarthritis alone (Gill 2022: 2.5 stands)', () => {
    const verdictIn = (group: Parameters<typeof lineFor>[0]) =>
      lineFor(group, chair(early, 9), chair(late, 12)).change.verdict;
    expect([mild, knee, hip, none, null].map((group) => verdictIn(group as never))).toEqual([
      'better',
      'not-judged',
      'not-judged',
      'not-judged',
      'not-judged',
    ]);
  });
});
