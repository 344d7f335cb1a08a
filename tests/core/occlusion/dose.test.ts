/** A proposed occlusion dose: what it is taken from, what refuses it, and its easier session. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Measurement } from '#core/model/measurement.ts';
import type { MethodOutcome } from '#core/model/screening.ts';
import { badDayOf } from '#core/occlusion/bad-day.ts';
import type { HomeConditions } from '#core/occlusion/home-conditions.ts';
import {
  type OcclusionDoseInput,
  type OcclusionWish,
  proposeOcclusionDose,
} from '#core/occlusion/occlusion-dose.ts';
import { occlusionScheme, occlusionSchemes } from '#core/occlusion/schemes.ts';

const measured: Measurement = {
  kind: 'limb-occlusion-pressure',
  day: '2026-02-23',
  limb: 'leg',
  side: 'left',
  cuffWidthCm: 18,
  position: 'seated',
  method: 'doppler',
  firstMmhg: 205,
  secondMmhg: 203,
};
const outcome: MethodOutcome = {
  method: 'occlusion',
  limb: 'leg',
  side: 'left',
  opening: 'open',
  reasons: [],
};
const wish: OcclusionWish = {
  exerciseId: 'knee-extension-cuff-weight',
  limb: 'leg',
  side: 'left',
  schemeId: 'thirty-then-fifteens',
  secondsPerRepetition: 4,
  restSeconds: 30,
  sessionsPerWeek: 2,
  loadKg: 12,
  oneRepMaxKg: 40,
  cuff: { kind: 'pneumatic', widthCm: 18, position: 'seated', percent: 60 },
  supervised: true,
  home: null,
};
const propose = (changed: Partial<OcclusionWish> = {}, around: Partial<OcclusionDoseInput> = {}) =>
  proposeOcclusionDose({
    wish: { ...wish, ...changed },
    outcome,
    measurements: [measured],
    today: '2026-03-02',
    choices: {},
    ...around,
  });
const proposed = (...args: Parameters<typeof propose>) => {
  const answered = propose(...args);
  if (!answered.ok) throw new Error(answered.refused.map(({ reason }) => reason).join(' '));
  return answered.result;
};
const refused = (...args: Parameters<typeof propose>) => {
  const answered = propose(...args);
  return answered.ok ? [] : answered.refused.map(({ field, code }) => `${field} ${code}`);
};
const notes = (...args: Parameters<typeof propose>) => {
  const answered = propose(...args);
  return answered.ok ? answered.notes.map(({ code }) => code) : [];
};

/** Every condition of work at home met, the wrap not opened. */
const home: HomeConditions = {
  observedSessions: 2,
  releasesWithEitherHand: true,
  feelingIntact: true,
  knowsToRelease: true,
  wrapOpenedForLimb: false,
};

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

describe('what refuses a dose', () => {
  it('the trunk, and both limbs at once', () => {
    expect(refused({ limb: 'trunk' })).toEqual(['input.wish.limb not-listed']);
    expect(refused({ side: 'both' })).toEqual(['input.wish.side not-listed']);
  });

  it('no screening, a screening of another limb, and a method that is closed', () => {
    expect(refused({}, { outcome: null })).toEqual(['input.outcome missing']);
    expect(refused({}, { outcome: { ...outcome, side: 'right' } })).toEqual(['input.outcome inconsistent']);
    expect(refused({}, { outcome: { ...outcome, method: 'low-load' } })).toEqual([
      'input.outcome inconsistent',
    ]);
    const at = (opening: MethodOutcome['opening']) =>
      refused({}, { outcome: { ...outcome, opening } }).length;
    expect([at('open'), at('open-with-precautions'), at('closed-until-cleared'), at('closed')]).toEqual([
      0, 0, 1, 1,
    ]);
  });

  it('a measurement of another width, position, side or limb, or none', () => {
    const cuff = { kind: 'pneumatic', widthCm: 18, position: 'seated', percent: 60 } as const;
    expect(refused({ cuff: { ...cuff, widthCm: 11 } })).toEqual(['input.measurements inconsistent']);
    expect(refused({ cuff: { ...cuff, position: 'standing' } })).toEqual(['input.measurements inconsistent']);
    expect(refused({ side: 'right' }, { outcome: { ...outcome, side: 'right' } })).toEqual([
      'input.measurements inconsistent',
    ]);
    expect(refused({ limb: 'arm' }, { outcome: { ...outcome, limb: 'arm' } })).toEqual([
      'input.measurements missing',
    ]);
    expect(refused({}, { measurements: [] })).toEqual(['input.measurements missing']);
    expect(refused({}, { today: '2026-04-02' })).toEqual(['input.measurements outside-validity']);
  });

  it('a share outside 40 to 80 % of the measured pressure', () => {
    const at = (percent: number) =>
      refused({ cuff: { kind: 'pneumatic', widthCm: 18, position: 'seated', percent } });
    expect([at(39), at(40), at(80), at(81), at(Number.NaN)]).toEqual([
      ['input.wish.cuff.percent too-low'],
      [],
      [],
      ['input.wish.cuff.percent too-high'],
      ['input.wish.cuff.percent too-low'],
    ]);
  });

  it('a load over 40 % of the maximum; one under 20 % is named', () => {
    expect([refused({ loadKg: 15.9 }), refused({ loadKg: 16 }), refused({ loadKg: 16.1 })]).toEqual([
      [],
      [],
      ['input.wish.loadKg too-high'],
    ]);
    expect(
      [notes({ loadKg: 7.9 }), notes({ loadKg: 8 })].map((codes) => codes.includes('under-range')),
    ).toEqual([true, false]);
    expect(notes({ oneRepMaxKg: null })).toContain('maximum-not-known');
    expect(refused({ loadKg: Number.NaN })).toEqual(['input.wish.loadKg too-low']);
    expect(refused({ oneRepMaxKg: 0 })).toEqual(['input.wish.oneRepMaxKg too-low']);
  });

  it('time over 600 s for one exercise, unless the cuff is let down in the rests', () => {
    expect(refused({ secondsPerRepetition: 6, restSeconds: 50 })).toEqual([]); // 450 + 150 = 600
    expect(refused({ secondsPerRepetition: 6, restSeconds: 51 })).toEqual([
      'input.wish.secondsPerRepetition too-high',
    ]);
    expect(refused({ secondsPerRepetition: 6, restSeconds: 60, inflation: 'intermittent' })).toEqual([]);
  });

  it('tempo, rest and sessions a week outside their ranges', () => {
    expect(refused({ secondsPerRepetition: 1.9 })).toEqual(['input.wish.secondsPerRepetition too-low']);
    expect(refused({ secondsPerRepetition: 6.1 })).toEqual(['input.wish.secondsPerRepetition too-high']);
    expect(refused({ restSeconds: 29 })).toEqual(['input.wish.restSeconds too-low']);
    expect(refused({ restSeconds: 61 })).toEqual(['input.wish.restSeconds too-high']);
    expect([1, 2, 3, 4].map((sessionsPerWeek) => refused({ sessionsPerWeek }))).toEqual([
      ['input.wish.sessionsPerWeek too-low'],
      [],
      [],
      ['input.wish.sessionsPerWeek too-high'],
    ]);
    expect(refused({ schemeId: 'unheard-of' })).toEqual(['input.wish.schemeId not-listed']);
  });

  it('says everything that is wrong at once', () => {
    expect(refused({ loadKg: 30, sessionsPerWeek: 7, restSeconds: 5 })).toHaveLength(3);
  });
});

describe('an elastic wrap', () => {
  const wrap = (tightness: number) => ({ cuff: { kind: 'elastic-wrap', tightness } as const });

  it('has a tightness and no pressure: 7 taken, 8 and 9 warned, 10 rejected (Bell 2018 and 2019; own rule) [occlusion 49]', () => {
    const { cuff } = proposed(wrap(7), { measurements: [] }).dose;
    expect(cuff).toEqual({ kind: 'elastic-wrap', tightness: 7 });
    expect(notes(wrap(7))).toContain('pressure-unknown');
    expect(notes(wrap(7))).not.toContain('tightness-high');
    expect(notes(wrap(8))).toContain('tightness-high');
    expect(notes(wrap(9))).toContain('tightness-high');
    expect(refused(wrap(10))).toEqual(['input.wish.cuff.tightness too-high']);
    expect(refused(wrap(-1))).toEqual(['input.wish.cuff.tightness too-low']);
    expect(refused(wrap(6.5))).toEqual(['input.wish.cuff.tightness wrong-type']);
  });

  it('brings no mmHg and no share of occlusion pressure into the working', () => {
    const { working } = proposed(wrap(7));
    expect(working[0]?.text).not.toMatch(/mmHg|%/);
  });

  it('at home stays closed until a clinician opens it for the limb', () => {
    expect(refused({ ...wrap(7), supervised: false, home })).toEqual([
      'input.home.wrapOpenedForLimb missing',
    ]);
    expect(refused({ ...wrap(7), supervised: false, home: { ...home, wrapOpenedForLimb: true } })).toEqual(
      [],
    );
  });
});

describe('occlusion at home without supervision', () => {
  const alone = (changed: Partial<HomeConditions>) =>
    refused({ supervised: false, home: { ...home, ...changed } });

  it('is closed while nothing is recorded', () => {
    expect(refused({ supervised: false })).toEqual(['input.home missing']);
  });

  it('needs two observed sessions: one is too few', () => {
    expect([1, 2, 3].map((observedSessions) => alone({ observedSessions }))).toEqual([
      ['input.home.observedSessions missing'],
      [],
      [],
    ]);
    expect(alone({ observedSessions: Number.NaN })).toEqual(['input.home.observedSessions missing']);
  });

  it('needs release with either hand, feeling, and knowing what a stopped phone means', () => {
    expect(alone({ releasesWithEitherHand: false })).toEqual(['input.home.releasesWithEitherHand missing']);
    expect(alone({ feelingIntact: false })).toEqual(['input.home.feelingIntact missing']);
    expect(alone({ knowsToRelease: false })).toEqual(['input.home.knowsToRelease missing']);
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

describe('for any wish', () => {
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
    fc.assert(
      fc.property(wild, ({ percent, first, ...changed }) => {
        const answered = propose(
          {
            ...changed,
            cuff: { kind: 'pneumatic', widthCm: 18, position: 'seated', percent },
          } as Partial<OcclusionWish>,
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
      }),
      { seed: 20260131, numRuns: 20_000 },
    );
    expect(doses).toBeGreaterThan(1000);
  });
});
