/** What was not said is said to be so; who is asked about pregnancy; not known is never no. */
import { describe, expect, it } from 'vitest';
import { answerRemarks, leftUnsaid } from '#core/screening/answer-remarks.ts';
import { ifWhichNotSaid } from '#core/screening/effects-of-answer.ts';
import { itemsAskedAt, screeningItem, screeningItems } from '#core/screening/items.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { codesOf, outcomeOf, outcomesInput, screeningWith } from './answers.ts';

const loading = (answer: ScreeningItemAnswer, ageYears = 61) =>
  outcomeOf('low-load', 'leg', 'left', { screening: screeningWith([answer]), ageYears });

describe('a detail that was not said', () => {
  it('is said as missing, with the most cautious effect named as such, and claims none of the details', () => {
    for (const details of [undefined, []]) {
      const { reasons } = outcomeOf('occlusion', 'leg', 'left', {
        screening: screeningWith([{ item: 'medicines', answer: 'yes', details }]),
      });
      expect(reasons.map(({ code }) => code)).toEqual(['medicines-which-not-said']);
      expect(reasons[0]!.text).toMatch(/which of these was not said, so the most cautious counts: /);
      expect(reasons[0]!.eligibility).toBe('closed-until-cleared');
    }
  });

  it('is cleared by a physician where one of the most cautious effects asks for one', () => {
    const { reasons } = outcomeOf('occlusion', 'leg', 'left', {
      screening: screeningWith([{ item: 'arterial-disease', answer: 'yes', details: ['walking-pain'] }]),
    });
    expect(reasons.map(({ clearedBy }) => clearedBy)).toEqual(['physician']);
    const unsaid = loading({ item: 'past-clot', answer: 'yes' });
    expect(unsaid.reasons.map(({ clearedBy }) => clearedBy)).toEqual(['physician']);
  });

  it('counts as missing too where only details of an older sheet were ticked', () => {
    expect(codesOf(loading({ item: 'past-clot', answer: 'yes', details: ['recent-or-treated'] }))).toEqual([
      'past-clot-which-not-said',
    ]);
  });

  it('names a limb as missing in the reason', () => {
    const answer: ScreeningItemAnswer = { item: 'lymph', answer: 'yes' };
    const text = (given: ScreeningItemAnswer) =>
      outcomeOf('occlusion', 'leg', 'left', { screening: screeningWith([given]) }).reasons[0]!.text;
    expect(text(answer)).toContain('No limb was named, so every limb counts.');
    expect(text({ ...answer, limbs: [{ limb: 'leg', side: 'left' }] })).not.toContain('No limb was named');
  });

  it('can be told to the clinician for every item with details that change something', () => {
    const silent = screeningItems
      .filter(({ asks }) => asks.details)
      .filter((item) => ifWhichNotSaid(item) === null)
      .map(({ id }) => id);
    // A stroke’s kinds are alike; what counts there is whether a physician has allowed exercise.
    expect(silent).toEqual(['stroke-or-tia']);
  });

  it('stands beside a yes wherever staff read it, with the day and the note', () => {
    const asks = screeningItem('past-clot')!.asks;
    expect(
      answerRemarks(asks, { item: 'past-clot', answer: 'yes', day: '2019-05-04', note: 'left leg' }),
    ).toEqual(['which: not said', 'last on 4 May 2019', 'noted: “left leg”']);
    expect(leftUnsaid(asks, { answer: 'yes', details: ['being-treated'] })).toEqual([]);
    expect(leftUnsaid(asks, { answer: 'no' })).toEqual([]);
  });
});

describe('pregnancy', () => {
  const isAsked = (ageYears: number) => itemsAskedAt(ageYears).some(({ id }) => id === 'pregnancy-or-birth');

  it.each([
    [17, false],
    [18, true],
    [55, true],
    [56, false],
    [Number.NaN, true],
  ])('at %s is asked: %s (common practice, no source); an age not known is asked', (ageYears, asked) => {
    expect(isAsked(ageYears)).toBe(asked);
  });

  it.each([
    [18, 'closed'],
    [55, 'closed'],
    [56, 'open'],
  ])('at %s left unanswered leaves low load %s', (ageYears, eligibility) => {
    const screening = screeningWith();
    const answers = screening.answers.filter(({ item }) => item !== 'pregnancy-or-birth');
    expect(
      outcomeOf('low-load', 'leg', 'left', { screening: { ...screening, answers }, ageYears }).eligibility,
    ).toBe(eligibility);
  });

  it('marked as not applicable leaves every method open and is not "not asked"', () => {
    const screening = screeningWith([{ item: 'pregnancy-or-birth', answer: 'not-applicable' }]);
    for (const outcome of methodOutcomes(outcomesInput({ screening, ageYears: 40 })))
      expect(outcome).toMatchObject({ eligibility: 'open', reasons: [] });
  });

  it('not known counts as yes, at 40 and at 60', () => {
    for (const ageYears of [40, 60]) {
      const told = loading({ item: 'pregnancy-or-birth', answer: 'not-known' }, ageYears);
      expect(told.eligibility).toBe('closed-until-cleared');
      expect(told.reasons[0]!.text).toContain('which counts as yes');
    }
  });

  it('is the only question that offers "does not apply"', () => {
    expect(screeningItems.filter(({ asks }) => asks.notApplicable).map(({ id }) => id)).toEqual([
      'pregnancy-or-birth',
    ]);
  });
});
