/** What swelling answers mean by their question, and how long a clinician's knee test holds. */
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import { engineDefaults, engineSettings } from '#core/decision/settings.ts';
import type { Effusion, JointMorningAnswers, PatientRecord, Swelling } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import { baseline, judgedMorning, knee, morning, noonOf, record, withMorning } from '../small-record.ts';

const kneeFacts = (of: PatientRecord) => factsFor(of, knee, noonOf(judgedMorning));
const rulesOf = (of: PatientRecord) => decide(kneeFacts(of)).reasons.map(({ rule }) => rule);
/** A knee that is usually slightly swollen. */
const usuallySlight = record({ baselines: [baseline({ usualSwelling: 'slight' })] });
const answering = (answers: Partial<JointMorningAnswers>) =>
  withMorning(usuallySlight, morning(judgedMorning, answers));

describe('swelling asked against usual', () => {
  it.each([
    ['none', []],
    ['slight', ['W1s']],
    ['clear', ['W2']],
    ['severe', ['W3']],
  ] as const)('%s more than usual gives %s, whatever is usual', (swelling, rules) => {
    const asked = answering({ swelling, swellingQuestion: 'more-than-usual' });
    expect(kneeFacts(asked)).toMatchObject({ swelling, usualSwelling: 'none' });
    expect(rulesOf(asked)).toEqual(rules);
  });

  it('a stored answer keeps the question it was asked: slight is no news where slight is usual', () => {
    for (const answers of [{ swellingQuestion: 'absolute' as const }, {}]) {
      const stored = answering({ swelling: 'slight', ...answers });
      expect(kneeFacts(stored)).toMatchObject({ swelling: 'slight', usualSwelling: 'slight' });
      expect(rulesOf(stored)).toEqual([]);
    }
  });

  it('two answers on one day, one to each question, leave the one that asks for more caution', () => {
    const both = (absolute: Swelling, against: Swelling) => {
      const first = morning(judgedMorning, { swelling: absolute });
      const second = morning(
        judgedMorning,
        { swelling: against, swellingQuestion: 'more-than-usual' },
        { id: 'second' },
      );
      const earlier = usuallySlight.mornings.filter(({ day }) => day !== judgedMorning);
      return [
        rulesOf({ ...usuallySlight, mornings: [...earlier, first, second] }),
        rulesOf({ ...usuallySlight, mornings: [...earlier, second, first] }),
      ];
    };
    expect(both('slight', 'none')).toEqual([[], []]);
    expect(both('slight', 'slight')).toEqual([['W1s'], ['W1s']]);
    expect(both('clear', 'slight')).toEqual([['W2'], ['W2']]);
    expect(both('none', 'clear')).toEqual([['W2'], ['W2']]);
  });

  it('not asked of a joint is not a missing answer', () => {
    const facts = kneeFacts(answering({ swelling: 'not-applicable', swellingQuestion: 'more-than-usual' }));
    expect(facts.swelling).toBe('not-applicable');
    expect(decide(facts).reasons).toEqual([]);
  });
});

const tested = (daysAgo: number, grade: Effusion = '2+', over: Partial<PatientRecord> = {}) =>
  record({ effusions: [{ joint: knee, day: addDays(judgedMorning, -daysAgo), grade }], ...over });

describe('a knee effusion test', () => {
  it('counts for 14 days by default; a clinic may choose 7 to 28', () => {
    expect(engineDefaults['effusion-test-days']).toBe(14);
    const setting = engineSettings.find(({ id }) => id === 'effusion-test-days');
    expect([setting?.min, setting?.max]).toEqual([7, 28]);
  });

  it.each([
    [13, '2+', 1],
    [14, '2+', 1],
    [15, 'not-applicable', 0],
  ] as const)('of %i days ago, with swelling answered since, is read as %s', (daysAgo, effusion, run) => {
    expect(kneeFacts(tested(daysAgo))).toMatchObject({ effusion, effusionRun: run });
  });

  it.each([
    ['1+', 'S3'],
    ['2+', 'S2f'],
    ['3+', 'S1'],
  ] as const)('%s drives %s while it holds and no effusion rule afterwards', (grade, rule) => {
    expect(rulesOf(tested(14, grade))).toContain(rule);
    expect(rulesOf(tested(15, grade))).toEqual([]);
  });

  it('holds by the clinic’s own number of days', () => {
    const at = (days: number) =>
      factsFor(tested(15), knee, noonOf(judgedMorning), { 'effusion-test-days': days }).effusion;
    expect([at(14), at(15), at(28)]).toEqual(['not-applicable', '2+', '2+']);
  });

  it.each([
    ['is not answered', null],
    ['is not asked', 'not-applicable'],
  ] as const)('goes on counting while the patient’s own swelling %s', (_name, swelling) => {
    const silent = record().mornings.map(({ day }) => morning(day, { swelling }));
    expect(kneeFacts(tested(15, '2+', { mornings: silent })).effusion).toBe('2+');
  });

  it('tested again counts anew', () => {
    const effusions = [15, 1].map((ago) => ({
      joint: knee,
      day: addDays(judgedMorning, -ago),
      grade: '1+' as const,
    }));
    expect(kneeFacts(record({ effusions })).effusion).toBe('1+');
  });
});
