/** Limits of others on an exercise and a dose, the gate for a cuff at home, appointments at a distance. */
import { describe, expect, it } from 'vitest';
import {
  type HomeCheck,
  homeConditionsOf,
  ineligibleAtHome,
  type SupervisedSession,
} from '#core/episode/home-eligibility.ts';
import { limitedExercises, limitRefusals, limitsFor } from '#core/episode/limit-bounds.ts';
import { cautionsOn, limitCautions } from '#core/episode/limit-cautions.ts';
import { firstOcclusionRemote, lockedTest, visitRefusals } from '#core/episode/remote-visit.ts';
import type { Dose, VariationDose } from '#core/prescribing/dose.ts';
import type { Limit } from '#core/record/limit.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';

const today = '2026-03-20';
const limit = (over: Partial<Limit> = {}): Limit => ({
  joint: 'right-knee',
  kind: 'load-limit',
  limitKg: 4,
  from: '2026-03-01',
  to: null,
  author: 'Dr Surgeon',
  ...over,
});

describe('a load limit', () => {
  it.each([
    ['under it', 3.9, true],
    ['at it', 4, true],
    ['over it', 4.1, false],
  ])('a dose %s', (_name, loadKg, isTaken) => {
    const refused = limitRefusals([limit()], { ...lowLoadDose, loadKg }, today);
    expect(refused.length === 0).toBe(isTaken);
    if (!isTaken) expect(refused[0]!.reason).toMatch(/4.1 kg is over the limit of 4 kg.*Dr Surgeon/);
  });

  it.each([
    ['the day before it begins', { from: '2026-03-21' }, true],
    ['on its first day', { from: today }, false],
    ['on its last day', { to: today }, false],
    ['after its last day: an expiry opens nothing', { to: '2026-03-19' }, false],
    ['once lifted', { liftedOn: today }, true],
    ['for the other knee', { joint: 'left-knee' as const }, true],
  ])('%s', (_name, over, isOpen) => {
    expect(limitRefusals([limit(over)], { ...lowLoadDose, loadKg: 5 }, today).length === 0).toBe(isOpen);
  });

  it('says of one past its last day that it is to be asked again', () => {
    const [refusal] = limitRefusals([limit({ to: '2026-03-19' })], { ...lowLoadDose, loadKg: 5 }, today);
    expect(refusal?.reason).toMatch(/last day was 19 Mar 2026, and it still applies until it is reviewed/);
  });

  it('the lowest of several binds', () => {
    const limits = [limit({ limitKg: 6 }), limit({ limitKg: 2 })];
    expect(limitsFor(limits, 'knee-extension-seated', 'right', today).limitKg).toBe(2);
  });
});

describe('a limit on weight-bearing', () => {
  const bearing = [limit({ kind: 'weight-bearing', limitKg: null })];

  it.each([
    ['sit-to-stand-chair', 'both', true],
    ['wall-push-up', 'both', true],
    ['push-up', 'both', true],
    ['knee-extension-seated', 'right', false],
    ['side-lying-hip-abduction', 'right', false],
  ] as const)('of the right knee: %s (%s) is closed: %s', (exerciseId, side, isClosed) => {
    expect(limitsFor(bearing, exerciseId, side, today).contraindications.length > 0).toBe(isClosed);
  });

  it('closes chair stands and squats, and the catalogue shows them as closed with the author', () => {
    const closed = limitedExercises(bearing, today).filter((row) => row.contraindications.length > 0);
    const ids = closed.map((row) => row.exerciseId);
    expect(ids).toContain('sit-to-stand-chair');
    expect(ids).not.toContain('knee-extension-seated');
    expect(closed.every((row) => row.contraindications.every((text) => text.includes('Dr Surgeon')))).toBe(
      true,
    );
  });

  it('without a limit the catalogue is untouched', () => {
    expect(limitedExercises([], today)).toEqual([]);
  });
});

describe('a load limit told under an exercise', () => {
  const variation = {
    ...lowLoadDose,
    method: 'variation',
    exerciseId: 'sit-to-stand-chair',
    addedKg: 0,
    effectiveLoadKg: null,
  } as unknown as VariationDose;
  const told = (dose: Dose) =>
    cautionsOn([], [limit({ limitKg: 3 })], dose, today).map(
      ({ patient }) => 'kind' in patient && patient.kind,
    );

  it.each([
    ['with a weight', lowLoadDose, 'load-limit-kg'],
    ['with a weight added', { ...variation, addedKg: 2 }, 'load-limit-kg'],
    ['against a band or putty with a mark', { ...variation, mark: 2 }, 'load-limit-kg'],
    ['without a weight', variation, 'load-limit-kg-none'],
  ] as const)('%s is %s', (_, dose, kind) => {
    expect(told(dose)).toEqual([kind]);
  });
});

describe('a limit on range without degrees', () => {
  it('goes with the prescription as a caution for the clinician to judge', () => {
    const range = [limit({ kind: 'range', limitKg: null })];
    expect(limitRefusals(range, lowLoadDose, today)).toEqual([]);
    const [caution] = limitCautions(range, lowLoadDose, today);
    expect(caution?.text).toMatch(/range of movement.*the clinician judges/);
    expect(caution?.patient).toEqual({
      key: 'limit',
      kind: 'range',
      joint: 'right-knee',
      author: 'Dr Surgeon',
    });
  });
});

const watched = (day: string, over: Partial<SupervisedSession> = {}): SupervisedSession => ({
  limb: 'leg',
  side: 'right',
  day,
  supervisedThroughout: true,
  recordedAt: 0,
  by: 'Clinician',
  ...over,
});
const check = (over: Partial<HomeCheck> = {}): HomeCheck => ({
  limb: 'leg',
  side: 'right',
  day: '2026-03-10',
  releasesWithLeftHand: true,
  releasesWithRightHand: true,
  feelingIntact: true,
  knowsToRelease: true,
  wrapOpened: false,
  recordedAt: 0,
  by: 'Clinician',
  ...over,
});
const leg = { limb: 'leg', side: 'right' } as const;
const two = [watched('2026-03-02'), watched('2026-03-05')];

describe('a cuff at home', () => {
  it.each([
    ['nothing on record', [], [], 1],
    ['one session watched', two.slice(0, 1), [check()], 1],
    ['two watched', two, [check()], 0],
    ['two on one day count as one', [watched('2026-03-02'), watched('2026-03-02')], [check()], 1],
    [
      'one of two not watched to the end',
      [two[0]!, watched('2026-03-05', { supervisedThroughout: false })],
      [check()],
      1,
    ],
    ['two watched on the other leg', two.map((row) => ({ ...row, side: 'left' as const })), [check()], 1],
    ['two watched and no check', two, [], 3],
    ['release with the right hand only', two, [check({ releasesWithLeftHand: false })], 1],
    ['release with the left hand only', two, [check({ releasesWithRightHand: false })], 1],
    ['feeling not intact', two, [check({ feelingIntact: false })], 1],
    ['does not know what to do when the phone stops', two, [check({ knowsToRelease: false })], 1],
    ['a check of the other leg', two, [check({ side: 'left' })], 3],
    ['the newest check counts: worse later', two, [check(), check({ feelingIntact: false })], 1],
    ['the newest check counts: better later', two, [check({ feelingIntact: false }), check()], 0],
  ])('%s: %i reasons', (_name, observed, checks, _reasons) => {
    const facts = { observed, checks };
    expect(ineligibleAtHome(facts, leg, false)).toHaveLength(_reasons as number);
    const met = homeConditionsOf(facts, leg);
    expect(met === null).toBe(
      observed.filter((row) => row.side === 'right').length === 0 &&
        checks.every((row) => row.side !== 'right'),
    );
  });

  it('an elastic wrap stays closed until a clinician opens it for this limb', () => {
    expect(ineligibleAtHome({ observed: two, checks: [check()] }, leg, true)).toHaveLength(1);
    expect(ineligibleAtHome({ observed: two, checks: [check({ wrapOpened: true })] }, leg, true)).toEqual([]);
    expect(
      ineligibleAtHome(
        { observed: two, checks: [check({ wrapOpened: true })] },
        { limb: 'arm', side: 'right' },
        true,
      ),
    ).toHaveLength(1);
  });
});

describe('an appointment at a distance', () => {
  const remote = { place: 'video', callBackPhone: '020' } as const;

  it.each([
    ['limb-occlusion-pressure', true],
    ['ankle-brachial-index', true],
    ['limb-circumference', true],
    ['isometric-force', true],
    ['effusion-test', true],
    ['home-check', true],
    ['blood-pressure', false],
    ['body-mass', false],
    ['repetitions-to-failure', false],
  ] as const)('%s is locked: %s', (test, isLocked) => {
    expect(lockedTest(remote, test).length > 0).toBe(isLocked);
    expect(lockedTest({ ...remote, place: 'clinic' }, test)).toEqual([]);
    expect(lockedTest(null, test)).toEqual([]);
  });

  it('names where the patient is and a number to ring; at the clinic neither is asked', () => {
    const empty = { whereabouts: null, callBackPhone: null };
    expect(visitRefusals({ place: 'telephone', ...empty }).map(({ field }) => field)).toEqual([
      'input.whereabouts',
      'input.callBackPhone',
    ]);
    expect(visitRefusals({ place: 'clinic', ...empty })).toEqual([]);
    expect(visitRefusals({ place: 'video', whereabouts: 'At home', callBackPhone: '020' })).toEqual([]);
  });

  it('a first session with a cuff is not remote unless a clinician says why; the second may be', () => {
    expect(firstOcclusionRemote(remote, 0, null)).toHaveLength(1);
    expect(firstOcclusionRemote(remote, 0, '   ')).toHaveLength(1);
    expect(firstOcclusionRemote(remote, 0, 'Island, nurse beside her.')).toEqual([]);
    expect(firstOcclusionRemote(remote, 1, null)).toEqual([]);
    expect(firstOcclusionRemote(null, 0, null)).toEqual([]);
  });
});
