/** What the picture of a measure shows: the same error, cut and figures as its sentences. */
import { describe, expect, it } from 'vitest';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import type { Person } from '#core/assessment/course/measured.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { effusions } from '#core/record/record.ts';

const [early, late] = ['2026-01-05', '2026-03-30'];
const woman: Person = {
  sex: 'female',
  birthDay: '1958-08-14',
  errorGroup: 'knee-osteoarthritis-mild',
};

const drawn = (rows: readonly Measurement[], person = woman, by = ['a', 'a']) =>
  outcomeLines(
    rows.map((row, place) => ({ ...row, recordedBy: by[place] ?? 'a' })),
    [],
    person,
  )[0]!.drawn;

const chair = (day: string, stands: number) => ({ kind: 'chair-stand-30s', day, stands }) as const;
const walk = (day: string, seconds: number) => ({ kind: 'timed-up-and-go', day, seconds }) as const;
const grip = (forceKg: number) => ({ kind: 'grip', day: early, side: 'right', forceKg }) as const;

describe('the picture of a measure', () => {
  it('shows every reading of the 30-second chair stand, its error of 2.5 (Gill 2022) and the cut of the age', () => {
    expect(drawn([chair(early, 9), chair(late, 12)])).toEqual({
      courses: [
        {
          name: null,
          points: [
            { day: early, figure: 9 },
            { day: late, figure: 12 },
          ],
        },
      ],
      unit: 'stands',
      error: 2.5,
      cut: { at: 11, words: 'under 11: below average' },
      better: 'higher',
    });
  });

  it('shows no cut where none holds: outside its ages, and without the sex', () => {
    expect(drawn([chair(early, 9)], { ...woman, birthDay: '1970-01-01' }).cut).toBeNull();
    expect(drawn([chair(early, 9)], { ...woman, sex: null }).cut).toBeNull();
    expect(drawn([grip(20)], { ...woman, sex: null }).cut).toBeNull();
  });

  it('shows the error of the rater: 1.10 s by one, 1.14 s by two (Alghadir 2015)', () => {
    const walks = [walk(early, 12.6), walk(late, 11.2)];
    expect(drawn(walks)).toMatchObject({ error: 1.1, better: 'lower', cut: { at: 12 } });
    expect(drawn(walks, woman, ['a', 'b']).error).toBe(1.14);
  });

  it('shows no error where none is on file, and the cut of 27 and 16 kg of grip (EWGSOP2 2019)', () => {
    expect(drawn([grip(20)])).toMatchObject({ error: null, cut: { at: 16 } });
    expect(drawn([grip(20)], { ...woman, sex: 'male' })).toMatchObject({ cut: { at: 27 } });
  });

  it('shows a strength by equations as a range, and a set too long for them not at all', () => {
    const test = (repetitions: number) =>
      ({
        kind: 'repetitions-to-failure',
        day: early,
        exerciseId: 'knee-extension',
        side: 'right',
        loadKg: 10,
        repetitions,
      }) as const;
    const [point] = drawn([test(8)]).courses[0]!.points;
    expect(point!.figure).toMatchObject({ low: expect.any(Number), high: expect.any(Number) });
    expect(drawn([test(100)]).courses[0]!.points).toEqual([]);
  });

  it('shows each chosen activity as a course of its own, also where it was rated on one day only', () => {
    const rated = (day: string, activity: string, score: number) =>
      ({ kind: 'patient-chosen-activity', day, activity, score }) as const;
    const { courses, error } = drawn([
      rated(early, 'Stairs', 4),
      rated(early, 'Market', 5),
      rated(late, 'Stairs', 8),
    ]);
    expect(courses.map(({ name, points }) => [name, points.map(({ figure }) => figure)])).toEqual([
      ['Stairs', [4, 8]],
      ['Market', [5]],
    ]);
    expect(error).toBe(3);
  });

  it('shows an effusion by its grade, with the one grade that raters differ by', () => {
    const found = (day: string, grade: (typeof effusions)[number]) => ({
      joint: 'right-knee' as const,
      day,
      grade,
    });
    const [line] = outcomeLines([], [found(early, '2+'), found(late, 'zero')] as never, woman);
    expect(line!.drawn).toMatchObject({ grades: effusions, error: 1, better: 'lower' });
    expect(line!.drawn.courses[0]!.points.map(({ figure }) => figure)).toEqual([3, 0]);
  });
});
