/** Single faults in a good Bundle: what the table lets pass is named here, one by one. */
import { describe, expect, it } from 'vitest';
import { resourceTypes } from '#exchange/fhir/definitions/table.ts';
import { faultsOfBundle } from '#exchange/fhir/walker/references.ts';
import { goodBundle, resourceIn } from './good-bundle.ts';
import { madeByHand } from './made-by-hand.ts';
import { faultsBelow } from './made-by-machine.ts';

/** Faults that pass, each to be named here; there is none. */
const passing: readonly string[] = [];

const isRefused = (bundle: unknown): boolean => faultsOfBundle(bundle).length > 0;

describe('one fault in a Bundle', () => {
  it('is none in the good one', () => {
    expect(faultsOfBundle(goodBundle())).toEqual([]);
  });

  it.each(madeByHand.map((fault) => [fault.name, fault.make] as const))('is refused: %s', (_name, make) => {
    const bundle = goodBundle();
    make(bundle);
    expect(isRefused(bundle)).toBe(true);
  });

  it('is refused wherever it was made by hand, fifty times at least [exchange 120]', () => {
    expect(madeByHand.length).toBeGreaterThanOrEqual(50);
    expect(new Set(madeByHand.map(({ name }) => name)).size).toBe(madeByHand.length);
  });

  it('is refused at every value of every kind of resource, whatever was put there, but for those named', () => {
    const bundle = goodBundle();
    const places = [
      ...resourceTypes.slice(1).flatMap((type) => faultsBelow(resourceIn(bundle, type), type)),
      ...faultsBelow(resourceIn(bundle, 'Observation/m-bp'), 'm-bp'),
    ];
    const passed = places.flatMap(({ name, make }) => {
      const takeOut = make();
      const isCaught = isRefused(bundle);
      takeOut();
      return isCaught ? [] : [name];
    });
    expect(places.length).toBeGreaterThanOrEqual(1900);
    expect(passed).toEqual(passing);
    expect(passing.length).toBeLessThanOrEqual(13);
    expect(faultsOfBundle(bundle)).toEqual([]);
  });
});
