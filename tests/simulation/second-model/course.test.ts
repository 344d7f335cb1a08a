/** A course of the second model: the same people for every arm, and no arm is told more than a clinic is. */
import { describe, expect, it } from 'vitest';
import { engineDefaults } from '#core/decision/settings.ts';
import { secondModel, secondPeople } from '#simulation/second-model/model.ts';
import { secondTypes } from '#simulation/second-model/people.ts';
import { newTissue } from '#simulation/second-model/tissue.ts';
import { armsWith } from '#simulation/trial/arms.ts';
import { personTypes } from '#simulation/trial/person-types.ts';
import { trialRows } from '#simulation/trial/trial.ts';
import { dose, easier, follow, mean, nothing, onlooker } from './people.ts';

const small = { people: 4, weeks: 6 };
const trial = { people: 3, weeks: [4], seed: 9, law: 'first', slope: 1 } as const;
const arm = (id: string) => armsWith(engineDefaults).find((one) => one.id === id)!;
const flare = { days: 3, height: 2.5 };

describe('the second model', () => {
  it('has the types of the first, in their order', () => {
    expect(secondTypes.map(({ id }) => id)).toEqual(personTypes.map(({ id }) => id));
  });

  it('refuses a type it does not have', () => {
    expect(() => secondPeople('nobody', { people: 1, weeks: [1], seed: 1 })).toThrow(
      /no type of people "nobody"/,
    );
  });

  it('gives the same rows for the same seed and others for another', () => {
    const rows = trialRows(arm('version-2'), trial, secondModel);
    expect(trialRows(arm('version-2'), trial, secondModel)).toEqual(rows);
    expect(trialRows(arm('version-2'), { ...trial, seed: 10 }, secondModel)).not.toEqual(rows);
  });

  it('draws a person the same however many are drawn and however long', () => {
    const one = secondPeople('eager', { people: 1, weeks: [2], seed: 8 })[0]!;
    const many = secondPeople('eager', { people: 5, weeks: [2, 20], seed: 8 })[0]!;
    expect({ ...many, days: many.days.slice(0, 14) }).toEqual(one);
  });

  it('lets the same flares by themselves befall a person whatever is done', () => {
    const flaresUnder = (given: typeof dose | null) =>
      follow('flaring', { ...small, given }).map(({ days }) => days.map(({ isFlare }) => isFlare));
    const heavy = { ...dose, sets: 8 };
    expect(flaresUnder(heavy)).toEqual(flaresUnder(null));
  });

  it('lifts nothing heavier than the most a person can, and gains nothing by it', () => {
    const { seen, days } = follow('steady', { people: 1, weeks: 2, given: { ...dose, loadKg: 200 } })[0]!;
    expect(new Set(seen.sessions.flatMap(({ sets }) => sets.map((set) => set.repetitions)))).toEqual(
      new Set([0]),
    );
    expect(days.at(-1)!.strength).toBe(1);
  });

  it('leaves nothing that is not a finite number, however heavy the work', () => {
    const days = follow('fragile', {
      ...small,
      given: { ...dose, sets: 10, repetitions: { low: 20, high: 30 } },
    });
    for (const { rise, level, irritation, strength } of days.flatMap((one) => one.days))
      expect([rise, level, irritation, strength].every(Number.isFinite)).toBe(true);
  });
});

describe('an arm on the second model', () => {
  it('is told the usual pain in whole points and whether the disease is inflammatory, and no more', () => {
    for (const { seen, person } of [...follow('steady', small), ...follow('inflammatory', small)])
      expect(seen.told).toEqual([
        { usualPain: Math.round(person.usualPain), inflammatory: person.type.id === 'inflammatory' },
      ]);
  });

  it('is called in the order of the day, a look after the morning, on Mondays, a session after it was planned', () => {
    const { calls } = follow('steady', { people: 1, weeks: 3, given: dose })[0]!.seen;
    const order = ['morning', 'look', 'planned', 'session'];
    const at = calls.map((call) => ({
      day: Number(call.split(' ')[1]),
      step: order.indexOf(call.split(' ')[0]!),
    }));
    expect(at).toEqual([...at].sort((a, b) => a.day - b.day || a.step - b.step));
    expect(calls.filter((call) => call.startsWith('morning'))).toHaveLength(21);
    expect(calls.filter((call) => call.startsWith('planned'))).toHaveLength(9);
    expect(calls.filter((call) => call.startsWith('look'))).toHaveLength(2);
  });

  it('gets whole ratings 0–10 or none, and the sets as done', () => {
    const seen = follow('eager', { people: 20, weeks: 6, given: dose }).map((one) => one.seen);
    const ratings = seen.flatMap(({ mornings, sessions }) => [
      ...mornings.map((entry) => entry?.joints[0]?.pain),
      ...sessions.flatMap(({ joints }) => [
        joints[0]!.painBefore,
        joints[0]!.painDuring,
        joints[0]!.painAfter,
      ]),
    ]);
    for (const rating of ratings.filter((one) => typeof one === 'number'))
      expect([Number.isInteger(rating), rating >= 0, rating <= 10]).toEqual([true, true, true]);
    expect(ratings).toContain(null);
    const sets = seen.flatMap(({ sessions }) =>
      sessions.filter(({ kind }) => kind === 'full').map((one) => one.sets.length),
    );
    // An extra set of those who overdo is in the record, whether or not they say so.
    expect([...new Set(sets)].sort()).toEqual([3, 4]);
  });

  it('is not told what stands behind the answers: a dose twice as large changes no morning before it is done', () => {
    const mornings = (given: typeof dose) =>
      follow('steady', { people: 3, weeks: 1, given }).map(({ seen }) => seen.mornings[0]);
    expect(mornings({ ...dose, sets: 6 })).toEqual(mornings(dose));
  });

  it('that talks about overdoing makes it rarer', () => {
    const extra = (talks: boolean) =>
      mean(
        follow('eager', { people: 40, weeks: 12, given: dose, talks }).flatMap(({ seen }) =>
          seen.sessions.map(({ didExtra }) => (didExtra ? 1 : 0)),
        ),
      );
    expect(extra(true)).toBeLessThan(0.6 * extra(false));
  });

  it('that may see the joint is told more stimulus and more pain for a larger dose, and nothing under 0', () => {
    const { joints } = follow('steady', { people: 1, weeks: 1, given: easier })[0]!.seen;
    const of = (sets: number) => joints[0]!.outlook({ ...dose, sets });
    expect(of(8).stimulus).toBeGreaterThan(of(3).stimulus);
    expect(of(8).overload).toBeGreaterThan(of(3).overload);
    expect(of(1).overload).toBe(0);
  });

  it('that stops a session leaves it undone', () => {
    const { days, seen } = follow('steady', { people: 1, weeks: 2 })[0]!;
    expect(seen.sessions).toEqual([]);
    expect(days.some(({ session }) => session === 'stopped')).toBe(true);
    expect(days.at(-1)!.strength).toBe(1);
    expect(
      onlooker(() => null, nothing())
        .treat({ usualPain: 3, inflammatory: false })
        .dose(),
    ).toEqual(dose);
  });
});

describe('the joint of the second model', () => {
  const nights = (joint: ReturnType<typeof newTissue>, count: number, at = 1): readonly number[] =>
    Array.from({ length: count }, () => {
      joint.night(flare, at);
      return joint.points();
    });

  it('is at its worst the morning after, is still sore the next and has nearly forgotten in a week', () => {
    const joint = newTissue(1, 0.55);
    joint.bear(1);
    const mornings = nights(joint, 7);
    expect(mornings[0]).toBe(Math.max(...mornings));
    expect(mornings[1]).toBeGreaterThan(0.5 * mornings[0]!);
    expect(mornings[6]).toBeLessThan(0.1);
  });

  it('bears more after weeks of work, and less again after months without', () => {
    const joint = newTissue(1, 0.55);
    const before = joint.share(1, 0);
    for (let session = 0; session < 24; session++) {
      joint.bear(0.7);
      nights(joint, 2);
    }
    nights(joint, 14);
    const trained = joint.share(1, 0);
    expect(trained).toBeLessThan(0.8 * before);
    nights(joint, 180);
    expect(joint.share(1, 0)).toBeGreaterThan(trained);
  });

  it('is more easily irritated while it is sore or in a flare', () => {
    const joint = newTissue(1, 0.55);
    expect(joint.share(1, 3)).toBeGreaterThan(joint.share(1, 0));
  });

  it('flares by load the likelier the more strain has gathered, and never without any', () => {
    const rested = newTissue(1, 0.55);
    expect([rested.chanceOfFlare(), nights(rested, 5, 0)]).toEqual([0, [0, 0, 0, 0, 0]]);
    const once = newTissue(1, 0.55);
    once.bear(1);
    const often = newTissue(1, 0.55);
    for (let session = 0; session < 6; session++) often.bear(1);
    expect(often.chanceOfFlare()).toBeGreaterThan(6 * once.chanceOfFlare());
    nights(often, 1, 0);
    expect(often.isLoadFlare()).toBe(true);
    nights(often, 3);
    expect(often.isLoadFlare()).toBe(false);
  });
});
