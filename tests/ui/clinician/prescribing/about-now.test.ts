/** What is said to stand now of the exercise that is chosen, above the figures of its new dose. */
import { describe, expect, it } from 'vitest';
import { aboutNow } from '#ui/clinician/prescribing/earlier/about-now.ts';

const noon = Date.parse('2026-03-09T12:00:00Z');
const version = {
  itemId: 'item',
  version: 2,
  dose: { method: 'variation', exerciseId: 'wall-sit', side: 'both', addedKg: 0, place: 'home' },
  signedBy: 'Nuala Derravane',
  signedName: 'Nuala Derravane',
  signedAt: noon,
  withinLimitsOf: null,
} as never;
const said = (inForce: readonly unknown[], chosen: unknown, over: object = {}) =>
  aboutNow(
    {
      patient: { profile: { ownedLoadsKg: [] } },
      clock: { now: noon, zone: 'UTC' },
      prescriptions: { inForce, unsigned: [] },
      machines: [],
      at: { exerciseId: 'wall-sit', side: 'both', ...over },
      earlier: [],
    } as never,
    chosen as never,
    'variation',
  ).join(' ');

describe('what stands now of the chosen exercise', () => {
  it('is the version that is written anew, from which the figures come', () =>
    expect(said([version], version)).toMatch(/Now: version 2, .+ New is filled from it\./));

  it('is named where it was signed a moment ago, and never called nothing', () => {
    expect(said([version], null)).toMatch(/Now: version 2, .+ not filled from it/);
    expect(said([version], null)).not.toContain('Nothing of this exercise');
  });

  it('is nothing where only the other side has it, or it is not prescribed', () => {
    expect(said([version], null, { side: 'left' })).toContain('Nothing of this exercise');
    expect(said([], null)).toContain('Nothing of this exercise');
  });
});
