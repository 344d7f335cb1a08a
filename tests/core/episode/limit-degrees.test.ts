/** Limits on range that name degrees, and limits on weight-bearing, against the fields of the exercises. */
import { describe, expect, it } from 'vitest';
import { limitConsistent } from '#core/episode/care-fields.ts';
import { limitedExercises, limitRefusals, limitsFor } from '#core/episode/limit-bounds.ts';
import { limitCautions } from '#core/episode/limit-cautions.ts';
import { boundInWords } from '#core/episode/limit-degrees.ts';
import { exercises } from '#core/exercises/catalogue.ts';
import type { WorkedSide } from '#core/exercises/exercise.ts';
import { type Joint, joints } from '#core/exercises/joints.ts';
import type { Limit } from '#core/record/limit.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';

const today = '2026-03-20';
const bare = { limitKg: null, from: '2026-03-01', to: null, author: 'Dr Surgeon' } as const;

const rangeLimit = (
  joint: Joint,
  movement: NonNullable<Limit['movement']>,
  fromDegrees: number,
  toDegrees: number,
): Limit => ({ ...bare, joint, kind: 'range', movement, fromDegrees, toDegrees });

const closing = (limit: Limit, exerciseId: string, side: WorkedSide) =>
  limitsFor([limit], exerciseId, side, today).contraindications;
const told = (limit: Limit, exerciseId: string, side: WorkedSide) =>
  limitCautions([limit], { exerciseId, side }, today).map(({ text }) => text);

// From memory, as the catalogue has it: the knee goes through 0° to 90° of flexion.
const knee = ['knee-extension-seated', 'right'] as const;

describe('a limit on range with degrees', () => {
  it.each([
    ['ends a degree under the exercise', [0, 89], true],
    ['ends where it ends', [0, 90], false],
    ['ends a degree over', [0, 91], false],
    ['begins a degree inside it', [1, 90], true],
    ['begins where it begins', [0, 90], false],
    ['begins a degree before', [-1, 90], false],
  ] as const)('%s: %j closes it: %s', (_name, [from, to], isClosed) => {
    expect(closing(rangeLimit('right-knee', 'flexion', from, to), ...knee).length > 0).toBe(isClosed);
  });

  it.each([
    ['inside', 21, false],
    ['at', 20, false],
    ['beyond', 19, true],
  ])('also the other way: %s, %i° of the opposite movement', (_name, degrees, isClosed) => {
    // From memory: the standing leg raise to the back goes to 20° of extension.
    const limit = rangeLimit('right-hip', 'flexion', -degrees, 90);
    expect(closing(limit, 'rear-leg-raise-standing', 'right').length > 0).toBe(isClosed);
  });

  it('gives both figures, what they are worth, and who set it', () => {
    const [reason] = closing(rangeLimit('right-knee', 'flexion', 0, 60), ...knee);
    expect(reason).toMatch(/allows 0° to 60° of flexion; this exercise goes through 0° to 90° of flexion/);
    expect(reason).toMatch(/from memory, to be confirmed by a licensed clinician/);
    expect(reason).toMatch(/set by Dr Surgeon/);
  });

  it('refuses the dose whole: nothing is shortened', () => {
    const limit = rangeLimit('right-knee', 'flexion', 0, 60);
    expect(limitRefusals([limit], lowLoadDose, today)).toHaveLength(1);
    expect(limitRefusals([{ ...limit, toDegrees: 90 }], lowLoadDose, today)).toEqual([]);
  });

  it('for an exercise inside it goes along as a caution with both figures, for the clinician to judge', () => {
    const [text] = told(rangeLimit('right-knee', 'flexion', 0, 110), ...knee);
    expect(text).toMatch(/0° to 110° of flexion allowed; this exercise goes through 0° to 90° of flexion/);
    expect(text).toMatch(/the clinician judges/);
  });

  it.each([
    ['another plane', rangeLimit('right-hip', 'abduction', 0, 5), 'straight-leg-raise'],
    ['a standing leg that only holds', rangeLimit('left-knee', 'flexion', 10, 40), 'knee-bend-standing'],
    ['a joint carried at no fixed angle', rangeLimit('right-knee', 'flexion', 10, 40), 'straight-leg-raise'],
  ])('never takes what is not known to lie inside: %s', (_name, limit, exerciseId) => {
    expect(closing(limit, exerciseId, 'right')).toEqual([]);
    expect(told(limit, exerciseId, 'right').join(' ')).toMatch(/gives the exercise no degrees/);
  });

  it('of either limb closes what both limbs do together, and of one limb nothing done with the other', () => {
    const left = rangeLimit('left-knee', 'flexion', 0, 60);
    expect(closing(left, 'sit-to-stand-chair', 'both')).toHaveLength(1);
    expect(closing(left, 'knee-extension-seated', 'left')).toHaveLength(1);
    expect(closing(left, 'knee-extension-seated', 'right')).toEqual([]);
  });

  it.each([
    ['past its last day it still closes', { to: '2026-03-19' }, true],
    ['lifted it does not', { liftedOn: today }, false],
    ['without degrees it is a caution alone', { movement: null, fromDegrees: null, toDegrees: null }, false],
  ])('%s', (_name, over, isClosed) => {
    const limit = { ...rangeLimit('right-knee', 'flexion', 0, 60), ...over };
    expect(closing(limit, ...knee).length > 0).toBe(isClosed);
  });

  it('closes in the catalogue exactly the exercises whose own range goes beyond it', () => {
    const closed = limitedExercises([rangeLimit('right-knee', 'flexion', 0, 90)], today)
      .filter(({ contraindications }) => contraindications.length > 0)
      .map(({ exerciseId }) => exerciseId);
    const beyond = exercises.filter(({ range }) =>
      range.some(
        ({ joint, fromDegrees, toDegrees }) => joint === 'knee' && (fromDegrees < 0 || toDegrees > 90),
      ),
    );
    expect(beyond.length).toBeGreaterThan(0);
    expect([...new Set(closed)]).toEqual(beyond.map(({ id }) => id));
  });

  it('beside another of the same joint keeps a caution of its own', () => {
    const both = [rangeLimit('right-hip', 'flexion', 0, 120), rangeLimit('right-hip', 'abduction', 0, 20)];
    const ids = limitCautions(both, { exerciseId: 'straight-leg-raise', side: 'right' }, today).map(
      ({ id }) => id,
    );
    expect(new Set(ids).size).toBe(2);
  });

  it('is listed with its degrees; without them nothing is said of degrees', () => {
    expect(boundInWords(rangeLimit('right-knee', 'flexion', 0, 60))).toBe(', 0° to 60° of flexion allowed');
    expect(boundInWords({ ...bare, joint: 'right-knee', kind: 'range' })).toBe('');
  });
});

describe('a limit on weight-bearing', () => {
  const limbOf = (joint: Joint): readonly string[] => {
    if (joint === 'low-back') return ['arms', 'legs'];
    return /hip|knee|ankle|foot/.test(joint) ? ['legs'] : ['arms'];
  };

  it.each(joints)('of the %s closes exactly the exercises whose field names its limb', (joint) => {
    const limit: Limit = { ...bare, joint, kind: 'weight-bearing' };
    const closed = limitedExercises([limit], today)
      .filter(({ contraindications }) => contraindications.length > 0)
      .map(({ exerciseId, side }) => `${exerciseId} ${side}`);
    const bearing = exercises
      .filter(({ weightBearing }) => weightBearing.some((limb) => limbOf(joint).includes(limb)))
      .flatMap(({ id, limbsAtOnce }) =>
        limbsAtOnce === 'both' ? [`${id} both`] : [`${id} left`, `${id} right`],
      );
    expect(bearing.length).toBeGreaterThan(0);
    expect(closed).toEqual(bearing);
  });
});

describe('a load over one of two ceilings', () => {
  it('names only the ceiling it is over', () => {
    const ceiling = (limitKg: number): Limit => ({
      ...bare,
      joint: 'right-knee',
      kind: 'load-limit',
      limitKg,
    });
    const reasons = limitRefusals([ceiling(6), ceiling(2)], { ...lowLoadDose, loadKg: 4 }, today);
    expect(reasons.map(({ reason }) => reason.slice(0, 34))).toEqual(['4 kg is over the limit of 2 kg (ri']);
  });
});

describe('the form of a limit', () => {
  const row = {
    joint: 'right-knee',
    kind: 'range',
    limitKg: null,
    from: '2026-03-01',
    to: null,
    author: 'Dr Surgeon',
    remark: null,
  } as const;
  const degrees = { movement: 'flexion', fromDegrees: 0, toDegrees: 90 } as const;

  it.each([
    ['a range with degrees', degrees],
    ['a range of one angle', { ...degrees, fromDegrees: 90 }],
    ['a range into the opposite movement', { ...degrees, fromDegrees: -5 }],
    ['a range without degrees', {}],
    ['a range with all three empty', { movement: null, fromDegrees: null, toDegrees: null }],
    ['another kind without degrees', { kind: 'weight-bearing' as const }],
  ])('takes %s', (_name, over) => {
    expect(limitConsistent({ ...row, ...over })).toEqual([]);
  });

  it.each([
    ['degrees of another kind', { ...degrees, kind: 'no-impact' as const }, 'movement', /leave them out/],
    ['an angle without a movement', { fromDegrees: 0, toDegrees: 90 }, 'movement', /both angles/],
    ['a movement without angles', { movement: 'flexion' as const }, 'fromDegrees', /both angles/],
    ['one angle alone', { ...degrees, toDegrees: null }, 'fromDegrees', /both angles/],
    ['an end before the beginning', { ...degrees, fromDegrees: 91 }, 'toDegrees', /check both/],
    [
      'a movement the joint has not',
      { ...degrees, movement: 'abduction' as const },
      'movement',
      /choose one of: flexion, extension/,
    ],
    [
      'below 0 where both sides count alike',
      { ...degrees, joint: 'neck' as const, movement: 'rotation' as const, fromDegrees: -1 },
      'fromDegrees',
      /start at 0 or more/,
    ],
    ['kilograms of another kind', { limitKg: 3 }, 'limitKg', /leave them out/],
    ['a load limit without kilograms', { kind: 'load-limit' as const }, 'limitKg', /in kilograms/],
  ])('refuses %s and says how to put it right', (_name, over, field, reason) => {
    const refusals = limitConsistent({ ...row, ...over });
    expect(refusals.map((refusal) => refusal.field)).toEqual([`input.${field}`]);
    expect(refusals[0]?.reason).toMatch(reason);
  });
});
