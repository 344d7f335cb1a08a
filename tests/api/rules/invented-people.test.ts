/** The trial on invented people for clinicians, and a rule of their own run on it without holding others up. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { asClinician } from '#tests/support/callers.ts';
import { twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const usual = {
  weeklyRisePercent: 7.5,
  mostPain: 5,
  badMorning: 2,
  badAnswersForCut: 2,
  cutPercent: 20,
  usualSetEveryWeeks: 6,
};

describe('invented people', () => {
  let store: Store;
  let people: ReturnType<typeof asClinician>['clinician']['inventedPeople'];
  beforeAll(async () => {
    store = await freshStore();
    const { clinician } = await twoClinics(store);
    people = asClinician(clinician).clinician.inventedPeople;
  });
  afterAll(() => store.close());

  it('come with seed, number, weeks and day of the run, on both models, each arm named', async () => {
    const answer = await people.get();
    expect(answer).toMatchObject({ seed: 20260131, weeks: 12, usual });
    expect(answer.ranOn).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(answer.models.map(({ id }) => id)).toEqual(['first', 'second']);
    for (const { rows } of answer.models)
      for (const { title } of rows) expect(title).toEqual(expect.stringMatching(/\w/));
  });

  it('a rule of their own is answered for each type and the mean, and others are answered meanwhile', async () => {
    let isDone = false;
    let turns = 0;
    const count = (): void => {
      turns++;
      if (!isDone) setImmediate(count);
    };
    setImmediate(count);
    const rows = await people.tryOwnRule({ model: 'first', rule: usual });
    isDone = true;
    expect(turns).toBeGreaterThan(3);
    expect(rows.map(({ arm }) => arm)).toEqual(Array(10).fill('own-rule'));
    expect(rows.at(-1)).toMatchObject({ type: 'all', title: null, onFrontier: false });
  });

  it('a second rule at the same time is refused with what to do, and one after it is run', async () => {
    const first = people.tryOwnRule({ model: 'first', rule: usual });
    await expect(people.tryOwnRule({ model: 'second', rule: usual })).rejects.toThrow(
      /try again in a few seconds/i,
    );
    await expect(first).resolves.toHaveLength(10);
    await expect(people.tryOwnRule({ model: 'first', rule: usual })).resolves.toHaveLength(10);
  });

  it('a rule is taken with every figure at its bound', async () => {
    const rule = {
      weeklyRisePercent: 50,
      mostPain: 10,
      badMorning: 1,
      badAnswersForCut: 0,
      cutPercent: 90,
      usualSetEveryWeeks: 1,
    };
    await expect(people.tryOwnRule({ model: 'first', rule })).resolves.toHaveLength(10);
  });

  it.each([
    ['weeklyRisePercent', 50.1],
    ['weeklyRisePercent', -0.1],
    ['mostPain', 11],
    ['mostPain', 4.5],
    ['badMorning', 0],
    ['badAnswersForCut', -1],
    ['cutPercent', 90.5],
    ['cutPercent', 0],
    ['usualSetEveryWeeks', 0],
  ])('%s of %d is refused beside its field', async (name, refused) => {
    await expect(
      people.tryOwnRule({ model: 'first', rule: { ...usual, [name]: refused } }),
    ).rejects.toMatchObject({ refusals: [{ field: expect.stringContaining(name) }] });
  });

  it('a rule with a figure left out is refused', async () => {
    const { cutPercent: _left, ...rest } = usual;
    await expect(people.tryOwnRule({ model: 'first', rule: rest })).rejects.toMatchObject({
      problem: 'refused',
    });
  });

  it.each([
    [{ joints: { 'right-knee': { acceptablePainLimit: 6 } } }, /usual values are one person/],
    [{ 'no-setting': 1 }, /not a setting of the decision rules/],
    [{}, /Name a setting/],
  ])('%j is refused with what to do', async (moved, words) => {
    await expect(people.trySettings({ moved })).rejects.toThrow(words);
  });
});
