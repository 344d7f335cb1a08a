/** Since when a flare runs or ran until lately, over several joints and at the edges of its days. */
import { describe, expect, it } from 'vitest';
import { flareEndedSince, wasInFlare } from '#core/decision/dose/flares.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { instantOn, judgedMorning, knee, morning, noonOf, record, shoulder } from '../small-record.ts';

const today = dayNumber(judgedMorning);

/** Mornings of two weeks on which the joints flared on the days back that are named, and said no on all others. */
const flared = (days: Partial<Record<Joint, readonly number[]>>) =>
  record({
    mornings: Array.from({ length: 14 }, (_, back) => {
      const one = morning(addDays(judgedMorning, -back));
      const joints = one.joints.map((answers) => ({
        ...answers,
        flare: days[answers.joint]?.includes(back) ?? false,
      }));
      return { ...one, joints };
    }),
  });
const endedSince = (days: Partial<Record<Joint, readonly number[]>>, within: number) => {
  const began = flareEndedSince(flared(days), [knee, shoulder], today, noonOf(judgedMorning).instant, within);
  return began === null ? null : today - began;
};

describe('a flare that ended lately', () => {
  it('is found from its last day on, for as many days as are asked about', () => {
    expect([1, 2, 3, 4].map((back) => endedSince({ [knee]: [back] }, 3))).toEqual([1, 2, 3, null]);
    expect(endedSince({ [knee]: [1] }, 0)).toBeNull();
  });

  it('began on its first day, of two joints on the earlier one', () => {
    expect(endedSince({ [knee]: [2, 3, 4] }, 5)).toBe(4);
    expect(endedSince({ [knee]: [2, 3], [shoulder]: [2, 3, 4, 5] }, 5)).toBe(5);
  });

  it('is none while one runs, in whichever joint', () => {
    expect(endedSince({ [knee]: [0, 1, 2] }, 5)).toBeNull();
    expect(endedSince({ [knee]: [2, 3], [shoulder]: [0] }, 5)).toBeNull();
  });
});

describe('something was made in a flare', () => {
  const at = (day: number, hour: number) =>
    wasInFlare(flared({ [knee]: [3] }), [knee], instantOn(addDays(judgedMorning, -day), hour));

  it('from the hour it was told to the hour it was said to be over', () => {
    // Both at eight in the morning.
    expect([at(4, 23), at(3, 7), at(3, 8), at(3, 23), at(2, 7), at(2, 8)]).toEqual([
      false,
      false,
      true,
      true,
      true,
      false,
    ]);
  });

  it('told that morning far in the east, where the day begins while it is the day before elsewhere', () => {
    const recordedAt = instantOn(addDays(judgedMorning, -1), 20);
    const of = record({ mornings: [morning(judgedMorning, { flare: true }, { recordedAt })] });
    expect([recordedAt - 1, recordedAt].map((instant) => wasInFlare(of, [knee], instant))).toEqual([
      false,
      true,
    ]);
  });
});
