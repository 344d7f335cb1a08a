/** Swelling and knee tests as a review shows them. */
import { describe, expect, it } from 'vitest';
import type { JointMorningAnswers, PatientRecord } from '#core/record/record.ts';
import { dayDetail } from '#core/review/day-detail.ts';
import { findingsOf } from '#core/review/findings/all.ts';
import { reviewTable } from '#core/review/table.ts';
import { addDays } from '#core/time/day.ts';
import { morning, record, series, today } from './builders.ts';

const said = (daysAgo: number, answers: Partial<JointMorningAnswers>) => {
  const one = morning(addDays(today, -daysAgo), 2);
  return { ...one, joints: one.joints.map((joint) => ({ ...joint, ...answers })) };
};

describe('swelling in a review', () => {
  const parts: Partial<PatientRecord> = {
    mornings: [
      said(2, { swelling: 'slight' }),
      said(1, { swelling: 'slight', swellingQuestion: 'more-than-usual' }),
      said(0, { swelling: 'not-applicable', swellingQuestion: 'more-than-usual' }),
    ],
  };

  it('is shown in the words of its own question, so that answers to two questions never read alike', () => {
    expect(reviewTable(series(parts)).map(({ swelling }) => swelling)).toEqual([
      'not asked',
      'a little more than usual',
      'slight',
    ]);
    const shown = series(parts);
    const lines = shown.rows.flatMap((row) => dayDetail(row, shown, {}).lines);
    expect(lines.filter((line) => line.includes('swelling a little more than usual'))).toHaveLength(1);
    expect(lines.filter((line) => line.includes('swelling slight'))).toHaveLength(1);
  });
});

describe('a knee effusion test in a review', () => {
  const found = (daysAgo: number, parts: Partial<PatientRecord> = {}) => {
    const effusions = [{ joint: 'left-knee' as const, day: addDays(today, -daysAgo), grade: '2+' as const }];
    const whole = { effusions, ...parts };
    return findingsOf(series(whole), record(whole)).find(({ id }) => id === 'effusion-test')?.sentences;
  };

  it.each([
    [13, false],
    [14, false],
    [15, true],
  ])('of %i days ago is named as due again: %s', (daysAgo, isNamed) => {
    expect(found(daysAgo) !== undefined).toBe(isNamed);
  });

  it('says whether the old grade still counts', () => {
    expect(found(15)).toEqual([
      'Test again: the left knee was 2+ on 16 Mar, more than 14 days ago.',
      'The patient has not answered about swelling since, so the old grade still counts.',
    ]);
    expect(found(15, { mornings: [said(0, { swelling: 'none' })] })?.[1]).toBe(
      'The patient has answered about swelling since, so the old grade no longer counts.',
    );
  });

  it('of another joint, or none, is not named', () => {
    expect(findingsOf(series({}), record({})).map(({ id }) => id)).not.toContain('effusion-test');
    const other = [{ joint: 'right-knee' as const, day: addDays(today, -20), grade: '2+' as const }];
    expect(found(20, { effusions: other })).toBeUndefined();
  });
});
