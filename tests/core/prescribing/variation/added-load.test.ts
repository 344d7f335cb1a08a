/** A load added to a variation: where it may be, that it is one of those owned, and that no step carries it along. */
import { describe, expect, it } from 'vitest';
import { exercisesFor } from '#core/exercises/catalogue.ts';
import { namesOwnWeight } from '#core/exercises/equipment.ts';
import { nextLevel } from '#core/exercises/ladder/ladder.ts';
import type { PrescribingContext } from '#core/prescribing/prescribing-context.ts';
import { requestOfDose } from '#core/prescribing/request-of-dose.ts';
import { addedLoadRefusals, mayAddLoad } from '#core/prescribing/variation/added-load.ts';
import { variationSettings } from '#core/prescribing/variation/settings.ts';
import { dosedVariation } from '#core/prescribing/variation/variation-for-patient.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';

const taking = exercisesFor('variation')
  .map(({ id }) => id)
  .filter(mayAddLoad);

const context = (ownedLoadsKg: readonly number[], repetitions?: number) =>
  ({
    measurements: [
      { kind: 'body-mass', day: '2026-03-02', massKg: 70 },
      { kind: 'stature', day: '2026-03-02', statureCm: 170 },
      ...(repetitions === undefined
        ? []
        : [{ kind: 'repetitions-to-failure', exerciseId: 'step-up', side: 'left', loadKg: 0, repetitions }]),
    ],
    formulaSex: 'female',
    ownedLoadsKg,
    settings: defaultsOf(variationSettings),
  }) as unknown as PrescribingContext;

const stepUp = (addedKg: number | undefined, at = context([2, 4])) =>
  dosedVariation(at, { method: 'variation', exerciseId: 'step-up', side: 'left', addedKg });

describe('where a load may be added', () => {
  it('is the hardest level of an exercise done with a weight of no fixed size, or of one the model counts', () => {
    expect(taking).toEqual(
      expect.arrayContaining(['step-up', 'heel-raise-one-leg', 'bridge-one-leg', 'overhead-press-weights']),
    );
    for (const id of ['squat-two-legs', 'squat-two-legs-weights', 'push-up', 'clam-band', 'forearm-plank'])
      expect(mayAddLoad(id), id).toBe(false);
    expect(mayAddLoad('no-such-exercise')).toBe(false);
  });

  it('is never a level from which a person could be stepped up with the load carried along', () => {
    for (const sex of ['female', 'male'] as const)
      for (const massKg of [40, 70, 140])
        for (const statureCm of [145, 170, 200])
          for (const id of taking) expect(nextLevel(id, { sex, massKg, statureCm }), id).toBeNull();
  });

  it('tells a weight of a fixed size from one left open and from none', () => {
    expect(['squat-two-legs-weights', 'overhead-press-weights', 'push-up'].map(namesOwnWeight)).toEqual([
      'fixed',
      'open',
      'none',
    ]);
  });
});

describe('a load typed for a variation', () => {
  it('is in the dose and in its easier session of the same level, and comes back as it was typed', () => {
    const outcome = stepUp(4);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.refused));
    const { dose, badDay, working } = outcome.result;
    expect(dose.addedKg).toBe(4);
    expect(badDay.addedKg).toBe(badDay.exerciseId === dose.exerciseId ? 4 : 0);
    expect(working.map(({ text }) => text)).toContain('Load added: 4 kg, typed for this patient.');
    expect(requestOfDose({ measurements: [] }, dose)).toMatchObject({ addedKg: 4 });
  });

  it('left out is none, and is left out again when the dose is written anew', () => {
    const outcome = stepUp(undefined);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.refused));
    expect(outcome.result.dose.addedKg).toBe(0);
    expect(requestOfDose({ measurements: [] }, outcome.result.dose)).not.toHaveProperty('addedKg');
  });

  it('is refused where it is not owned, with the nearest that are, to the milligram', () => {
    expect(addedLoadRefusals({ exerciseId: 'step-up', addedKg: 4 }, [2, 4])).toEqual([]);
    expect(addedLoadRefusals({ exerciseId: 'step-up', addedKg: 4.01 }, [2, 4])).toMatchObject([
      { field: 'input.addedKg', reason: expect.stringMatching(/The nearest owned: 4 kg\./) },
    ]);
    expect(addedLoadRefusals({ exerciseId: 'step-up', addedKg: 3 }, [])).toMatchObject([
      { reason: expect.stringMatching(/No load is recorded/) },
    ]);
  });

  it('is refused on a level that has a harder one, which is the step instead', () => {
    expect(addedLoadRefusals({ exerciseId: 'squat-two-legs', addedKg: 4 }, [4])).toMatchObject([
      { field: 'input.addedKg', reason: expect.stringMatching(/hardest level/) },
    ]);
  });

  it('is refused where the last test says the level is too hard already', () => {
    expect(stepUp(4, context([4], 2))).toMatchObject({
      ok: false,
      refused: [{ field: 'input.addedKg', reason: expect.stringMatching(/too hard already/) }],
    });
  });
});
