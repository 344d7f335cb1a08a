/** Heading the list by its work moves nothing down. */
import { describe, expect, it } from 'vitest';
import { dangers, worklistItemKinds } from '#core/worklist/item.ts';
import { workOf, works } from '#core/worklist/work.ts';

const placeOf = (kind: (typeof worklistItemKinds)[number], facts = {}) =>
  works.indexOf(workOf({ kind, facts }));

describe('the work an item asks for', () => {
  it('follows the order of the kinds, most pressing first', () => {
    const places = worklistItemKinds.map((kind) => placeOf(kind));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it('is danger for every kind that may not be snoozed, and for what a warning sign has left paused', () => {
    expect(worklistItemKinds.filter((kind) => placeOf(kind) === 0)).toEqual(dangers);
    expect(placeOf('resume-due', { cause: 'warning-sign' })).toBe(0);
    expect(placeOf('resume-due', { cause: 'holiday' })).toBeGreaterThan(0);
  });
});
