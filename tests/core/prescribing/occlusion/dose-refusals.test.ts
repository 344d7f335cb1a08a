/** What refuses an occlusion dose: site, screening, measurement, bounds, a wrap, and work at home. */
import { describe, expect, it } from 'vitest';
import type { HomeConditions } from '#core/prescribing/occlusion/home-conditions.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { home, notes, outcome, proposed, refused } from './request.ts';

describe('what refuses a dose', () => {
  it('the trunk, and both limbs at once', () => {
    expect(refused({ limb: 'trunk' })).toEqual(['input.request.limb not-listed']);
    expect(refused({ side: 'both' })).toEqual(['input.request.side not-listed']);
  });

  it('no screening, a screening of another limb, and a method that is closed', () => {
    expect(refused({}, { outcome: null })).toEqual(['input.outcome missing']);
    expect(refused({}, { outcome: { ...outcome, side: 'right' } })).toEqual(['input.outcome inconsistent']);
    expect(refused({}, { outcome: { ...outcome, method: 'low-load' } })).toEqual([
      'input.outcome inconsistent',
    ]);
    const at = (eligibility: MethodOutcome['eligibility']) =>
      refused({}, { outcome: { ...outcome, eligibility } }).length;
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
      ['input.request.cuff.percent too-low'],
      [],
      [],
      ['input.request.cuff.percent too-high'],
      ['input.request.cuff.percent too-low'],
    ]);
  });

  it('a load over 40 % of the maximum; one under 20 % is named', () => {
    expect([refused({ loadKg: 15.9 }), refused({ loadKg: 16 }), refused({ loadKg: 16.1 })]).toEqual([
      [],
      [],
      ['input.request.loadKg too-high'],
    ]);
    expect(
      [notes({ loadKg: 7.9 }), notes({ loadKg: 8 })].map((codes) => codes.includes('under-range')),
    ).toEqual([true, false]);
    expect(notes({ oneRepMaxKg: null })).toContain('maximum-not-known');
    expect(refused({ loadKg: Number.NaN })).toEqual(['input.request.loadKg too-low']);
    expect(refused({ oneRepMaxKg: 0 })).toEqual(['input.request.oneRepMaxKg too-low']);
  });

  it('time over 600 s for one exercise, unless the cuff is let down in the rests', () => {
    expect(refused({ secondsPerRepetition: 6, restSeconds: 50 })).toEqual([]); // 450 + 150 = 600
    expect(refused({ secondsPerRepetition: 6, restSeconds: 51 })).toEqual([
      'input.request.secondsPerRepetition too-high',
    ]);
    expect(refused({ secondsPerRepetition: 6, restSeconds: 60, inflation: 'intermittent' })).toEqual([]);
  });

  it('tempo, rest and sessions a week outside their ranges', () => {
    expect(refused({ secondsPerRepetition: 1.9 })).toEqual(['input.request.secondsPerRepetition too-low']);
    expect(refused({ secondsPerRepetition: 6.1 })).toEqual(['input.request.secondsPerRepetition too-high']);
    expect(refused({ restSeconds: 29 })).toEqual(['input.request.restSeconds too-low']);
    expect(refused({ restSeconds: 61 })).toEqual(['input.request.restSeconds too-high']);
    expect([1, 2, 3, 4].map((sessionsPerWeek) => refused({ sessionsPerWeek }))).toEqual([
      ['input.request.sessionsPerWeek too-low'],
      [],
      [],
      ['input.request.sessionsPerWeek too-high'],
    ]);
    expect(refused({ schemeId: 'unheard-of' })).toEqual(['input.request.schemeId not-listed']);
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
    expect(refused(wrap(10))).toEqual(['input.request.cuff.tightness too-high']);
    expect(refused(wrap(-1))).toEqual(['input.request.cuff.tightness too-low']);
    expect(refused(wrap(6.5))).toEqual(['input.request.cuff.tightness wrong-type']);
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
