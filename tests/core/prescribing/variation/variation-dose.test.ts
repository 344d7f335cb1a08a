import { describe, expect, it } from 'vitest';
import { exerciseById, jointsLoaded } from '#core/exercises/catalogue.ts';
import { startFit } from '#core/exercises/ladder/start-level.ts';
import { variationSettings } from '#core/prescribing/variation/settings.ts';
import { proposeVariationDose, variationExerciseIds } from '#core/prescribing/variation/variation-dose.ts';
import type { VariationDoseInput } from '#core/prescribing/variation/variation-dose-input.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';

const defaults = defaultsOf(variationSettings);
const person = { sex: 'female', massKg: 65, statureCm: 162 } as const;

const proposed = (input: Omit<VariationDoseInput, 'person'>, settings = defaults) => {
  const outcome = proposeVariationDose({ person, ...input }, settings);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refused));
  return { ...outcome.result, codes: outcome.notes.map((note) => note.code) };
};
const refusedCodes = (input: Omit<VariationDoseInput, 'person'>, settings = defaults) => {
  const outcome = proposeVariationDose({ person, ...input }, settings);
  return outcome.ok ? [] : outcome.refused.map((refusal) => `${refusal.field} ${refusal.code}`);
};
const chair = { exerciseId: 'sit-to-stand-chair', side: 'both' } as const;

describe('Dose of a variation', () => {
  it('fills what the clinician leaves out from the clinic’s choices and computes the load from the body', () => {
    const { dose } = proposed({ exerciseId: 'push-up', side: 'both' });
    expect(dose).toMatchObject({ sets: 3, repetitions: { low: 8, high: 15 }, reserve: 2, restSeconds: 90 });
    // Ebben 2011 (second-hand): 0.64 of 65 kg.
    expect(dose.effectiveLoadKg).toBeCloseTo(41.6, 9);
  });

  it('keeps what the clinician gives and says whose figure it is', () => {
    const { dose, working } = proposed({ ...chair, sets: 2, repetitionsHigh: 12 });
    expect(dose).toMatchObject({ sets: 2, repetitions: { low: 8, high: 12 } });
    expect(working.find((line) => line.text === 'Sets: 2.')?.support).toBe('clinician');
    expect(working.find((line) => line.text.startsWith('Rest'))?.support).toBe('clinic-choice');
  });

  it('names a step to the next level of more than 10 %, and is quiet about a smaller one', () => {
    expect(proposed(chair).next?.stepPercent).toBeCloseTo((1.9 / (1 + (0.9 * 18) / 21) - 1) * 100, 6);
    expect(proposed(chair).codes).toContain('step-within-window');
    expect(proposed({ exerciseId: 'sit-to-stand-raised-chair', side: 'both' }).codes).toContain(
      'step-over-window',
    );
    expect(proposed(chair, { ...defaults, 'variation-largest-step-percent': 5 }).codes).toContain(
      'step-over-window',
    );
  });

  it('calls a step that cannot be computed unknown, and the top rung the top', () => {
    expect(proposed({ exerciseId: 'knee-press-down', side: 'left' }).codes).toContain('step-unknown');
    expect(proposed({ exerciseId: 'push-up-feet-raised', side: 'both' }).codes).toContain('no-next-rung');
  });

  it('says that a start nobody tried is unproven', () => {
    expect(proposed(chair)).toMatchObject({ start: 'not-tested' });
    expect(proposed(chair).codes).toContain('start-not-tested');
  });

  it('always leaves the decision to a clinician', () => {
    expect(proposed(chair).codes).toContain('clinician-decides');
  });
});

describe('Where to start', () => {
  const band = { low: 8, high: 15 };
  it.each([
    [7, 2, 'too-hard'],
    [8, 2, 'challenging'],
    [9, 2, 'challenging'],
    [14, 2, 'challenging'],
    [15, 2, 'challenging'],
    [15, 3, 'too-easy'],
    [0, 0, 'too-hard'],
  ])('%i repetitions done with %i left are %s for 8 to 15 with 2 in reserve', (repetitions, reserve, fit) => {
    expect(startFit({ repetitions, reserve }, band, 2)).toBe(fit);
  });

  it('moves one level down when the set tried was too hard', () => {
    const { dose, codes } = proposed({ ...chair, tested: { repetitions: 4, reserve: 0 } });
    expect(dose.exerciseId).toBe('sit-to-stand-cushion');
    expect(codes).toContain('start-moved-down');
  });

  it('uses both legs when the level below needs both', () => {
    const { dose } = proposed({
      exerciseId: 'heel-raise-one-leg',
      side: 'left',
      tested: { repetitions: 2, reserve: 0 },
    });
    expect(dose).toMatchObject({ exerciseId: 'heel-raise-two-legs-weight', side: 'both' });
  });

  it('never moves up by itself when the set tried was too easy', () => {
    const { dose, codes } = proposed({ ...chair, tested: { repetitions: 20, reserve: 5 } });
    expect(dose.exerciseId).toBe('sit-to-stand-chair');
    expect(codes).toContain('start-too-easy');
  });

  it('says so when it was too hard and nothing easier is known', () => {
    const { dose, codes } = proposed({
      exerciseId: 'sit-to-stand-high-seat',
      side: 'both',
      tested: { repetitions: 1, reserve: 0 },
    });
    expect(dose.exerciseId).toBe('sit-to-stand-high-seat');
    expect(codes).toContain('start-too-hard');
  });
});

describe('Bad day of a variation', () => {
  it('is the level below where that asks nothing new', () => {
    const { badDay } = proposed(chair);
    expect(badDay).toMatchObject({
      exerciseId: 'sit-to-stand-cushion',
      sets: 3,
      repetitions: { low: 8, high: 8 },
    });
    expect(badDay.reserve).toBe(3);
  });

  it('is fewer sets of the same where the level below would load another joint or bring another caution', () => {
    // The level below is done on the knees: it presses on a joint this dose does not load.
    const { badDay } = proposed({ exerciseId: 'incline-push-up-step', side: 'both' });
    expect(badDay).toMatchObject({ exerciseId: 'incline-push-up-step', sets: 1 });
  });

  it('is never harder than the ordinary day, for every variation in the catalogue', () => {
    for (const exerciseId of variationExerciseIds) {
      const side = exerciseById(exerciseId)!.limbsAtOnce === 'both' ? 'both' : 'left';
      const { dose, badDay } = proposed({ exerciseId, side });
      expect(badDay.sets).toBeLessThanOrEqual(dose.sets);
      expect(badDay.repetitions.high).toBeLessThanOrEqual(dose.repetitions.low);
      expect(badDay.reserve).toBeGreaterThanOrEqual(dose.reserve);
      expect(badDay.effectiveLoadKg ?? 0).toBeLessThanOrEqual(
        dose.effectiveLoadKg ?? Number.POSITIVE_INFINITY,
      );
      const joints = jointsLoaded(exerciseId, side);
      expect(jointsLoaded(badDay.exerciseId, badDay.side).filter((joint) => !joints.includes(joint))).toEqual(
        [],
      );
      const cautions = exerciseById(exerciseId)!.cautions;
      expect(exerciseById(badDay.exerciseId)!.cautions.filter((id) => !cautions.includes(id))).toEqual([]);
    }
  });
});

describe('Refusals of a variation', () => {
  it('refuses an exercise that is unknown or not a variation', () => {
    expect(refusedCodes({ exerciseId: 'no-such-exercise', side: 'both' })).toEqual([
      'input.exerciseId not-listed',
    ]);
    expect(refusedCodes({ exerciseId: 'leg-press-machine', side: 'both' })).toEqual([
      'input.exerciseId inconsistent',
    ]);
  });

  it('refuses one side of an exercise of both limbs, and both sides of an exercise of one', () => {
    expect(refusedCodes({ exerciseId: 'push-up', side: 'left' })).toEqual(['input.side inconsistent']);
    expect(refusedCodes({ exerciseId: 'straight-leg-raise', side: 'both' })).toEqual([
      'input.side inconsistent',
    ]);
  });

  it('refuses a band turned round, and takes one of a single count', () => {
    expect(refusedCodes({ ...chair, repetitionsLow: 16 })).toEqual(['input.repetitionsLow inconsistent']);
    expect(refusedCodes({ ...chair, repetitionsLow: 15 })).toEqual([]);
  });

  it('refuses a clinic choice out of its bounds or missing, and ignores those of other areas', () => {
    expect(refusedCodes(chair, { ...defaults, 'variation-largest-step-percent': 10.1 })).toEqual([
      'choices.variation-largest-step-percent too-high',
    ]);
    const { 'variation-sets': _sets, ...without } = defaults;
    expect(refusedCodes(chair, without)).toEqual(['choices.variation-sets missing']);
    expect(refusedCodes(chair, { ...defaults, 'low-load-sets': 3 })).toEqual([]);
  });
});
