/** Half of the way back, the dose it leads to, and the dose under half of which no cut goes. Figures worked by hand. */
import { describe, expect, it } from 'vitest';
import { floorDose, halfWayTo, returnStep, type ToleratedDose } from '#core/decision/dose/way-back.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { occlusion, variation } from '../propose.ts';
import { kneeDose } from '../small-record.ts';

const owned = [7, 8, 9, 10, 11, 12];
const few = { ...kneeDose, repetitions: { low: 10, high: 14 } };

describe('half of the way back', () => {
  it('is rounded up, so that it arrives', () => {
    const back = (low: number) => halfWayTo({ ...kneeDose, repetitions: { low, high: 20 } }, kneeDose, owned);
    expect([11, 12, 13, 14].map((low) => back(low))).toMatchObject(
      [13, 14, 14, 15].map((low) => ({ repetitions: { low } })),
    );
  });

  it('never takes anything away that the present dose asks for', () => {
    const many = { ...few, sets: 5, repetitions: { low: 10, high: 30 } };
    expect(halfWayTo(many, kneeDose, owned)).toMatchObject({ sets: 5, repetitions: { low: 13, high: 30 } });
  });

  it('brings back a set where only sets are fewer', () => {
    expect(halfWayTo({ ...kneeDose, sets: 2 }, kneeDose, owned)).toEqual(kneeDose);
    expect(halfWayTo({ ...kneeDose, sets: 1 }, { ...kneeDose, sets: 4 }, owned)).toMatchObject({ sets: 3 });
  });

  it('where repetitions and sets are back leads nowhere at an equal load, nor at a lighter one', () => {
    expect(halfWayTo(kneeDose, kneeDose, owned)).toBeNull();
    expect(halfWayTo(kneeDose, { ...kneeDose, loadKg: 9 }, owned)).toBeNull();
    expect(halfWayTo(kneeDose, { ...kneeDose, loadKg: 11 }, owned)).toMatchObject({ loadKg: 11 });
  });

  it('takes the heaviest load owned up to the middle, otherwise the load itself, and only one that is owned', () => {
    const at = (loads: readonly number[]) =>
      halfWayTo({ ...kneeDose, loadKg: 8 }, { ...kneeDose, loadKg: 12 }, loads);
    expect(at([8, 9, 10, 11, 12])).toMatchObject({ loadKg: 10 });
    expect(at([8, 9, 10.5, 12])).toMatchObject({ loadKg: 9 });
    expect(at([8, 10.5, 12])).toMatchObject({ loadKg: 12 });
    expect(at([8, 10.5])).toBeNull();
  });

  it('goes set by set to a cuff scheme, and then in load', () => {
    const back = (scheme: readonly number[], loadKg = 10) =>
      halfWayTo({ ...occlusion, scheme, sets: scheme.length, loadKg }, occlusion, owned);
    expect(back([10, 15, 15, 15])).toMatchObject({ scheme: [15, 15, 15, 15], sets: 4 });
    expect(back([20, 15])).toMatchObject({ scheme: [20, 15, 8], sets: 3 });
    expect(back([20, 15, 15])).toMatchObject({ scheme: [20, 15, 15, 8], sets: 4 });
    expect(back([20, 15, 15, 15])).toBeNull();
    expect(back([20, 15, 15, 15], 8)).toMatchObject({ scheme: [20, 15, 15, 15], loadKg: 9 });
    // A fifth set of its own is kept.
    expect(back([10, 15, 15, 15, 5])).toMatchObject({ scheme: [15, 15, 15, 15, 5], sets: 5 });
  });

  it('of a variation is in repetitions alone, at the same added load', () => {
    const less = { ...variation, repetitions: { low: 9, high: 9 } };
    expect(halfWayTo(less, variation, owned)).toMatchObject({ repetitions: { low: 12, high: 12 } });
    expect(halfWayTo(variation, variation, owned)).toBeNull();
    expect(halfWayTo(less, { ...variation, addedKg: 2 }, owned)).toBeNull();
    expect(halfWayTo(less, { ...variation, exerciseId: 'another' }, owned)).toBeNull();
    expect(halfWayTo({ ...variation, exerciseId: kneeDose.exerciseId }, kneeDose, owned)).toBeNull();
  });
});

describe('where the way back leads', () => {
  const at = (tolerated: readonly ToleratedDose[], lastCutDay: number | null = 95) =>
    returnStep(few, tolerated, 100, lastCutDay, owned, engineDefaults);

  it('is a dose tolerated on the day of the last cut or before it; without a cut nowhere', () => {
    const back = [94, 95, 96].map((day) => at([{ dose: kneeDose, day }])?.kind);
    expect(back).toEqual(['return', 'return', undefined]);
    expect(at([{ dose: kneeDose, day: 94 }], null)).toBeNull();
  });

  it('is one of the last 28 days', () => {
    const back = [71, 72, 73].map((day) => at([{ dose: kneeDose, day }])?.kind);
    expect(back).toEqual([undefined, 'return', 'return']);
  });

  it('is one that asks for more than the present dose', () => {
    expect(at([{ dose: few, day: 90 }])).toBeNull();
    expect(at([{ dose: { ...few, sets: 2 }, day: 90 }])).toBeNull();
    expect(at([{ dose: { ...kneeDose, exerciseId: 'another', loadKg: 40 }, day: 90 }])).toBeNull();
  });

  it('is the latest of them', () => {
    const older = { dose: { ...kneeDose, repetitions: { low: 30, high: 30 } }, day: 80 };
    const newer = { dose: kneeDose, day: 90 };
    for (const tolerated of [
      [older, newer],
      [newer, older],
    ])
      expect(at(tolerated)?.dose).toMatchObject({ repetitions: { low: 13, high: 17 } });
  });
});

describe('the dose under half of which no cut goes', () => {
  const most = { ...kneeDose, sets: 4 };
  const tolerated = [
    { dose: few, day: 99 },
    { dose: most, day: 72 },
    { dose: kneeDose, day: 90 },
    { dose: { ...most, sets: 9 }, day: 71 },
  ];
  const at = (list: readonly ToleratedDose[], settings = {}) =>
    floorDose(list, kneeDose, most, 100, { ...engineDefaults, ...settings });

  it('is the most that was tolerated in the last 28 days, in whatever order it is listed', () => {
    expect(at(tolerated)).toBe(most);
    expect(at([...tolerated].reverse())).toBe(most);
  });

  it('is the last one tolerated in version 1', () => {
    expect(at(tolerated, { 'engine-version': 1 })).toBe(few);
    expect(at([...tolerated].reverse(), { 'engine-version': 1 })).toBe(few);
  });

  it('is the dose last signed where none was tolerated lately', () => {
    expect(at([])).toBe(most);
    expect(at([], { 'engine-version': 1 })).toBe(most);
    expect(at([{ dose: few, day: 71 }])).toBe(most);
  });

  it('is never one that cannot be compared, while another can', () => {
    const other = { dose: { ...variation, effectiveLoadKg: null }, day: 99 };
    expect(at([other, { dose: few, day: 90 }])).toBe(few);
    expect(at([{ dose: few, day: 90 }, other])).toBe(few);
  });
});

describe('a tolerated dose that asks for no more than the present one', () => {
  it('is passed over, though it is later than one that does', () => {
    const present = { ...kneeDose, repetitions: { low: 10, high: 14 } };
    const more = { dose: kneeDose, day: 80 };
    const back = (dose: typeof kneeDose) =>
      returnStep(present, [more, { dose, day: 90 }], 100, 95, owned, engineDefaults)?.dose;
    const expected = halfWayTo(present, kneeDose, owned);
    // Two sets of 15 are as much as three of 10; two of 14 are less.
    for (const low of [15, 14])
      expect(back({ ...kneeDose, sets: 2, repetitions: { low, high: 20 } })).toEqual(expected);
    expect(back({ ...kneeDose, sets: 2, repetitions: { low: 20, high: 20 } })).not.toEqual(expected);
  });
});

it('a set that comes back to a cuff scheme begins at half of it: 8 of 16', () => {
  const target = { ...occlusion, scheme: [20, 16, 16], sets: 3 };
  expect(halfWayTo({ ...occlusion, scheme: [20, 16], sets: 2 }, target, owned)).toMatchObject({
    scheme: [20, 16, 8],
  });
});
