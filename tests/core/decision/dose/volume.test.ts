/** How much a dose is against another, and what differs between two. Figures worked by hand. */
import { describe, expect, it } from 'vitest';
import { changesBetween, easierSession, shareOf, withShareOfFirst } from '#core/decision/dose/volume.ts';
import { occlusion, variation } from '../propose.ts';
import { kneeDose } from '../small-record.ts';

const named = { ...variation, exerciseId: 'another', effectiveLoadKg: 30 };
const unnamed = { ...named, effectiveLoadKg: null };

describe('a dose as a share of another', () => {
  it('is repetitions times the load moved: 3 × 15 × 10 kg against 2 × 10 × 9 kg', () => {
    const less = { ...kneeDose, sets: 2, repetitions: { low: 10, high: 20 }, loadKg: 9 };
    expect(shareOf(less, kneeDose)).toBeCloseTo((20 * 9) / (45 * 10), 12);
    expect(shareOf(kneeDose, kneeDose)).toBe(1);
    expect(shareOf({ ...occlusion, scheme: [20, 15] }, occlusion)).toBeCloseTo(35 / 65, 12);
  });

  it('adds what is added to the share of body weight moved', () => {
    expect(shareOf({ ...variation, addedKg: 5 }, variation)).toBeCloseTo(25 / 20, 12);
    expect(shareOf(named, variation)).toBeCloseTo(30 / 20, 12);
  });

  it('without a figure compares one exercise with itself, at the same added load, by repetitions', () => {
    const bare = { ...variation, effectiveLoadKg: null };
    expect(shareOf({ ...bare, sets: 2 }, bare)).toBeCloseTo(2 / 3, 12);
    expect(shareOf({ ...bare, sets: 2, addedKg: 1 }, bare)).toBeNull();
    expect(shareOf(unnamed, bare)).toBeNull();
    expect(shareOf(unnamed, variation)).toBeNull();
    expect(shareOf(named, bare)).toBeNull();
  });

  it('is not known against a dose of nothing, and a load of 0 kg is compared by repetitions', () => {
    expect(shareOf(kneeDose, { ...kneeDose, sets: 0 })).toBeNull();
    const free = { ...kneeDose, loadKg: 0 };
    expect(shareOf({ ...free, sets: 1 }, free)).toBeCloseTo(1 / 3, 12);
  });
});

describe('what differs between two doses', () => {
  it('names the level with its percent where both figures are known, and none where one is not', () => {
    expect(changesBetween(variation, named)).toEqual([
      { variable: 'rung', from: 'wall-push', to: 'another', unit: '', percent: expect.closeTo(50, 9) },
    ]);
    expect(changesBetween(variation, unnamed)[0]?.percent).toBeNull();
    expect(changesBetween(unnamed, variation)[0]?.percent).toBeNull();
  });

  it('names load, sets and repetitions, each with its percent', () => {
    const other = { ...kneeDose, loadKg: 9, sets: 2, repetitions: { low: 15, high: 18 } };
    expect(changesBetween(kneeDose, other)).toEqual([
      { variable: 'load', from: 10, to: 9, unit: 'kg', percent: expect.closeTo(-10, 9) },
      { variable: 'sets', from: 3, to: 2, unit: '1', percent: expect.closeTo(-100 / 3, 9) },
      {
        variable: 'repetitions',
        from: '15–20',
        to: '15–18',
        unit: '{rep}',
        percent: expect.closeTo(-100 / 3, 9),
      },
    ]);
  });

  it('has no percent of nothing', () => {
    expect(changesBetween(variation, { ...variation, addedKg: 1 })[0]).toMatchObject({ percent: null });
  });
});

describe('the easier session beside a dose', () => {
  it('is brought down set by set under a shorter cuff scheme, and to its load', () => {
    const badDay = { ...occlusion, scheme: [20, 15, 15], sets: 3, loadKg: 10 };
    const dose = { ...occlusion, scheme: [15, 15], sets: 2, loadKg: 9 };
    expect(easierSession(badDay, occlusion, dose, true)).toMatchObject({
      scheme: [15, 15],
      sets: 2,
      loadKg: 9,
    });
    expect(easierSession(badDay, occlusion, { ...occlusion, loadKg: 12 }, false)).toEqual(badDay);
  });

  it('is brought down in sets, band and load, and never up', () => {
    const badDay = { ...kneeDose, sets: 3, repetitions: { low: 14, high: 19 } };
    const dose = { ...kneeDose, sets: 2, repetitions: { low: 12, high: 16 }, loadKg: 9 };
    expect(easierSession(badDay, kneeDose, dose, true)).toEqual(dose);
    expect(easierSession(dose, kneeDose, badDay, false)).toEqual(dose);
    const added = { ...variation, addedKg: 4 };
    expect(easierSession(added, variation, variation, false)).toEqual(variation);
    expect(easierSession(variation, variation, added, false)).toEqual(variation);
  });

  it('in another exercise stays as it was signed', () => {
    const other = { ...kneeDose, exerciseId: 'another' };
    const less = { ...kneeDose, sets: 2, loadKg: 9 };
    expect(easierSession(other, kneeDose, less, true)).toEqual(other);
  });

  it('follows a step down to another exercise; a step up leaves it where it is signed', () => {
    expect(easierSession(variation, variation, named, true)).toEqual(named);
    expect(easierSession(variation, variation, named, false)).toEqual(variation);
    const signed = { ...named, sets: 1 };
    expect(easierSession(signed, variation, named, true)).toEqual(signed);
    expect(easierSession(signed, variation, { ...variation, sets: 1 }, true)).toEqual(signed);
  });
});

it('signed versions are told against the first of their own exercise, in whatever order they come', () => {
  const heavier = { ...kneeDose, loadKg: 12 };
  const rows = [
    { itemId: 'knee', version: 2, dose: heavier },
    { itemId: 'step', version: 1, dose: variation },
    { itemId: 'knee', version: 1, dose: kneeDose },
    { itemId: 'step', version: 2, dose: unnamed },
  ];
  const shares = withShareOfFirst(rows).map(({ itemId, version, share }) => [itemId, version, share]);
  expect(shares).toEqual([
    ['step', 1, 1],
    ['knee', 1, 1],
    ['knee', 2, 1.2],
    ['step', 2, null],
  ]);
});

describe('the smallest doses', () => {
  it('are compared like any other: one repetition, and loads of 1 kg and less', () => {
    const one = { ...kneeDose, sets: 1, repetitions: { low: 1, high: 1 } };
    expect(shareOf({ ...one, sets: 2 }, one)).toBe(2);
    const loads = [1, 0.5].map((loadKg) => shareOf(kneeDose, { ...kneeDose, loadKg }));
    expect(loads).toEqual([10, 20]);
  });

  it('have a percent from 1 kg or one set on', () => {
    const [load] = changesBetween({ ...kneeDose, loadKg: 1 }, { ...kneeDose, loadKg: 2 });
    const [sets] = changesBetween({ ...kneeDose, sets: 1 }, { ...kneeDose, sets: 2 });
    expect([load?.percent, sets?.percent]).toEqual([100, 100]);
  });
});
