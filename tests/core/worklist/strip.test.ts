/** Four weeks as figures and words: what was answered against the usual, and nothing about what was not. */
import { describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { addDays } from '#core/time/day.ts';
import {
  type SignedVersion,
  type StripInput,
  type StripMorning,
  stripDays,
  stripFactsFrom,
  stripFrom,
  stripOf,
  stripVersions,
} from '#core/worklist/strip.ts';
import { figuresOf, stripInWords } from '#core/worklist/strip-words.ts';

const today = '2026-04-20';
const knee = 'right-knee';

const doseOf = (over: Partial<Extract<Dose, { method: 'low-load' }>> = {}): Dose =>
  ({
    method: 'low-load',
    exerciseId: 'knee-extension-seated',
    side: 'right',
    sets: 3,
    repetitions: { low: 10, high: 12 },
    loadKg: 4,
    ...over,
  }) as Dose;

const version = (over: Partial<SignedVersion> = {}): SignedVersion => ({
  itemId: 'a',
  version: 1,
  dose: doseOf(),
  joints: [knee],
  signedOn: '2026-03-01',
  endedOn: null,
  ...over,
});

const morning = (day: string, pain: number | null, joint: StripMorning['joint'] = knee): StripMorning => ({
  day,
  joint,
  pain,
});

const keptFrom = (versions: readonly SignedVersion[], from: string) =>
  stripFactsFrom({ versions: stripVersions(versions), mornings: [], usuals: [] }, from).versions;

type Over = Partial<Omit<StripInput, 'versions'>> & { readonly versions?: readonly SignedVersion[] };

const input = ({ versions = [version()], ...over }: Over = {}): StripInput => ({
  today,
  about: null,
  mornings: [],
  usuals: [{ joint: knee, usual: 2, usualTop: 3 }],
  ...over,
  versions: keptFrom(versions, stripFrom(today)),
});

const dayOf = (over: Over, day: string) => stripOf(input(over)).days.find((one) => one.day === day)!;

describe('the days of a strip', () => {
  it('are the 28 that end today', () => {
    const { days } = stripOf(input());
    expect(days).toHaveLength(stripDays);
    expect([days[0]!.day, days.at(-1)!.day]).toEqual([stripFrom(today), today]);
    expect(addDays(stripFrom(today), 27)).toBe(today);
  });

  it('count as missing where an answer was due and none came, or none was given, and never as 0', () => {
    expect(dayOf({}, '2026-04-19')).toMatchObject({ pain: null, isMissing: true });
    expect(dayOf({ mornings: [morning('2026-04-19', null)] }, '2026-04-19')).toMatchObject({
      pain: null,
      isMissing: true,
    });
    expect(dayOf({ mornings: [morning('2026-04-19', 0)] }, '2026-04-19')).toMatchObject({
      pain: 0,
      isMissing: false,
    });
  });

  it('are not missing before anything was due, nor today while it may still be answered', () => {
    const versions = [version({ signedOn: '2026-04-10' })];
    expect(dayOf({ versions }, '2026-04-09').isMissing).toBe(false);
    expect(dayOf({ versions }, '2026-04-10').isMissing).toBe(false);
    expect(dayOf({ versions }, '2026-04-11').isMissing).toBe(true);
    expect(dayOf({ versions }, today).isMissing).toBe(false);
    expect(stripOf(input({ versions: [] })).days.some(({ isMissing }) => isMissing)).toBe(false);
  });

  it('show the highest of several answers that stand for one morning', () => {
    const mornings = [morning('2026-04-18', 3), morning('2026-04-18', 5), morning('2026-04-18', null)];
    expect(dayOf({ mornings }, '2026-04-18').pain).toBe(5);
  });
});

describe('the dose of a strip', () => {
  const stepped = [version(), version({ version: 2, dose: doseOf({ loadKg: 5 }), signedOn: '2026-04-10' })];

  it('is a share of the first signed dose, from the day the next was signed', () => {
    expect(dayOf({ versions: stepped }, '2026-04-09').share).toBe(1);
    expect(dayOf({ versions: stepped }, '2026-04-10').share).toBe(1.25);
  });

  it('is not known from the day it ended, nor where two doses cannot be compared', () => {
    const ended = [version({ endedOn: '2026-04-10' })];
    expect([
      dayOf({ versions: ended }, '2026-04-09').share,
      dayOf({ versions: ended }, '2026-04-10').share,
    ]).toEqual([1, null]);
    const plank = { method: 'variation', effectiveLoadKg: null, addedKg: 0 } as never;
    const other = [version(), version({ version: 2, dose: doseOf(plank), signedOn: '2026-04-10' })];
    other[1] = { ...other[1]!, dose: { ...other[1]!.dose, exerciseId: 'x' } };
    expect(dayOf({ versions: other }, '2026-04-12').share).toBeNull();
  });

  it('keeps of an exercise only what was in force in the four weeks, still as a share of the first of all', () => {
    const early = [
      version(),
      version({ version: 2, dose: doseOf({ loadKg: 6 }), signedOn: '2026-03-10' }),
      version({ version: 3, dose: doseOf({ loadKg: 5 }), signedOn: '2026-04-10' }),
    ];
    const kept = keptFrom(early, stripFrom(today));
    expect(kept.map(({ signedOn, share }) => [signedOn, share])).toEqual([
      ['2026-03-23', 1.5],
      ['2026-04-10', 1.25],
    ]);
    // Signed on the first of the 28 days, the next is in force on all of them; a day later it is not.
    const on = (signedOn: string) => keptFrom([version(), version({ version: 2, signedOn })], '2026-03-24');
    expect([on('2026-03-23').length, on('2026-03-24').length, on('2026-03-25').length]).toEqual([1, 1, 2]);
  });

  it('is that of the exercise of the joint whose dose changed last', () => {
    const versions = [
      ...stepped,
      version({ itemId: 'b', signedOn: '2026-04-12', dose: doseOf({ exerciseId: 'b' }) }),
      version({
        itemId: 'c',
        signedOn: '2026-04-15',
        joints: ['left-knee'],
        dose: doseOf({ exerciseId: 'c' }),
      }),
    ];
    expect(stripOf(input({ versions, about: knee })).exerciseId).toBe('b');
  });
});

describe('the joint of a strip', () => {
  const usuals = [
    { joint: knee, usual: 2, usualTop: 2 },
    { joint: 'left-knee', usual: 5, usualTop: 5 },
  ] as const;
  it('is the one the item is about, else the one furthest over its usual', () => {
    const mornings = [morning('2026-04-20', 4), morning('2026-04-20', 5, 'left-knee')];
    expect(stripOf(input({ mornings, usuals })).joint).toBe(knee);
    expect(stripOf(input({ mornings, usuals, about: 'left-knee' })).joint).toBe('left-knee');
  });
});

describe('the fact in figures', () => {
  it.each([
    ['2026-04-20', '6/10 this morning, usual 2 to 3'],
    ['2026-04-19', '6/10 yesterday morning, usual 2 to 3'],
    ['2026-04-18', '6/10 on 18 Apr, usual 2 to 3'],
  ])('of %s is said with its day: %s', (day, words) => {
    expect(figuresOf(stripOf(input({ mornings: [morning(day, 6)] })), today)).toBe(words);
  });

  it('says that the usual is not set, names one figure where there is one, and says nothing without an answer', () => {
    const mornings = [morning(today, 0)];
    expect(figuresOf(stripOf(input({ mornings, usuals: [] })), today)).toBe(
      '0/10 this morning, usual not set',
    );
    const usuals = [{ joint: knee, usual: 2, usualTop: 2 }] as const;
    expect(figuresOf(stripOf(input({ mornings, usuals })), today)).toBe('0/10 this morning, usual 2');
    expect(figuresOf(stripOf(input({ mornings: [morning(today, null)] })), today)).toBeNull();
  });
});

describe('the picture in words', () => {
  it('tells the steps of the dose, the answers, those over the usual, and those that did not come', () => {
    const versions = [
      version({ signedOn: '2026-04-15' }),
      version({ version: 2, dose: doseOf({ loadKg: 5 }), signedOn: '2026-04-18' }),
    ];
    const mornings = [morning('2026-04-16', 3), morning('2026-04-17', 4)];
    expect(stripInWords(stripOf(input({ versions, mornings })), today)).toBe(
      '28 days, right knee: of the first dose 100 % from 15 Apr, 125 % from 18 Apr; 2 mornings answered, pain 3 to 4, 1 over the usual; 2 without an answer.',
    );
  });

  it('calls nothing answered where nothing was', () => {
    expect(stripInWords(stripOf(input({ versions: [], usuals: [] })), today)).toBe(
      '28 days, no dose in force that can be compared; no morning answered; 0 without an answer.',
    );
  });
});
