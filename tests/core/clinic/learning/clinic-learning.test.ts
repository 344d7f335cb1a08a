/** The clinic’s figures of a hand-made clinic whose answers are known, and what is left out of it. */
import { describe, expect, it } from 'vitest';
import { clinicLearning } from '#core/clinic/learning/clinic-learning.ts';
import type { LearnedOfPerson } from '#core/clinic/learning/learned-of-person.ts';
import { quartilesOf } from '#core/clinic/learning/quartiles.ts';
import { wilsonInterval } from '#core/statistics/wilson.ts';

const nobody: LearnedOfPerson = {
  signs: [],
  mornings: { asked: 0, answered: 0 },
  sessions: null,
  weeks: 0,
  signatures: 0,
  contacts: 0,
  methods: [],
};
const person = (over: Partial<LearnedOfPerson>): LearnedOfPerson => ({ ...nobody, ...over });
const signed = (urgency: 'emergency' | 'same-day' | 'routine', ...hours: (number | null)[]) =>
  person({ signs: hours.map((one) => ({ urgency, hours: one })) });
const many = (count: number, over: Partial<LearnedOfPerson>) =>
  Array.from({ length: count }, () => person(over));

describe('time from danger to contact', () => {
  const clinic = [
    signed('same-day', 1, 30),
    signed('same-day', 2),
    signed('same-day', 4),
    signed('same-day', null),
    signed('same-day', 8, null),
  ];

  it('has its quartiles by nearest rank, with what is open longer than all that is known', () => {
    // In order: 1 2 4 8 30, open, open. A quarter of 7 is the 2nd, half the 4th, three quarters the 6th.
    const times = { signs: 7, open: 2, low: 2, middle: 8, high: null };
    expect(clinicLearning(clinic).contact).toEqual({ ...times, people: 5 });
    expect(clinicLearning(clinic).contactBy).toEqual([{ urgency: 'same-day', ...times, people: 5 }]);
  });

  it('is told by urgency only where no kind stands for one to four people', () => {
    const emergencies = (count: number) => Array.from({ length: count }, () => signed('emergency', 1));
    expect(clinicLearning([...clinic, ...emergencies(4)])).toMatchObject({
      contact: { people: 9 },
      contactBy: null,
    });
    expect(clinicLearning([...clinic, ...emergencies(5)]).contactBy!.map(({ urgency }) => urgency)).toEqual([
      'emergency',
      'same-day',
    ]);
  });
});

it.each([
  [[], 0, [null, null, null]],
  [[], 3, [null, null, null]],
  [[5], 0, [5, 5, 5]],
  [[4, 1, 3, 2], 0, [1, 2, 3]],
  [[4, 1, 3, 2, 5], 0, [2, 3, 4]],
  [[1, 2], 2, [1, 2, null]],
])('quartiles of %j with %i open are %j', (known, open, [low, middle, high]) => {
  expect(quartilesOf(known as number[], open as number)).toEqual({ low, middle, high });
});

describe('mornings, sessions, and what a week takes', () => {
  it('are added up over people, and their shares and rates told by quartiles of people', () => {
    const clinic = [10, 20, 30, 40, 50].map((answered, place) =>
      person({
        mornings: { asked: 50, answered },
        sessions: { planned: 10, done: 2 * place + 1 },
        weeks: 10,
        signatures: place,
        contacts: 5,
      }),
    );
    const found = clinicLearning([...clinic, person({ weeks: 0.9, signatures: 9 })]);
    expect(found.mornings).toEqual({
      ...{ people: 5, asked: 250, answered: 150 },
      share: { low: 0.4, middle: 0.6, high: 0.8 },
    });
    expect(found.sessions).toEqual({
      ...{ people: 5, planned: 50, done: 25 },
      share: { low: 0.3, middle: 0.5, high: 0.7 },
    });
    // Under a dose for less than a week: no rate of a week.
    expect(found.work).toEqual({
      ...{ people: 5, weeks: 50, signatures: 10, contacts: 25 },
      signaturesAWeek: { low: 0.1, middle: 0.2, high: 0.3 },
      contactsAWeek: { low: 0.5, middle: 0.5, high: 0.5 },
    });
  });
});

describe('dose reached and outcomes by method', () => {
  const of = (shares: readonly number[], outcome: LearnedOfPerson['methods'][number]['outcome']) =>
    person({ methods: [{ method: 'low-load', shares, outcome }] });
  const clinic = [
    of([1.2, 0.8], 'better'),
    of([1], 'better'),
    of([1.5], 'within-error'),
    of([0.5], 'worse'),
    of([1.1], 'better'),
    of([], 'not-judged'),
  ];
  const figuresOf = (all: readonly LearnedOfPerson[], method = 'low-load') =>
    clinicLearning(all).methods.find((one) => one.method === method)!.figures;

  it('have each their own denominator, with the score interval of the share', () => {
    expect(figuresOf(clinic)).toEqual({
      people: 6,
      // In order: 0.5 0.8 1 1.1 1.2 1.5.
      dose: {
        ...{ people: 5, exercises: 6, share: { low: 0.8, middle: 1, high: 1.2 } },
        above: { count: 3, of: 5, interval: wilsonInterval(3, 5) },
      },
      outcomes: {
        people: 5,
        better: { count: 3, of: 5, interval: wilsonInterval(3, 5) },
        worse: { count: 1, of: 5, interval: wilsonInterval(1, 5) },
        'within-error': { count: 1, of: 5, interval: wilsonInterval(1, 5) },
      },
    });
  });

  it.each([
    [1, true],
    [4, true],
    [5, false],
  ])('of %i people are left out: %s, also within a larger group', (count, isLeftOut) => {
    const some = clinic.slice(0, count);
    expect(figuresOf(some) === null).toBe(isLeftOut);
    const unsettled = many(9, { methods: [{ method: 'low-load', shares: [], outcome: 'not-judged' }] });
    const within = figuresOf([...some, ...unsettled])!;
    expect([within.dose === null, within.outcomes === null]).toEqual([isLeftOut, isLeftOut]);
    expect(within.people).toBe(count + 9);
  });

  it('of a method nobody has had stand with noughts', () => {
    expect(figuresOf(clinic, 'occlusion')).toMatchObject({ people: 0, dose: { exercises: 0 } });
  });
});

it('no figure names a person: a clinic of four has none at all', () => {
  const four = many(4, {
    signs: [{ urgency: 'routine', hours: 2 }],
    mornings: { asked: 3, answered: 1 },
    sessions: { planned: 2, done: 1 },
    weeks: 2,
    methods: [{ method: 'variation', shares: [1], outcome: 'better' }],
  });
  const { contact, contactBy, mornings, sessions, work, methods } = clinicLearning(four);
  expect([contact, contactBy, mornings, sessions, work]).toEqual([null, null, null, null, null]);
  expect(methods.find(({ method }) => method === 'variation')!.figures).toBeNull();
});

describe('the score interval', () => {
  // https://rstudio-pubs-static.s3.amazonaws.com/1367507_eef7a4d0fb5347a8a820fe3c10141369.html: 6 of the 32 cars of a
  // public data set go 25 miles or more to the gallon; the page works the interval out to eight figures.
  it('is that of a published worked example', () => {
    const { low, high } = wilsonInterval(6, 32)!;
    expect(low).toBeCloseTo(0.08889545, 8);
    expect(high).toBeCloseTo(0.35309155, 8);
  });

  // Newcombe 1998, Statistics in Medicine 17: 857–872, table I. From memory.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('of %i of %i is that of the comparison of methods', (count, of, low, high) => {
    const interval = wilsonInterval(count, of)!;
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });
});
