/** The hour a tablet took along: opened by its PIN alone, and gone by time, by wrong tries and at sign-out. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  forgetHour,
  keepDrafts,
  keepHour,
  lookAtHour,
  mostTries,
  openHour,
} from '#ui/on-device/hour-kept.ts';
import { pinDigits, pinProblem, pinRounds } from '#ui/on-device/pin-seal.ts';
import { clockAt, readableIn, storeHere } from './kept-here.ts';

const pin = '804912';
const roster = { people: [{ firstName: 'Odo', plan: 'three sets of fifteen' }] };
const goneAt = 5_000_000;
const begun = 1_000_000;

/** The rounds that were asked for; the tests wait for few of them. */
let rounds: number[];
const deriveKey = crypto.subtle.deriveKey.bind(crypto.subtle);
const fewRounds = () =>
  vi.spyOn(crypto.subtle, 'deriveKey').mockImplementation((how, ...rest) => {
    const asked = how as Pbkdf2Params;
    rounds.push(asked.iterations);
    return deriveKey({ ...asked, iterations: 10 }, ...rest);
  });
afterEach(() => vi.restoreAllMocks());

let store: ReturnType<typeof storeHere>;
let clock: ReturnType<typeof clockAt>;
const seal = (now = begun) => keepHour(store, clock, roster, { pin, goneAt, now });
const open = (tried = pin) => openHour<typeof roster>(store, clock, tried);
beforeEach(async () => {
  rounds = [];
  fewRounds();
  store = storeHere();
  clock = clockAt(begun);
  await seal();
});

describe('the PIN of an hour', () => {
  it.each([
    ['12345', 'digits'],
    ['80491', 'digits'],
    ['804912', null],
    ['804912804912', null],
    ['8049128049123', 'digits'],
    ['80491a', 'digits'],
    ['111111', 'plain'],
    ['123456', 'plain'],
    ['987654', 'plain'],
    ['890123', 'plain'],
  ] as const)('%s: %s', (typed, problem) => {
    expect(pinProblem(typed)).toBe(problem);
  });

  it('has from 6 to 12 digits, and each try costs 600,000 rounds', async () => {
    await open();
    expect([pinDigits, pinRounds]).toEqual([{ least: 6, most: 12 }, 600_000]);
    expect(rounds).toEqual([600_000, 600_000]);
  });
});

describe('a sealed hour', () => {
  it('opens by its PIN, as it was sealed', async () => {
    expect(await open()).toMatchObject({ kind: 'open', roster });
  });

  it('holds neither the PIN, nor a key, nor anything readable of a person', () => {
    const kept = store.held.get('sealed-hour') as object;
    expect(Object.keys(kept).sort()).toEqual(['clockLacks', 'goneAt', 'highest', 'sealed', 'triesLeft']);
    expect(readableIn(store.held)).not.toMatch(/Odo|fifteen|804912/);
  });

  it('stays closed to another PIN, says how many tries are left, and forgets them once it was opened', async () => {
    expect(await open('804913')).toEqual({ kind: 'wrong', triesLeft: mostTries - 1 });
    expect(await open('804914')).toEqual({ kind: 'wrong', triesLeft: mostTries - 2 });
    expect(await open()).toMatchObject({ kind: 'open' });
    expect(await open('804913')).toEqual({ kind: 'wrong', triesLeft: mostTries - 1 });
  });

  it('is destroyed by the fifth wrong try in a row, also for its own PIN', async () => {
    for (let tried = 1; tried < mostTries; tried++) expect((await open('804913')).kind).toBe('wrong');
    expect(await open('804913')).toEqual({ kind: 'gone' });
    expect(store.held.size).toBe(0);
    expect(await open()).toEqual({ kind: 'gone' });
  });

  it('counts a try before it is made, so that closing the page in between wins none', async () => {
    const trying = open('804913');
    await Promise.resolve();
    await Promise.resolve();
    await Promise.resolve();
    expect(store.held.get('sealed-hour')).toMatchObject({ triesLeft: mostTries - 1 });
    await trying;
  });

  it.each([
    [goneAt - 1, 'open'],
    [goneAt, 'gone'],
    [goneAt + 1, 'gone'],
  ] as const)('at %i: %s', async (now, kind) => {
    clock.now = now;
    expect((await open()).kind).toBe(kind);
    expect(store.held.size).toBe(kind === 'open' ? 1 : 0);
  });

  it('is gone by the highest time that was seen, though the clock is set back', async () => {
    clock.now = goneAt - 1000;
    expect(await lookAtHour(store, clock)).toMatchObject({ now: goneAt - 1000 });
    clock.now = begun;
    expect(await lookAtHour(store, clock)).toMatchObject({ now: goneAt - 1000 });
    clock.now = goneAt;
    expect(await lookAtHour(store, clock)).toBeNull();
    clock.now = begun;
    expect((await open()).kind).toBe('gone');
  });

  it('that nobody looked at after its end lies there sealed, and is destroyed by the first look', async () => {
    clock.now = goneAt + 1;
    expect(store.held.size).toBe(1);
    clock.now = begun;
    expect((await open()).kind).toBe('open');
    clock.now = goneAt + 1;
    expect(await lookAtHour(store, clock)).toBeNull();
    expect(store.held.size).toBe(0);
  });

  it('goes by the clinic’s clock where the tablet’s is wrong', async () => {
    clock.now = 50;
    await seal(begun);
    clock.now = 50 + goneAt - begun - 1;
    expect((await open()).kind).toBe('open');
    clock.now += 1;
    expect((await open()).kind).toBe('gone');
  });

  it('does not open once its end was written later on the tablet', async () => {
    store.held.set('sealed-hour', { ...(store.held.get('sealed-hour') as object), goneAt: goneAt * 2 });
    expect((await open()).kind).toBe('wrong');
  });

  it('goes at sign-out with all that was pressed in it', async () => {
    const opened = await open();
    if (opened.kind === 'open') await keepDrafts(store, opened.key, { p1: 'pressed' });
    expect(store.held.size).toBe(2);
    await forgetHour(store);
    expect(store.held.size).toBe(0);
  });

  it('gives what was pressed back to the PIN alone, and keeps none once it is gone', async () => {
    const opened = await open();
    if (opened.kind !== 'open') throw new Error('It did not open.');
    await keepDrafts(store, opened.key, { p1: 'pressed' });
    expect(readableIn(store.held)).not.toMatch(/pressed/);
    expect(await open()).toMatchObject({ drafts: { p1: 'pressed' } });
    await forgetHour(store);
    await keepDrafts(store, opened.key, { p1: 'pressed' });
    expect(store.held.size).toBe(0);
  });

  it('takes the place of the one before, and nothing pressed in that one is opened with it', async () => {
    const opened = await open();
    if (opened.kind === 'open') await keepDrafts(store, opened.key, { p1: 'pressed' });
    await seal();
    expect(await open()).toMatchObject({ drafts: null });
  });
});
