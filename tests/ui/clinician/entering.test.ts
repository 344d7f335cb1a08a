/** A session the clinic types from paper or a call, under the rules of a phone. */
import { describe, expect, it } from 'vitest';
import { sessionAnswers, unreadable } from '#ui/clinician/data-entry/answers.ts';
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
