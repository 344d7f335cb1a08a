/** Further measures: what each says of one reading and of two, and what cannot be. */
import { describe, expect, it } from 'vitest';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measurementConsistent } from '#core/assessment/measurements/measurement-checks.ts';
import { newtons } from '#core/assessment/measures/isometric-force.ts';
import { measureOf } from '#core/assessment/measures/registry.ts';
import { early, late, lineFor } from '#tests/core/assessment/course-of.ts';

const refused = (row: Measurement) => measurementConsistent(row, late).map(({ field }) => field);

describe('walk at usual pace', () => {
  const walk = (day: string, seconds: number) =>
    ({ kind: 'usual-pace-walk', day, distanceM: 20, seconds }) as const;
  // 20 m in 20 s is 1 m/s. Gilbert 2021, abstract: 4.1 to 6.9 m/min, which is 0.068 to 0.115 m/s.
  it.each([
    [20 / 1.068, 'less than any method calls important'],
    [20 / 1.069, 'important by some methods'],
    [20 / 1.114, 'important by some methods'],
    [20 / 1.115, 'important by every method'],
  ])('in knee osteoarthritis, from 20 to %f s, a difference is %s', (seconds, words) => {
    const { change } = lineFor('knee-osteoarthritis-mild', walk(early, 20), walk(late, seconds));
    expect(change.sentence).toContain(words);
    expect(change.verdict).toBe('not-judged');
  });

  it('of somebody with no knee group is sized by older adults, from memory', () => {
    expect(lineFor(null, walk(early, 20), walk(late, 18)).change.sentence).toBe(
      '+0.11 m/s. Whose error of measuring holds is not known: the care profile names no group. In older adults (0.05 and 0.10 m/s, from memory) it is a substantial meaningful change or more. A difference is shown and not called a change.',
    );
  });

  it.each([
    [25, 'is low performance'],
    [24.9, 'is under 1.0 m/s, not low'],
    [20, 'is under neither'],
  ])('20 m in %f s %s (EWGSOP2 2019: 0.8 m/s)', (seconds, words) => {
    expect(lineFor(null, walk(early, seconds)).norm.sentence).toContain(words);
  });

  it('over two distances is two things', () => {
    expect(lineFor(null, walk(early, 20), { ...walk(late, 5), distanceM: 4 }).readings).toHaveLength(1);
  });
});

it.each([
  [13.5, 'under both'],
  [13.6, 'at the first or over it'],
  [15, 'at the first or over it'],
  [15.1, 'over both'],
])('five stands in %f s are %s (13.6 s; EWGSOP2 2019: more than 15 s)', (seconds, words) => {
  expect(lineFor(null, { kind: 'five-times-sit-to-stand', day: early, seconds }).norm.sentence).toContain(
    words,
  );
});

describe('range of movement', () => {
  const bend = (day: string, degrees: number, over: object = {}) =>
    ({
      kind: 'range-of-movement',
      day,
      joint: 'right-knee',
      movement: 'flexion',
      manner: 'active',
      degrees,
      ...over,
    }) as Measurement;

  it('is shown and not judged, since no error of measuring it is known', () => {
    const { title, change } = lineFor('knee-arthroplasty-awaited', bend(early, 80), bend(late, 110));
    expect(title).toBe('Range: right knee, active flexion');
    expect(change).toMatchObject({ verdict: 'not-judged' });
    expect(change.sentence).toContain('+30°');
  });

  it('by the patient and by the examiner are two things', () => {
    expect(lineFor(null, bend(early, 80), bend(late, 110, { manner: 'passive' })).readings).toHaveLength(1);
  });

  it('of a movement the joint has not is refused', () => {
    expect(refused(bend(early, 20))).toEqual([]);
    expect(refused(bend(early, 20, { movement: 'inversion' }))).toEqual(['input.movement']);
  });
});

describe('isometric force', () => {
  const push = (force: number, forceUnit: 'newtons' | 'kilograms') =>
    ({
      kind: 'isometric-force',
      day: early,
      site: 'knee extensors',
      side: 'right',
      heldBy: 'by-hand',
      force,
      forceUnit,
    }) as const;

  it('typed in kilograms is kept as typed and compared in newtons (standard gravity 9.80665)', () => {
    expect(newtons(push(20, 'kilograms'))).toBeCloseTo(196.133, 9);
    expect(measureOf('isometric-force').inWords(push(20, 'kilograms'))).toBe('196 N (20 kg), held by hand');
  });

  it('asks where the unit looks wrong, and refuses what no instrument shows', () => {
    const asks = (row: Measurement) => measureOf('isometric-force').asks?.(row) ?? [];
    expect(
      [asks(push(9.9, 'newtons')), asks(push(10, 'newtons')), asks(push(1200, 'newtons'))].map(
        (all) => all.length,
      ),
    ).toEqual([1, 0, 0]);
    expect(asks(push(1201, 'newtons'))).toHaveLength(1);
    expect(refused(push(306, 'kilograms'))).toEqual(['input.force']);
    expect(refused(push(305, 'kilograms'))).toEqual([]);
  });
});

describe('a reported disease activity index', () => {
  const index = (name: string, score: number) =>
    ({ kind: 'disease-activity-score', day: early, index: name, score }) as Measurement;
  it.each([
    ['das28-esr', 2.5, 'remission'],
    ['das28-esr', 2.6, 'low'],
    ['das28-crp', 5.2, 'high'],
    ['cdai', 10, 'low'],
    ['rapid3', 12.1, 'high'],
  ])('%s of %f reads as %s', (name, score, band) => {
    expect(lineFor(null, index(name, score)).readings[0]!.text).toContain(band);
  });

  it('over the most its formula gives is refused', () => {
    expect(refused(index('rapid3', 30))).toEqual([]);
    expect(refused(index('rapid3', 30.1))).toEqual(['input.score']);
    expect(refused(index('das28-crp', 10.1))).toEqual(['input.score']);
  });
});
