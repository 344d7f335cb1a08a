import { afterEach, describe, expect, it } from 'vitest';
import { countMonday } from '#commands/team/taps/monday.ts';
import type { Store } from '#data/database/store.ts';
import { auditKey } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const stores: Store[] = [];
afterEach(() => {
  for (const store of stores.splice(0)) store.close();
});

const people = 3;
const counted = () => {
  const store = freshStore();
  stores.push(store);
  return countMonday(store, auditKey, people);
};

describe('the Monday of a made clinic', () => {
  it('is the same Monday each time, decided on version 2, each row one press and nobody counted twice', async () => {
    const first = await counted();
    expect(await counted()).toEqual(first);
    const sum = (counts: Readonly<Record<string, number>>) =>
      Object.values(counts).reduce((a, b) => a + b, 0);
    expect([first.rulesVersion, sum(first.habitsDrawn)]).toEqual([2, people]);
    expect([first.presses, sum(first.rowsByKind)]).toEqual([first.rows, first.needClinician]);
    expect(first.rows + first.nothingFound).toBeLessThanOrEqual(people);
  });
});
