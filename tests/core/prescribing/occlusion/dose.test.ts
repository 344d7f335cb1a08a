/** A proposed occlusion dose: what it is taken from, its easier session, and its bounds for any request. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { badDayOf } from '#core/prescribing/occlusion/bad-day.ts';
import type { OcclusionRequest } from '#core/prescribing/occlusion/occlusion-request.ts';
import { occlusionScheme, occlusionSchemes } from '#core/prescribing/occlusion/schemes.ts';
import { holdsIn } from '#tests/support/holds.ts';
import { measured, notes, propose, proposed, refused } from './request.ts';

describe('the dose', () => {
  it('takes its pressure from the lower reading of this limb: 203 mmHg × 60 % is 122 mmHg', () => {
    expect(proposed().dose.cuff).toEqual({
      kind: 'pneumatic',
      widthCm: 18,
      position: 'seated',
      pressureMmhg: 122,
      percentOfLimbOcclusionPressure: 60,
      limbOcclusionPressureMmhg: 203,
      measuredOn: '2026-02-23',
    });
  });

  it('holds the scheme as data, its cap and the sessions a week', () => {
    expect(proposed().dose).toMatchObject({
      scheme: [30, 15, 15, 15],
      sets: 4,
      capSeconds: 600,
      inflation: 'continuous',
      sessionsPerWeek: 2,
      loadKg: 12,
    });
  });

  it('shows its working with a source for each line', () => {
    const { working } = proposed();
    const texts = working.map(({ text }) => text).join('\n');
    expect(texts).toContain('lower of 205 and 203');
    expect(texts).toContain('12 kg is 30.0 % of an estimated maximum of 40.0 kg');
    expect(texts).toContain('300 s of work at 4 s a repetition, plus 3 rests of 30 s = 390 s');
    expect(working.filter(({ support }) => support === '')).toEqual([]);
  });
});

describe('the easier session', () => {
  it('is less work at the same load and pressure: 30/15/15/15 becomes 15/15/15', () => {
    const { dose, badDay } = proposed();
    expect(badDay).toEqual({ ...dose, sets: 3, scheme: [15, 15, 15] });
  });

  it('is fewer repetitions than the dose for every scheme, and never none', () => {
    const { dose } = proposed();
    for (const scheme of occlusionSchemes) {
      const full = { ...dose, scheme: [...scheme.repetitions], sets: scheme.repetitions.length };
      const easier = badDayOf(full);
      const total = (repetitions: readonly number[]) => repetitions.reduce((sum, count) => sum + count, 0);
      expect(total(easier.scheme)).toBeLessThan(total(full.scheme));
      expect(total(easier.scheme)).toBeGreaterThan(0);
      expect(easier.sets).toBe(easier.scheme.length);
    }
    expect(badDayOf({ ...dose, sets: 1, scheme: [30] }).scheme).toEqual([15]);
  });
});

describe('schemes', () => {
  it('three sets of 10 to 15 with 15 s rest stand as common practice, once a session', () => {
    expect(occlusionScheme('three-short-rests')).toMatchObject({
      repetitions: [15, 15, 15],
      fewest: 10,
      restSeconds: { low: 15, high: 15 },
      perSession: 1,
      citation: { mark: 'common-practice' },
    });
    expect(notes({ schemeId: 'three-short-rests', restSeconds: 15 })).toEqual(
      expect.arrayContaining(['once-per-session', 'repetition-band', 'common-practice']),
    );
  });

  it('every scheme can be dosed at its usual rest', () => {
    for (const scheme of occlusionSchemes) {
      expect([scheme.id, refused({ schemeId: scheme.id, restSeconds: scheme.restSeconds.usual })]).toEqual([
        scheme.id,
        [],
      ]);
    }
  });
});

describe('for any request', () => {
  it('a dose lies in every bound, or is refused with a reason; never a number that is none', () => {
    const mostly = <T>(usual: fc.Arbitrary<T>, wild: fc.Arbitrary<T>) =>
      fc.oneof({ weight: 6, arbitrary: usual }, { weight: 1, arbitrary: wild });
    const wild = fc.record({
      limb: mostly(fc.constant('leg'), fc.constantFrom('arm', 'trunk')),
      side: mostly(fc.constant('left'), fc.constantFrom('right', 'both')),
      schemeId: fc.constantFrom(...occlusionSchemes.map(({ id }) => id)),
      secondsPerRepetition: mostly(fc.double({ min: 2, max: 6, noNaN: true }), fc.double()),
      restSeconds: mostly(fc.constantFrom(15, 30, 45, 60), fc.constantFrom(0, Number.NaN, 1e9)),
      sessionsPerWeek: mostly(fc.constantFrom(2, 3), fc.constantFrom(0, 1, 4, 2.5, Number.NaN)),
      loadKg: mostly(fc.double({ min: 0, max: 20, noNaN: true }), fc.double()),
      oneRepMaxKg: mostly(
        fc.oneof(fc.constant(null), fc.double({ min: 30, max: 200, noNaN: true })),
        fc.double(),
      ),
      percent: mostly(fc.double({ min: 30, max: 90, noNaN: true }), fc.double()),
      first: mostly(fc.double({ min: 190, max: 215, noNaN: true }), fc.double()),
    });
    let doses = 0;
    holdsIn(20_000, wild, ({ percent, first, ...changed }) => {
      const answered = propose(
        {
          ...changed,
          cuff: { kind: 'pneumatic', widthCm: 18, position: 'seated', percent },
        } as Partial<OcclusionRequest>,
        { measurements: [{ ...measured, firstMmhg: first }] },
      );
      if (!answered.ok) {
        expect(answered.refused.length).toBeGreaterThan(0);
        return;
      }
      doses += 1;
      const { dose } = answered.result;
      if (dose.cuff.kind !== 'pneumatic') throw new Error('A pneumatic cuff was asked for.');
      expect(dose.cuff.pressureMmhg).toBeLessThanOrEqual(0.8 * Math.min(first, 203));
      expect(dose.cuff.pressureMmhg).toBeGreaterThan(0.4 * Math.min(first, 203) - 1);
      if (dose.oneRepMaxKg !== null)
        expect(dose.loadKg).toBeLessThanOrEqual(0.4 * dose.oneRepMaxKg * (1 + 1e-6));
      expect(JSON.stringify(answered)).not.toMatch(/null,null|NaN|Infinity/);
    });
    expect(doses).toBeGreaterThan(1000);
  });
});
