/** The pain that is all right in a session, as it travels with the day: the number the rules use. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import { painLookup } from '#core/decision/pain-lookup.ts';
import type { Baseline } from '#core/record/record.ts';
import { baseline, judgedMorning, knee, noonOf, record } from '../small-record.ts';

const limitWith = (baselines: readonly Baseline[]) => {
  const whole = record({ baselines });
  const at = noonOf(judgedMorning);
  return {
    told: painLookup(whole, knee, at).acceptablePainLimit,
    used: factsFor(whole, knee, at).painCeiling,
  };
};

describe('the acceptable pain limit told to a patient', () => {
  it.each([5, 6, 7])('is the %i of the baseline, as the rules use it', (acceptablePainLimit) => {
    expect(limitWith([baseline({ acceptablePainLimit })])).toEqual({
      told: acceptablePainLimit,
      used: acceptablePainLimit,
    });
  });

  it('is the number the rules use where no baseline is set', () => {
    expect(limitWith([])).toEqual({ told: 5, used: 5 });
  });
});
