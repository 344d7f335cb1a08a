/** What is left of each method: never screened, too young, too old an answer, questions left open. */
import { describe, expect, it } from 'vitest';
import { screeningItems } from '#core/screening/items.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { codesOf, outcomeOf, outcomesInput, screeningWith } from './answers.ts';

const eligibilitiesOf = (changed: Parameters<typeof outcomesInput>[0]) =>
  new Set(methodOutcomes(outcomesInput(changed)).map(({ eligibility }) => eligibility));

describe('who may start at all', () => {
  it('a screened adult with nothing found has every method open on every limb', () => {
    expect(methodOutcomes(outcomesInput())).toHaveLength(12);
    expect(eligibilitiesOf({})).toEqual(new Set(['open']));
  });

  it('nobody who was never screened', () => {
    expect(eligibilitiesOf({ screening: null })).toEqual(new Set(['closed']));
    expect(codesOf(outcomeOf('low-load', 'arm', 'left', { screening: null }))).toContain('never-screened');
  });

  it('nobody under 18, and nobody whose age is not known', () => {
    expect(eligibilitiesOf({ ageYears: 17 })).toEqual(new Set(['closed']));
    expect(eligibilitiesOf({ ageYears: 18 })).toEqual(new Set(['open']));
    expect(eligibilitiesOf({ ageYears: Number.NaN })).toEqual(new Set(['closed']));
  });

  it('nobody whose screening is past its age: 83, 84 and 85 days (clinic choice)', () => {
    const from = (day: string) => eligibilitiesOf({ screening: screeningWith([], day) });
    expect(from('2025-12-09')).toEqual(new Set(['open']));
    expect(from('2025-12-08')).toEqual(new Set(['open']));
    expect(from('2025-12-07')).toEqual(new Set(['closed']));
  });

  it('nobody whose screening is dated tomorrow', () => {
    expect(eligibilitiesOf({ screening: screeningWith([], '2026-03-03') })).toEqual(new Set(['closed']));
  });
});

describe('questions left open', () => {
  const without = (ids: readonly string[]) => ({
    ...screeningWith(),
    answers: screeningWith().answers.filter(({ item }) => !ids.includes(item)),
  });

  it('low load opens on its minimum set while occlusion stays closed', () => {
    const occlusionOnly = screeningItems
      .filter(({ minimumFor }) => !minimumFor.includes('low-load'))
      .map(({ id }) => id);
    const screening = without(occlusionOnly);
    expect(outcomeOf('low-load', 'leg', 'left', { screening }).eligibility).toBe('open-with-precautions');
    expect(outcomeOf('occlusion', 'leg', 'left', { screening }).eligibility).toBe('closed');
  });

  it('a question of the minimum set that nobody asked closes the method', () => {
    for (const item of screeningItems) {
      for (const method of item.minimumFor) {
        // An age at which every item is asked.
        const outcome = outcomeOf(method, 'arm', 'right', { ageYears: 40, screening: without([item.id]) });
        expect([item.id, outcome.eligibility]).toEqual([item.id, 'closed']);
      }
    }
  });

  it('an item that this sheet does not know closes everything', () => {
    const screening = {
      ...screeningWith(),
      answers: [...screeningWith().answers, { item: 'from-elsewhere', answer: 'no' as const }],
    };
    expect(eligibilitiesOf({ screening })).toEqual(new Set(['closed']));
  });
});

describe('answers about one limb', () => {
  it('close that limb and leave the others', () => {
    const screening = screeningWith([
      { item: 'lymph', answer: 'yes', limbs: [{ limb: 'arm', side: 'right' }] },
    ]);
    expect(outcomeOf('occlusion', 'arm', 'right', { screening }).eligibility).toBe('closed');
    expect(outcomeOf('occlusion', 'arm', 'left', { screening }).eligibility).toBe('open');
    expect(outcomeOf('low-load', 'arm', 'right', { screening }).eligibility).toBe('open');
  });

  it('that name no limb close every limb', () => {
    for (const limbs of [undefined, []]) {
      const screening = screeningWith([{ item: 'dialysis-access', answer: 'yes', limbs }]);
      expect(outcomeOf('occlusion', 'arm', 'left', { screening }).eligibility).toBe('closed');
      expect(outcomeOf('occlusion', 'leg', 'right', { screening }).eligibility).toBe('closed');
    }
  });

  it('walking pain asks about legs only', () => {
    const screening = screeningWith([{ item: 'arterial-disease', answer: 'yes', details: ['walking-pain'] }]);
    expect(outcomeOf('occlusion', 'leg', 'left', { screening }).eligibility).toBe('closed-until-cleared');
    expect(outcomeOf('occlusion', 'arm', 'left', { screening }).eligibility).toBe('open');
  });
});
