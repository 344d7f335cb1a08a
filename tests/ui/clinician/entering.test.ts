/** A session the clinic types from paper or a call, under the rules of a phone. */
import { describe, expect, it } from 'vitest';
import { sessionAnswers, unreadable, unreadableMorning } from '#ui/clinician/data-entry/answers.ts';
import { weightDose } from '../patient/views.ts';

/** 3 sets of 15 to 20 with 4 kg; on a bad day 2. */
const exercise = {
  itemId: 'knee',
  prescriptionId: 'version-1',
  title: 'Straighten the knee',
  dose: weightDose,
  badDay: { ...weightDose, sets: 2 },
};
const typed = (more: Readonly<Record<string, string>>) =>
  sessionAnswers('entry-1', [exercise], ['right-knee'], { kind: 'full', ...more });

describe('a session typed by the clinic', () => {
  it('has no reason to stop where a set reached its least, and asks one where it fell short or was not counted', () => {
    const reasons = (more = {}) =>
      typed({ 'counts-knee': '16, 15, 14, –', ...more }).sets.map((set) => set.stopReason);
    expect(reasons()).toEqual(['none', 'none', 'unknown', 'unknown']);
    expect(reasons({ 'stop-knee': 'joint-pain' })).toEqual(['none', 'none', 'joint-pain', 'joint-pain']);
  });

  it('carries the repetitions in reserve of each set, and leaves open what was not said', () => {
    const reserves = (text: string) =>
      typed({ 'counts-knee': '16, 15, 15', 'reserve-knee': text }).sets.map((set) => set.reserve);
    expect(reserves('2, 1, –')).toEqual([2, 1, null]);
    expect(reserves('2')).toEqual([2, null, null]);
    expect(reserves('')).toEqual([null, null, null]);
  });

  it.each([
    ['2, 1, 10', 0],
    ['2, 1, 11', 1],
    ['two', 1],
  ])('takes %s in reserve: %i problems', (text, problems) => {
    expect(unreadable([exercise], { 'reserve-knee': text })).toHaveLength(problems);
  });

  it.each([
    [undefined, null],
    ['none', []],
    ['medicine', ['medicine']],
  ])('says of something new, told as %s: %j', (said, news) => {
    expect(typed(said === undefined ? {} : { news: said }).news).toEqual(news);
  });

  it('leaves open whether another joint was worse until it is said', () => {
    expect(typed({}).otherJointWorse).toBeNull();
    expect(typed({ 'other-joint': 'yes' }).otherJointWorse).toBe(true);
    expect(typed({ 'other-joint': 'no' }).otherJointWorse).toBe(false);
  });
});

describe('what cannot be read of what the clinic types', () => {
  it.each([
    ['-1', false],
    ['0', true],
    ['1440', true],
    ['1441', false],
    ['half an hour', false],
  ])('stiffness of "%s" minutes is taken: %s, and named with its joint', (text, isTaken) => {
    const problems = unreadableMorning(['right-knee'], { 'stiffness-right-knee': text });
    expect(problems.length === 0).toBe(isTaken);
    if (!isTaken) expect(problems[0]?.text).toMatch(/“.*right knee”/);
  });

  it.each([
    ['0', true],
    ['500', true],
    ['500.5', false],
    ['heavy', false],
  ])('a weight of "%s" is taken: %s, and named with its exercise', (text, isTaken) => {
    const problems = unreadable([exercise], { 'load-knee': text });
    expect(problems.length === 0).toBe(isTaken);
    if (!isTaken) expect(problems[0]?.text).toMatch(/“Weight used, Straighten the knee”/);
  });

  it('is said all at once, each with the way out', () => {
    const problems = unreadable([exercise], { 'counts-knee': 'x', 'load-knee': 'x', 'reserve-knee': '11' });
    expect(problems.map(({ field }) => field)).toEqual(['reserve-knee', 'counts-knee', 'load-knee']);
    for (const { text } of problems) expect(text).toMatch(/Straighten the knee.*such as/);
  });

  it('keeps a weight written with another unit', () => {
    expect(typed({ 'counts-knee': '15', 'load-knee': '11 lb' }).sets[0]?.loadKg).toBeCloseTo(4.99, 2);
  });
});
