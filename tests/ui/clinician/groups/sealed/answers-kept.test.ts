/** What waits on a tablet two clinicians share: one answer that stays keeps no other from going out. */
import { beforeEach, describe, expect, it } from 'vitest';
import { phoneEntriesKey } from '#server/phone-entries.ts';
import type { Runtime } from '#server/runtime.ts';
import { entryOf } from '#ui/clinician/groups/group-entry.ts';
import {
  type Answered,
  answerKey,
  asideAnswers,
  forgetAside,
  keepAnswer,
  sendAnswers,
  takeBackAnswer,
  waitingAnswers,
  whoSignsIn,
} from '#ui/clinician/groups/sealed/answers-kept.ts';
import { before, person } from '../person-of-hour.ts';
import { storeHere } from './kept-here.ts';

const keys = { phoneEntries: Buffer.alloc(32, 9), earlierPhoneEntries: [] } as unknown as Runtime['keys'];
const ada = { takenBy: 'ada', takerName: 'Ada Verrin' };
const bo = { takenBy: 'bo', takerName: 'Bo Lind' };
const answered: Answered = {
  ...{ hourId: 'h1', patientId: 'p1', ...ada },
  ...{ clinicKey: phoneEntriesKey(keys, 'a'), sealedAt: 500, clockLacks: 0, state: 'finished' },
};
const keyOf = (entryId: string, over: Partial<Answered> = {}) => answerKey({ ...answered, ...over, entryId });

let tablet: ReturnType<typeof storeHere>;
beforeEach(() => {
  tablet = storeHere();
});

/** A set done, or what is told here. */
const keep = (entryId: string, over: Partial<Answered> = {}, typed: object = {}) => {
  const work = { 'as:line1': 'planned', 'set:line1:1': '20' };
  const entry = entryOf({ ...person(), entryId }, { ...before, ...work, ...typed }, { now: 2000 });
  return keepAnswer(tablet, { ...answered, ...over }, entry);
};

type Answers = Readonly<Record<string, () => Response>>;
const took = () => Response.json({ stored: 'stored' });
const problem = (name: string, status: number) => () => Response.json({ problem: name }, { status });

/** What the clinic answers, by entry; what stands nowhere is taken. */
const send = (answers: Answers, isOpen = false) => {
  const fetch = async (_: unknown, init?: RequestInit) =>
    (answers[JSON.parse(String(init?.body)).entryId] ?? took)();
  return sendAnswers(tablet, {
    fetch: fetch as typeof globalThis.fetch,
    wall: () => 0,
    isOpen,
    isAgain: true,
  });
};
const left = async () => (await waitingAnswers(tablet)).map(({ entryId }) => entryId);

it('gives a connection up that says nothing, so that what comes behind it is not held back', async () => {
  await keep('a1');
  const signals: unknown[] = [];
  const fetch = async (_: unknown, init?: RequestInit) => {
    signals.push(init?.signal);
    throw new DOMException('Nothing was said.', 'TimeoutError');
  };
  const sent = await sendAnswers(tablet, {
    fetch: fetch as typeof globalThis.fetch,
    wall: () => 0,
    isOpen: false,
    isAgain: true,
  });
  expect(signals).toEqual([expect.any(AbortSignal)]);
  expect(sent).toEqual([{ key: keyOf('a1'), as: 'no-answer' }]);
  expect(await left()).toEqual(['a1']);
});

describe('one answer that stays on the tablet', () => {
  it.each([
    ['of somebody who is not signed in', problem('not-yours', 403), 'not-yours'],
    ['the server stumbles over', problem('failed', 500), 'fault'],
  ] as const)('%s keeps no other back, warning signs neither', async (_, answer, as) => {
    await keep('a1', {}, { 'signs-now': 'chest-pain' });
    await keep('b1', bo, { 'signs-now': 'chest-pain' });
    await keep('b2', bo);
    expect(await send({ a1: answer })).toEqual([
      { key: keyOf('a1'), as },
      { key: keyOf('b1', bo), as: 'arrived' },
      { key: keyOf('b2', bo), as: 'arrived' },
    ]);
    expect(await left()).toEqual(['a1']);
  });

  it('because nobody is signed in, or too much was asked at once, ends the round', async () => {
    await keep('a1');
    await keep('b1', bo);
    expect(await send({ a1: problem('signed-out', 401) })).toEqual([{ key: keyOf('a1'), as: 'signed-out' }]);
    expect(await send({ a1: problem('too-often', 429) })).toEqual([{ key: keyOf('a1'), as: 'no-answer' }]);
    expect(await left()).toEqual(['a1', 'b1']);
  });
});

describe('who has to sign in', () => {
  const waiting = async (as: 'not-yours' | 'signed-out' | 'fault') =>
    whoSignsIn(await waitingAnswers(tablet), [{ key: keyOf('a1'), as }]);
  it('is who took along what was not taken from another, and everybody where nobody is signed in', async () => {
    await keep('a1');
    await keep('a2');
    await keep('b1', bo);
    expect(await waiting('not-yours')).toEqual(['Ada Verrin']);
    expect(await waiting('signed-out')).toEqual(['Ada Verrin', 'Bo Lind']);
    expect(await waiting('fault')).toEqual([]);
  });
});

describe('an answer with a warning sign that waits', () => {
  it.each([
    ['another clinician', bo],
    ['the same clinician, who sealed the hour again', { sealedAt: 900 }],
  ])('is not written over by a press of %s', async (_, over) => {
    await keep('s1', {}, { 'signs-now': 'chest-pain' });
    await keep('s1', { ...over, state: 'begun' });
    const waiting = await waitingAnswers(tablet);
    expect(waiting.map(({ state, isUrgent }) => [state, isUrgent])).toEqual([
      ['finished', true],
      ['begun', false],
    ]);
  });

  it('is written over by the next press of its own sealing', async () => {
    await keep('s1', { state: 'begun' });
    await keep('s1');
    expect((await waitingAnswers(tablet)).map(({ state }) => state)).toEqual(['finished']);
  });
});

describe('what was only begun', () => {
  const without = { 'as:line1': undefined, 'set:line1:1': undefined };
  it('waits by a set or a warning sign, and without either is no session of anybody', async () => {
    await keep('a1', { state: 'begun' });
    await keep('a2', { state: 'begun' }, { ...without, 'signs-now': 'chest-pain' });
    await keep('a3', { state: 'begun' }, without);
    expect((await left()).toSorted()).toEqual(['a1', 'a2']);
    expect(await send({})).toHaveLength(2);
  });

  it('waits no more once its only set was taken out', async () => {
    await keep('a1', { state: 'begun' });
    await keep('a1', { state: 'begun' }, without);
    expect(await left()).toEqual([]);
  });

  it('by mistake is taken back; what was finished, with a set or none, is not', async () => {
    await keep('a1', { state: 'begun' });
    await keep('a2');
    await keep('a3', {}, without);
    for (const entryId of ['a1', 'a2', 'a3']) await takeBackAnswer(tablet, { ...answered, entryId });
    expect(await left()).toEqual(['a2', 'a3']);
  });
});

describe('what the clinic put aside beside another session', () => {
  const conflict = () => Response.json({ stored: 'conflict' });
  it('leaves the tablet but for its key, by which the hour tells so when it is opened again', async () => {
    await keep('a1');
    await keep('a2');
    expect(await send({ a1: conflict })).toMatchObject([{ as: 'aside' }, { as: 'arrived' }]);
    expect(await left()).toEqual([]);
    expect(await asideAnswers(tablet)).toEqual([keyOf('a1')]);
    expect(tablet.held.size).toBe(1);
    await forgetAside(tablet);
    expect(await asideAnswers(tablet)).toEqual([]);
  });
});
