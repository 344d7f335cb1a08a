/** The course of care in sentences: what lies beyond the error of measuring is called a change, and nothing else is. */
import { describe, expect, it } from 'vitest';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import type { Measured, Person } from '#core/assessment/course/measured.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { EffusionRecord } from '#core/record/record.ts';

const [early, late] = ['2026-01-05', '2026-03-30'];
const woman: Person = {
  sex: 'female',
  birthDay: '1958-08-14',
  errorGroup: 'knee-osteoarthritis-mild',
};

const by = (recordedBy: string, ...rows: readonly Measurement[]): readonly Measured<Measurement>[] =>
  rows.map((row) => ({ ...row, recordedBy }));

const lineOf = (
  rows: readonly Measured<Measurement>[],
  person = woman,
  effusions: readonly EffusionRecord[] = [],
) => outcomeLines(rows, effusions, person)[0]!;

const chair = (...stands: readonly number[]) =>
  by(
    'a',
    ...stands.map(
      (count, place) =>
        ({ kind: 'chair-stand-30s', day: place === 0 ? early : late, stands: count }) as const,
    ),
  );

describe('30-second chair stand', () => {
  it('a woman of 67 is told against 11 stands, the below-average cut of 65 to 69 (Rikli and Jones 1999)', () => {
    expect(lineOf(chair(10)).norm.sentence).toMatch(
      /^Under 11 stands .* a woman of 67: 10 is below average\./,
    );
    expect(lineOf(chair(11)).norm.sentence).toContain('11 is not below average');
  });

  it.each([
    [9, 11, '+2 stands, within the error of measuring 2.5 stands: not called a change.', 'within-error'],
    [9, 12, '+3 stands, beyond the error of measuring 2.5 stands: a change for the better.', 'better'],
    [12, 9, '−3 stands, beyond the error of measuring 2.5 stands: a change for the worse.', 'worse'],
  ])('from %i to %i (Gill 2022: 2.5 stands)', (before, after, sentence, verdict) => {
    const { change } = lineOf(chair(before, after));
    expect(change.verdict).toBe(verdict);
    expect(change.sentence.startsWith(`${sentence} `)).toBe(true);
  });

  it('has no norm outside ages 60 to 94, nor without the sex, and says so', () => {
    expect(lineOf(chair(9), { ...woman, birthDay: '1970-01-01' }).norm).toMatchObject({
      sentence: 'No norm: The table covers ages 60 to 94; there is no norm outside it.',
      workings: [],
    });
    expect(lineOf(chair(9), { ...woman, sex: null }).norm.sentence).toContain('not in the care profile');
  });

  it('measured once, speaks of no change', () => {
    expect(lineOf(chair(9)).change).toMatchObject({ verdict: 'not-judged', workings: [] });
  });
});

describe('timed up and go', () => {
  const walk = (before: number, after: number, second = 'a') => [
    ...by('a', { kind: 'timed-up-and-go', day: early, seconds: before }),
    ...by(second, { kind: 'timed-up-and-go', day: late, seconds: after }),
  ];
  it.each([
    ['a', 10.9, '−1.1 s, within the error of measuring 1.1 s', 'within-error'],
    [
      'a',
      10.88,
      'beyond the error of measuring 1.1 s: a change for the better. Entered by the same',
      'better',
    ],
    [
      'b',
      10.88,
      '−1.1 s, within the error of measuring 1.14 s: not called a change. Entered by two',
      'within-error',
    ],
  ])(
    'entered by %s the second time, from 12 to %f s (Alghadir 2015: 1.10 and 1.14 s)',
    (second, after, words, verdict) => {
      const { change } = lineOf(walk(12, after, second));
      expect(change.sentence).toContain(words);
      expect(change.verdict).toBe(verdict);
    },
  );

  it.each([
    [11.9, 'under the fall-risk cut'],
    [12, 'at the fall-risk cut or over it'],
    [20, 'severely low performance'],
  ])('%f s is %s', (seconds, words) => {
    const { sentence } = lineOf(by('a', { kind: 'timed-up-and-go', day: early, seconds })).norm;
    expect(sentence).toContain(words);
    expect(sentence).toContain('from memory');
  });
});

it('grip under 16 kg is low for a woman (EWGSOP2 2019), and its difference is never called a change', () => {
  const grip = (...forces: readonly number[]) =>
    by('a', ...forces.map((forceKg) => ({ kind: 'grip', day: early, side: 'right', forceKg }) as const));
  expect(lineOf(grip(15.9)).norm.sentence).toContain('15.9 kg is low');
  expect(lineOf(grip(16)).norm.sentence).toContain('16 kg is not low');
  expect(lineOf(grip(15, 25)).change).toMatchObject({
    sentence: '+10 kg. No error of measuring grip is on file. A difference is shown and not called a change.',
    verdict: 'not-judged',
  });
});

describe('activities chosen by the patient', () => {
  const activities = (day: string, ...scores: readonly number[]) =>
    by(
      'a',
      ...scores.map(
        (score, place) =>
          ({ kind: 'patient-chosen-activity', day, activity: `activity ${place}`, score }) as const,
      ),
    );

  it.each([
    [[6, 6, 6], '+2 points, within the error of measuring 2 points', 'within-error'],
    [[6, 6, 7], '+2.3 points, beyond the error of measuring 2 points: a change for the better', 'better'],
  ] as const)('from a mean of 4 to %j (2 points, from memory)', (after, words, verdict) => {
    const { change } = lineOf([...activities(early, 4, 4, 4), ...activities(late, ...after)]);
    expect(change.sentence).toContain(words);
    expect(change.sentence).toContain('from memory');
    expect(change.verdict).toBe(verdict);
  });

  it('are not compared when they are other ones, or fewer than three', () => {
    expect(lineOf([...activities(early, 4, 4, 4), ...activities(late, 9, 9)]).change.verdict).toBe(
      'not-judged',
    );
    expect(lineOf(activities(early, 4, 4)).norm.sentence).toContain('there are 2');
  });
});

it('girth differs from 1.5 cm up only (from memory), and no direction is called better', () => {
  const girth = (after: number) =>
    lineOf(
      by(
        'a',
        {
          kind: 'limb-circumference',
          day: early,
          limb: 'leg',
          side: 'left',
          site: 'mid-thigh',
          circumferenceCm: 48,
        },
        {
          kind: 'limb-circumference',
          day: late,
          limb: 'leg',
          side: 'left',
          site: 'mid-thigh',
          circumferenceCm: after,
        },
      ),
    ).change;
  expect(girth(49.5).sentence).toBe(
    '+1.5 cm, within the error of measuring 1.5 cm (from memory): not called a change.',
  );
  expect(girth(49.6).sentence).toContain('beyond the error of measuring 1.5 cm (from memory): a change.');
  expect(girth(49.6).verdict).toBe('not-judged');
});

describe('a strength test', () => {
  const failure = (day: string, loadKg: number, repetitions: number) =>
    ({
      kind: 'repetitions-to-failure',
      day,
      exerciseId: 'knee-extension-seated',
      side: 'right',
      loadKg,
      repetitions,
    }) as const;

  it('is a change only where the two ranges of estimates lie apart', () => {
    const of = (loadKg: number) => lineOf(by('a', failure(early, 10, 8), failure(late, loadKg, 8))).change;
    expect(of(10.5).verdict).toBe('within-error');
    expect(of(20).verdict).toBe('better');
    expect(of(5).verdict).toBe('worse');
  });

  it('of a very long set gives no estimate and is not compared', () => {
    const { norm, change } = lineOf(by('a', failure(early, 4, 80), failure(late, 4, 90)));
    expect([norm.sentence, change.verdict]).toEqual([
      'A set this long gives no estimate of the one-repetition maximum.',
      'not-judged',
    ]);
  });
});

it('one grade of effusion is what raters differ by; two are more (Sturgill 2009)', () => {
  const effusion = (grade: EffusionRecord['grade']) =>
    lineOf([], woman, [
      { joint: 'left-knee', day: early, grade: 'trace' },
      { joint: 'left-knee', day: late, grade },
    ]).change;
  expect(effusion('1+').verdict).toBe('within-error');
  expect(effusion('2+').verdict).toBe('worse');
});

it('4 tender and 2 swollen joints with globals 4 and 3 are an index of 13, moderate', () => {
  const counts = {
    kind: 'joint-counts',
    day: early,
    tender: 4,
    swollen: 2,
    patientGlobal: 4,
    clinicianGlobal: 3,
  } as const;
  expect(lineOf(by('a', counts)).readings[0]!.text).toBe('13, moderate');
});
