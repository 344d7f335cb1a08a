import { describe, expect, it } from 'vitest';
import { type ChoiceFor, type ChoiceSearch, exerciseChoice } from '#core/prescribing/exercise-choice.ts';
import { proposePrescription } from '#core/prescribing/propose.ts';
import { chinDraw, closed, known, limit, tested } from './known-patient.ts';

const any: ChoiceSearch = { words: '', isAtHome: false };
const choose = (search: Partial<ChoiceSearch>, who: ChoiceFor = known()) =>
  exerciseChoice(who, { ...any, ...search });
const one = (id: string, search: Partial<ChoiceSearch>, who?: ChoiceFor) =>
  choose(search, who).find(({ exerciseId }) => exerciseId === id);

const kneeExtension = 'knee-extension-seated';
const rightLowLoad = { method: 'low-load', joint: 'right-knee' } as const;

describe('what may be chosen', () => {
  it('is what a dose is proposed for, method by method and side by side, and nothing else', () => {
    const who = known();
    const ways = choose({}, who).flatMap(({ exerciseId, possible, notPossible }) => [
      ...possible.map((way) => ({ ...way, exerciseId, isPossible: true })),
      ...notPossible.map((way) => ({ ...way, exerciseId, isPossible: false })),
    ]);
    const proposed = ways.filter(({ method }) => method !== 'occlusion');
    expect(proposed.length).toBeGreaterThan(100);
    for (const { exerciseId, method, side, isPossible } of proposed)
      expect(
        proposePrescription(who.context, { exerciseId, side, method: method as 'low-load' }).ok,
        `${exerciseId} ${method} ${side}`,
      ).toBe(isPossible);
  });

  it('says in the words of the proposal that nothing was measured, and that it can be given', () => {
    const { context } = known();
    const untested = one(kneeExtension, rightLowLoad, known({ context: { ...context, measurements: [] } }));
    expect(untested?.possible).toEqual([]);
    expect(untested?.notPossible).toMatchObject([{ method: 'low-load', side: 'right', isMissing: true }]);
    expect(untested?.notPossible[0]?.reasons[0]).toMatch(/repetitions to failure for this exercise and side/);
  });

  it('says that no load is owned', () => {
    const { context } = known();
    const found = one(kneeExtension, rightLowLoad, known({ context: { ...context, ownedLoadsKg: [] } }));
    expect(found?.notPossible[0]?.reasons[0]).toMatch(/loads the patient owns/);
  });

  it('says the finding where screening closes a method, and leaves the other methods open', () => {
    const { context } = known();
    const outcomes = context.outcomes.map((row) => (row.method === 'low-load' ? closed(row) : row));
    const found = one(kneeExtension, { joint: 'right-knee' }, known({ context: { ...context, outcomes } }));
    const lowLoad = found?.notPossible.find(({ method }) => method === 'low-load');
    expect(lowLoad?.reasons).toEqual(['This method is not available here: Told of a clot.']);
    expect(lowLoad?.isMissing).toBe(false);
    expect(found?.possible.map(({ method }) => method)).toContain('variation');
  });

  it('says the limit that closes an exercise, whichever method', () => {
    const { context } = known();
    const limits = [limit({ kind: 'weight-bearing', joint: 'right-knee' })];
    const found = choose({ joint: 'right-knee' }, known({ context: { ...context, limits } }));
    const standing = found.find(({ exerciseId }) => exerciseId === 'knee-bend-standing');
    expect(standing?.possible).toEqual([]);
    expect(standing?.notPossible.map(({ method }) => method)).toEqual(['variation', 'low-load', 'occlusion']);
    for (const { reasons } of standing!.notPossible)
      expect(reasons.join(' ')).toMatch(/weight-bearing limit/);
  });

  it('says what is not at home only where that was asked', () => {
    const who = known({ ownedEquipment: ['firm chair'] });
    expect(one(kneeExtension, rightLowLoad, who)?.possible).toHaveLength(1);
    const atHome = one(kneeExtension, { ...rightLowLoad, isAtHome: true }, who);
    expect(atHome?.notPossible[0]?.reasons).toEqual(['Not at home as recorded: ankle weight.']);
    const owned = known({ ownedEquipment: ['firm chair', 'ankle weight'] });
    expect(one(kneeExtension, { ...rightLowLoad, isAtHome: true }, owned)?.possible).toHaveLength(1);
  });

  it('keeps to the method asked for', () => {
    const methods = choose({ method: 'variation' }).flatMap(({ possible, notPossible }) =>
      [...possible, ...notPossible].map(({ method }) => method),
    );
    expect(new Set(methods)).toEqual(new Set(['variation']));
  });
});

describe('the order of choices', () => {
  const orderOf = (who: ChoiceFor, search: Partial<ChoiceSearch> = {}) =>
    choose(search, who).map(({ possible }) => possible.length > 0);

  it('puts all that is possible before all that is not', () => {
    const order = orderOf(known(), { method: 'low-load' });
    expect(order).toContain(true);
    expect(order).toContain(false);
    expect(order.toSorted((a, b) => Number(b) - Number(a))).toEqual(order);
  });

  it('puts first what is in force, then what is about a followed joint', () => {
    const { context } = known();
    const inForce = [chinDraw];
    const who = known({ context: { ...context, inForce }, followedJoints: ['right-elbow'] });
    const [first, second, third] = choose({ method: 'variation' }, who);
    expect(first).toMatchObject({ exerciseId: 'chin-draw', isInForce: true });
    expect([second, third].map((row) => row?.isInForce)).toEqual([false, false]);
    const followed = choose({ method: 'variation', joint: 'right-elbow' }, who).map(
      ({ exerciseId }) => exerciseId,
    );
    expect(followed).toContain(second?.exerciseId);
    expect(followed).toContain(third?.exerciseId);
  });
});

it('a test of the other side opens nothing on this one', () => {
  const { context } = known();
  const measurements = context.measurements.map((row) => tested(row, 'left'));
  const found = one(kneeExtension, rightLowLoad, known({ context: { ...context, measurements } }));
  expect(found?.possible).toEqual([]);
});
