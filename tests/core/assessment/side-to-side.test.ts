/** One limb against the other: judged only where an error of measuring is known. */
import { describe, expect, it } from 'vitest';
import { sideLines } from '#core/assessment/course/side-to-side.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { addDays } from '#core/time/day.ts';

const day = '2026-03-02';
const girth = (side: 'left' | 'right', circumferenceCm: number, on = day) =>
  ({ kind: 'limb-circumference', day: on, limb: 'leg', side, site: 'mid-thigh', circumferenceCm }) as const;
const push = (side: 'left' | 'right', force: number, over: object = {}) =>
  ({
    kind: 'isometric-force',
    day,
    site: 'knee extensors',
    side,
    heldBy: 'by-belt',
    forceUnit: 'newtons',
    force,
    ...over,
  }) as Measurement;
const failure = (side: 'left' | 'right' | 'both', loadKg: number, repetitions = 8) =>
  ({
    kind: 'repetitions-to-failure',
    day,
    exerciseId: 'knee-extension-seated',
    side,
    loadKg,
    repetitions,
  }) as const;

const told = (...rows: readonly Measurement[]) => sideLines(rows)[0];

describe('girth (1.5 cm, from memory)', () => {
  it.each([
    [48.4, 'differ', 'Right less left: −1.6'],
    [48.5, 'within-error', 'Within the error of measuring 1.5 cm (from memory'],
    [51.5, 'within-error', 'Within the error'],
    [51.6, 'differ', 'Beyond the error'],
  ] as const)('right %f beside left 50', (right, verdict, words) => {
    const line = told(girth('left', 50), girth('right', right))!;
    expect(line.verdict).toBe(verdict);
    expect(line.sentence).toContain(words);
    expect(line.sentence).not.toContain('%');
  });
});

describe('force', () => {
  it('is shown with the share of the other side and not judged, since no error is known', () => {
    expect(told(push('left', 300), push('right', 240))).toMatchObject({
      title: 'Isometric force: knee extensors, against a belt',
      verdict: 'not-judged',
      sentence:
        'Right less left: −60 N. Right is 80 % of left. The error of measuring is not known, so this is not judged.',
    });
  });

  it('typed in kilograms is compared in newtons', () => {
    expect(told(push('left', 196.133), push('right', 20, { forceUnit: 'kilograms' }))!.sentence).toMatch(
      /^Right less left: 0 N\./,
    );
  });

  it('of none on one side has no share', () => {
    expect(told(push('left', 0), push('right', 240))!.sentence).not.toContain('%');
  });

  it('held by hand and against a belt are two things', () => {
    expect(sideLines([push('left', 300), push('right', 240, { heldBy: 'by-hand' })])).toEqual([]);
  });
});

it('a range of movement of one side is held against the same movement of the other', () => {
  const bend = (joint: 'left-knee' | 'right-knee' | 'neck', degrees: number) =>
    ({ kind: 'range-of-movement', day, joint, movement: 'flexion', manner: 'active', degrees }) as const;
  expect(sideLines([bend('left-knee', 135), bend('right-knee', 95), bend('neck', 40)])).toMatchObject([
    { title: 'Range of movement: knee, active flexion', verdict: 'not-judged' },
  ]);
});

describe('a test to failure', () => {
  it('differs only where the ranges of estimates lie apart', () => {
    expect(told(failure('left', 20), failure('right', 10))).toMatchObject({ verdict: 'differ' });
    expect(told(failure('left', 20), failure('right', 10))!.sentence).toContain('left is stronger');
    expect(told(failure('left', 10), failure('right', 10.5))!.verdict).toBe('within-error');
  });

  it('of both legs at once, or so long that no figure comes of it, is not compared', () => {
    expect(sideLines([failure('both', 20), failure('left', 10)])).toEqual([]);
    expect(told(failure('left', 4, 80), failure('right', 4, 8))!.verdict).toBe('not-judged');
  });
});

describe('the two sides', () => {
  it('are the newest of each', () => {
    const line = told(girth('left', 50), girth('right', 44), girth('right', 49, addDays(day, 1)))!;
    expect([line.left.text, line.right.text]).toEqual(['50 cm', '49 cm']);
  });

  it.each([
    [28, 'within-error'],
    [29, 'not-judged'],
  ])('measured %i days apart, at most 28', (days, verdict) => {
    expect(told(girth('left', 50), girth('right', 50, addDays(day, days)))!.verdict).toBe(verdict);
  });

  it('have no line where one of them was never measured', () => {
    expect(sideLines([girth('left', 50)])).toEqual([]);
  });
});

describe('the side that was operated on or injured', () => {
  const knee = { joint: 'right-knee', procedure: 'Knee replacement', on: '2026-02-01' } as const;
  const rows = [girth('left', 50), girth('right', 47)];
  const operated = (...operations: Parameters<typeof sideLines>[1] & object) =>
    sideLines(rows, operations)[0]?.operated;

  it('is named from the protocol on what was measured of that limb', () => {
    expect(operated(knee)).toEqual({ side: 'right', procedure: 'Knee replacement', on: '2026-02-01' });
    expect(operated({ ...knee, joint: 'right-hip' })?.side).toBe('right');
  });

  it('is none without a protocol, of another limb, or where both sides of the limb were operated on', () => {
    expect(operated()).toBeNull();
    expect(operated({ ...knee, joint: 'right-shoulder' })).toBeNull();
    expect(operated({ ...knee, joint: 'low-back' })).toBeNull();
    expect(operated(knee, { ...knee, joint: 'left-hip' })).toBeNull();
  });

  it('is the newest of two on one side', () => {
    const later = { ...knee, procedure: 'Revision', on: '2026-02-20' };
    expect(operated(knee, later)?.procedure).toBe('Revision');
  });
});
