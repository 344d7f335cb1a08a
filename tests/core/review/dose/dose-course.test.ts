/** The staircase of one prescribed exercise: when each dose began, how it came, and how much it is. */
import { describe, expect, it } from 'vitest';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { type DatedVersion, doseCourseOf } from '#core/review/dose/dose-course.ts';
import { loadOfSession } from '#core/review/load-of-session.ts';
import { reviewWords } from '#core/review/words.ts';
import { dose, record, series, session, version } from '../builders.ts';

const dated = (number: number, over: Partial<LowLoadDose>, more: Partial<DatedVersion>): DatedVersion => ({
  ...version(number, { dose: { ...dose, repetitions: { low: 12, high: 12 }, ...over } }),
  signedOn: '2026-03-02',
  endedOn: null,
  way: 'signed',
  ...more,
});

/** 3 × 12 with 4.5 kg; 3 × 14; cut to 2 × 14; 3 × 12 with 5 kg. */
const versions = [
  dated(1, { sets: 3, loadKg: 4.5 }, {}),
  dated(
    2,
    { sets: 3, loadKg: 4.5, repetitions: { low: 14, high: 14 } },
    { signedOn: '2026-03-09', way: 'within-band' },
  ),
  dated(
    3,
    { sets: 2, loadKg: 4.5, repetitions: { low: 14, high: 14 } },
    { signedOn: '2026-03-13', way: 'eased-back' },
  ),
  dated(4, { sets: 3, loadKg: 5 }, { signedOn: '2026-03-20', endedOn: '2026-03-27' }),
];

describe('the course of a dose', () => {
  const course = doseCourseOf(versions.toReversed(), [], 'line');

  it('is a staircase from each day a dose began to the next, of 1, 1.17, 0.78 and 1.11 times the first', () => {
    expect(course.steps.map(({ from, to, way }) => [from, to, way])).toEqual([
      ['2026-03-02', '2026-03-09', 'signed'],
      ['2026-03-09', '2026-03-13', 'within-band'],
      ['2026-03-13', '2026-03-20', 'eased-back'],
      ['2026-03-20', '2026-03-27', 'signed'],
    ]);
    const shares = [1, (3 * 14) / (3 * 12), (2 * 14) / (3 * 12), 5 / 4.5];
    for (const [place, share] of shares.entries()) expect(course.steps[place]?.share).toBeCloseTo(share, 12);
  });

  it('names each step as it is jotted down, of repetitions alone those', () => {
    expect(course.steps.map(({ inShort }) => inShort)).toEqual([
      '3 × 12, 4.5 kg',
      '× 14',
      '2 × 14, 4.5 kg',
      '3 × 12, 5 kg',
    ]);
    expect(course.steps.map(({ changes }) => changes.map(({ variable }) => variable))).toEqual([
      [],
      ['repetitions'],
      ['sets'],
      ['load', 'sets', 'repetitions'],
    ]);
    expect(doseInShort({ ...dose, repetitions: { low: 12, high: 15 }, loadKg: 0 })).toBe('2 × 12–15');
  });

  it('leaves a step in force open, and takes an exercise on its own', () => {
    expect(doseCourseOf(versions.slice(0, 1), [], 'line').steps[0]?.to).toBeNull();
    expect(doseCourseOf(versions, [], 'other')).toMatchObject({ steps: [], sessions: [] });
  });

  it('has no height, and says so, where the load of one exercise is not known', () => {
    const level = (number: number, exerciseId: string): DatedVersion => ({
      ...dated(number, {}, {}),
      dose: { ...dose, method: 'variation', exerciseId, effectiveLoadKg: null, addedKg: 0 },
    });
    const unknown = doseCourseOf([level(1, 'sit-to-stand'), level(2, 'split-squat')], [], 'line');
    expect(unknown.steps.map(({ share }) => share)).toEqual([1, null]);
    expect(unknown.notComparable).toBe(1);
  });

  it('puts the easier session and what each session did on the same scale', () => {
    const full = session('2026-03-04', { kg: 4.5, repetitions: [12, 12, 12] });
    const easier = session('2026-03-06', { kg: 4.5, repetitions: [12], kind: 'bad-day' });
    const own = [{ ...versions[0]!, badDay: { ...versions[0]!.dose, sets: 1 } }];
    const { steps, sessions } = doseCourseOf(own, [full, easier], 'line');
    expect(steps[0]?.easier.share).toBeCloseTo(1 / 3, 12);
    expect(sessions.map(({ day, share, isEasier }) => [day, share, isEasier])).toEqual([
      ['2026-03-04', 1, false],
      ['2026-03-06', expect.closeTo(1 / 3, 12), true],
    ]);
  });
});

describe('the share of the first signed dose as a measure of the review', () => {
  /** 2 × 15 with 4 kg, then 2 × 15 with 5 kg. */
  const both = [version(1), version(2, { dose: { ...dose, loadKg: 5 } })];
  const heavier = session('2026-03-09', { kg: 5, version: 2 });

  it('is the same figure', () => {
    const known = new Map(both.map((one) => [one.id, one]));
    expect(loadOfSession(heavier, 'line', known, 'dose')?.value).toBe(1.25);
    expect(loadOfSession(session('2026-03-02'), 'line', known, 'dose')?.value).toBe(1);
  });

  it('is exact where doses are as much, so that a hair of a quotient is no step: 8 × 2.7 and 9 × 2.4 kg', () => {
    const asMuch = [
      version(1, { dose: { ...dose, repetitions: { low: 8, high: 8 }, loadKg: 2.7 } }),
      version(2, { dose: { ...dose, repetitions: { low: 9, high: 9 }, loadKg: 2.4 } }),
    ];
    const sessions = [session('2026-03-02', { kg: 2.7 }), session('2026-03-09', { kg: 2.4, version: 2 })];
    const words = reviewWords(series(record({ prescriptions: asMuch, sessions }), { measure: 'dose' }));
    expect(words).toContain('Dose (first signed = 1.00) stayed at 1.00 in full sessions.');
  });

  it('is said as any other, and for a test it cannot be told', () => {
    const sessions = [session('2026-03-02'), heavier, session('2026-03-16', { kind: 'test' })];
    const words = reviewWords(series(record({ prescriptions: both, sessions }), { measure: 'dose' })).join(
      ' ',
    );
    expect(words).toContain(
      'Dose (first signed = 1.00) in full sessions went from 1.00 on 2 Mar to 1.25 on 9 Mar: 1 step up, 0 down.',
    );
    expect(words).toContain(
      'cannot be told for 1 session (16 Mar): a count or a load was not given, it was a test, or',
    );
  });
});
