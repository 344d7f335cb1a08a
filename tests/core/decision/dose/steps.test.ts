/** One step up, at its edges. Figures worked by hand. */
import { describe, expect, it } from 'vitest';
import { limitsInForce } from '#core/decision/dose/limits.ts';
import { type StepContext, stepLowLoad, stepOcclusion, stepVariation } from '#core/decision/dose/steps.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { occlusion, variation } from '../propose.ts';
import { judgedMorning, knee, kneeDose } from '../small-record.ts';

const harder = { exerciseId: 'table-push', effectiveLoadKg: 22, stepPercent: 10, equipmentOwned: true };

const context = (changed: Partial<StepContext> = {}): StepContext => ({
  largestStep: 'load',
  settings: engineDefaults,
  loadsKg: [9, 10, 11, 12],
  limits: [],
  ladder: { easier: () => null, harder: () => harder },
  signed: kneeDose,
  ...changed,
});

const upTo = (limitKg: number) =>
  limitsInForce(
    [
      {
        joint: knee,
        kind: 'load-limit',
        limitKg,
        from: addDays(judgedMorning, -9),
        to: null,
        author: 'surgeon',
      },
    ],
    [knee],
    dayNumber(judgedMorning),
  );

const bandOf = (low: number, high: number, changed: Partial<StepContext> = {}) =>
  stepLowLoad({ ...kneeDose, repetitions: { low, high } }, context(changed));

describe('more repetitions', () => {
  it('are two more at the floor, up to the top of the signed band', () => {
    expect([15, 17, 18, 19].map((low) => bandOf(low, 20).dose)).toMatchObject(
      [17, 19, 20, 20].map((low) => ({ repetitions: { low, high: 20 }, loadKg: 10 })),
    );
  });

  it('lead a band that a cut lowered back up with its top, never over the signed one', () => {
    expect(bandOf(11, 15).dose).toMatchObject({ repetitions: { low: 13, high: 17 } });
    expect(bandOf(15, 19).dose).toMatchObject({ repetitions: { low: 17, high: 20 } });
    expect(bandOf(15, 25).dose).toMatchObject({ repetitions: { low: 17, high: 25 } });
  });

  it('are used up where the floor is at the top: then a load, and the floor starts again, never higher', () => {
    expect(bandOf(20, 20)).toMatchObject({
      kind: 'step',
      dose: { loadKg: 11, repetitions: { low: 15, high: 20 } },
    });
    expect(bandOf(21, 20)).toMatchObject({ dose: { loadKg: 11 } });
    const signed = { ...kneeDose, repetitions: { low: 25, high: 20 } };
    expect(bandOf(20, 20, { signed }).dose).toMatchObject({ repetitions: { low: 20, high: 20 } });
  });
});

describe('more load', () => {
  const atTop = (changed: Partial<StepContext>, oneRepMaxKg: number | null = 30) =>
    stepLowLoad({ ...kneeDose, oneRepMaxKg, repetitions: { low: 20, high: 20 } }, context(changed));

  it('up to a limit that stands, and not over it', () => {
    expect(atTop({ limits: upTo(11) }).dose).toMatchObject({ loadKg: 11 });
    const kept = { ...kneeDose, sets: 4, repetitions: { low: 20, high: 20 } };
    expect(stepLowLoad(kept, context({ limits: upTo(10.9) }))).toMatchObject({
      kind: 'same',
      worklist: ['limit-stands-in-the-way'],
    });
  });

  it('is a set first where the load is further than 10 % off, while there are fewer than four', () => {
    expect(atTop({ loadsKg: [10, 11] }).dose).toMatchObject({ loadKg: 11, sets: 3 });
    expect(atTop({ loadsKg: [10, 11.001] }).dose).toMatchObject({ loadKg: 10, sets: 4 });
  });

  it('is not bound by a maximum that nobody measured', () => {
    expect(atTop({ loadsKg: [10, 11] }, null).dose).toMatchObject({ loadKg: 11 });
    expect(atTop({ loadsKg: [10, 11] }, 21).dose).toMatchObject({ loadKg: 10, sets: 4 });
  });
});

describe('a harder variation', () => {
  const top = { ...variation, repetitions: { low: 15, high: 15 } };
  const at = (changed: object, more: Partial<StepContext> = {}) =>
    stepVariation(
      top,
      context({
        signed: { ...variation, repetitions: { low: 10, high: 15 } },
        ladder: { easier: () => null, harder: () => ({ ...harder, ...changed }) },
        ...more,
      }),
    );

  it('starts at the foot of the signed band, with the load of the harder one', () => {
    expect(at({})).toEqual({
      kind: 'step',
      dose: {
        ...top,
        exerciseId: 'table-push',
        effectiveLoadKg: 22,
        repetitions: { low: 10, high: 15 },
      },
      named: ['repetitions-start-again'],
    });
  });

  it('is named where it is over 10 %, and at 10 % is not', () => {
    expect(
      [9.9, 10, 10.1].map((stepPercent) => at({ stepPercent }).named?.includes('over-ten-percent')),
    ).toEqual([false, false, true]);
    expect(at({ stepPercent: null }).named).toEqual(['step-size-unknown', 'repetitions-start-again']);
  });

  it('comes after the repetitions, and not where only those may rise', () => {
    const lower = { ...top, repetitions: { low: 14, high: 15 } };
    expect(stepVariation(lower, context({ signed: variation })).dose).toMatchObject({
      exerciseId: 'wall-push',
      repetitions: { low: 15, high: 15 },
    });
    expect(at({}, { largestStep: 'repetitions' })).toMatchObject({ kind: 'same', worklist: [] });
  });

  it('keeps the side where the harder one works both in turn, and is not taken without its equipment', () => {
    expect(at({ side: undefined }).dose.side).toBe('both');
    expect(at({ equipmentOwned: false }).kind).toBe('same');
  });
});

describe('more of a cuff scheme', () => {
  const target = [30, 15, 15, 15];
  const at = (scheme: readonly number[], changed: Partial<StepContext> = {}, more = {}) =>
    stepOcclusion(
      { ...occlusion, scheme, sets: scheme.length, ...more },
      target,
      context({ signed: occlusion, ...changed }),
    );

  it('fills the first set that lags, two at a time and not over the scheme', () => {
    expect(at([27, 15, 15, 15]).dose).toMatchObject({ scheme: [29, 15, 15, 15] });
    expect(at([29, 15, 15, 15]).dose).toMatchObject({ scheme: [30, 15, 15, 15] });
    expect(at([30, 14, 13, 15]).dose).toMatchObject({ scheme: [30, 15, 13, 15] });
    expect(at([30, 15, 15, 15, 3]).dose).toMatchObject({ loadKg: 11 });
  });

  it('adds a set only where the sets there are whole, and only where more than repetitions may rise', () => {
    expect(at([30, 15]).dose).toMatchObject({ scheme: [30, 15, 15], sets: 3, loadKg: 10 });
    expect(at([30, 15], { largestStep: 'repetitions' })).toMatchObject({ kind: 'same' });
    expect(at([28, 15], { largestStep: 'repetitions' }).dose).toMatchObject({ scheme: [30, 15] });
  });

  it('names a load further than 10 % off', () => {
    expect(at(target, { loadsKg: [10, 11] })).toMatchObject({ dose: { loadKg: 11 }, named: [] });
    expect(at(target, { loadsKg: [10, 11.1] })).toMatchObject({
      dose: { loadKg: 11.1 },
      named: ['over-ten-percent'],
    });
  });

  it('adds no set that lasts longer than the time allowed, and takes a load instead', () => {
    // 45 repetitions of 4 s and two rests of 30 s are 240 s; with the third set 60 repetitions: 300 s.
    expect(at([30, 15], {}, { capSeconds: 300 }).dose).toMatchObject({ sets: 3 });
    expect(at([30, 15], {}, { capSeconds: 299 }).dose).toMatchObject({ sets: 2, loadKg: 11 });
  });
});

describe('the top of the range of loads', () => {
  const low = { ...kneeDose, repetitions: { low: 20, high: 20 } };

  it('of low load is half of the maximum: 11 of 22 kg, and not of 21.9', () => {
    const at = (oneRepMaxKg: number) => stepLowLoad({ ...low, oneRepMaxKg }, context()).dose;
    expect([22, 21.9].map(at)).toMatchObject([
      { loadKg: 11, sets: 3 },
      { loadKg: 10, sets: 4 },
    ]);
  });

  // 20 to 40 % of the maximum: Patterson et al. 2019, Front Physiol 10:533, table 1 (from memory).
  it('under a cuff is 40 % of the maximum: 11 of 27.5 kg, and not of 27.4', () => {
    const at = (oneRepMaxKg: number | null) =>
      stepOcclusion({ ...occlusion, oneRepMaxKg }, occlusion.scheme, context({ signed: occlusion }));
    expect(at(27.5)).toMatchObject({ kind: 'step', dose: { loadKg: 11 } });
    expect(at(27.4)).toMatchObject({ kind: 'same', worklist: ['nothing-left-to-step'] });
    expect(at(null)).toMatchObject({ kind: 'same', worklist: ['one-rep-max-missing'] });
  });

  it('further than 10 % off is taken by name once there are four sets', () => {
    const at = (sets: number) => stepLowLoad({ ...low, sets }, context({ loadsKg: [10, 12] }));
    expect(at(3)).toMatchObject({ dose: { loadKg: 10, sets: 4 } });
    expect(at(4)).toMatchObject({
      dose: { loadKg: 12, sets: 4 },
      named: ['over-ten-percent', 'repetitions-start-again'],
    });
  });
});

it('a cuff scheme longer than the signed one is not shortened, nor filled up', () => {
  const dose = { ...occlusion, scheme: [30, 15, 1], sets: 3 };
  expect(stepOcclusion(dose, [30, 15], context({ signed: occlusion })).dose).toMatchObject({
    scheme: [30, 15, 1],
    loadKg: 11,
  });
});
