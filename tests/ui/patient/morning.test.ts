/** The next-morning check on the phone. */
import { describe, expect, it } from 'vitest';
import {
  beginMorning,
  type MorningDraft,
  type MorningEvent,
  morningReducer,
} from '#ui/patient/morning/morning.ts';
import { lastMorningOf, morningEntryOf } from '#ui/patient/morning/morning-entry.ts';
import { morningRows } from '#ui/patient/morning/morning-rows.ts';
import { takenUp } from '#ui/patient/morning/two-mornings.ts';

const begin = (): MorningDraft =>
  beginMorning({
    entryId: 'morning-1',
    ownerId: 'p',
    day: '2026-03-09',
    zone: 'Europe/Dublin',
    asksStiffness: true,
    asksSwelling: true,
    joints: ['right-knee'],
  });

const play = (draft: MorningDraft, ...events: readonly MorningEvent[]) =>
  events.reduce(morningReducer, draft);

const pain: MorningEvent = { type: 'answer', joint: 'right-knee', answer: { pain: 3 } };

describe('two mornings half answered', () => {
  const [yesterday, today] = [{ ...begin(), day: '2026-03-08' }, begin()];

  it('neither takes the place of the other', () => {
    const second = takenUp('2026-03-09', yesterday, null);
    expect(second).toEqual({ running: null, aside: yesterday });
    expect(takenUp('2026-03-08', today, second.aside)).toEqual({ running: yesterday, aside: today });
  });

  it('one that was sent is not gone on with', () => {
    const sent = { ...today, endedAt: 9 };
    expect(takenUp('2026-03-09', sent, null)).toEqual({ running: null, aside: null });
  });
});

describe('the morning check', () => {
  it('begins with not one answer, and sends what was not answered as missing', () => {
    const entry = morningEntryOf(begin(), 5);
    expect(entry).toMatchObject({ redFlags: null, extraPainRelief: null, fatigueState: 'not-applicable' });
    expect(entry.joints[0]).toMatchObject({
      pain: null,
      stiffnessMinutes: null,
      swelling: null,
      flare: null,
    });
    expect(morningRows(begin()).map((row) => row.value)).toEqual(Array(6).fill('not answered'));
  });

  it('takes four taps when all is usual: the pain, continue, all of this is right, send', () => {
    const done = play(begin(), pain, { type: 'next' }, { type: 'usual', last: {} }, { type: 'sent', now: 9 });
    expect(done.step).toBe('done');
    expect(morningEntryOf(done, 10)).toMatchObject({
      redFlags: [],
      extraPainRelief: false,
      answeredAt: 9,
      joints: [{ joint: 'right-knee', pain: 3, stiffnessMinutes: 0, swelling: 'none', flare: false }],
    });
  });

  it('says "as last time" with what was said last time', () => {
    const last = { 'right-knee': { stiffnessMinutes: 15, swelling: 'slight' } } as const;
    const done = play(begin(), pain, { type: 'next' }, { type: 'usual', last });
    expect(morningEntryOf(done, 10).joints[0]).toMatchObject({ stiffnessMinutes: 15, swelling: 'slight' });
  });

  it('asks each question when not all is usual, warning signs first', () => {
    const draft = play(begin(), pain, { type: 'next' }, { type: 'not-usual' });
    expect(draft.step).toBe('flags');
    expect(draft.flags).toBeNull();
  });

  it('stops at a warning sign with advice, and what was answered is kept', () => {
    const draft = play(begin(), pain, { type: 'flags', flags: ['dark-urine'], now: 7 });
    expect(draft).toMatchObject({ step: 'care', endedAt: 7 });
    expect(morningEntryOf(draft, 8)).toMatchObject({ redFlags: ['dark-urine'], joints: [{ pain: 3 }] });
  });

  it('lets each answer be changed from the check page, also after the short way', () => {
    const draft = play(
      begin(),
      pain,
      { type: 'next' },
      { type: 'usual', last: {} },
      { type: 'change', step: 'stiffness:right-knee' },
      { type: 'answer', joint: 'right-knee', answer: { stiffnessMinutes: 20 } },
      { type: 'next' },
    );
    expect(draft.step).toBe('check');
    expect(morningEntryOf(draft, 9).joints[0]?.stiffnessMinutes).toBe(20);
  });

  it.each([
    ['none', true],
    ['slight', true],
    ['clear', false],
    ['severe', false],
  ] as const)('offers %s swelling as "as last time" the next day: %s', (swelling, isOffered) => {
    const draft = play(begin(), {
      type: 'answer',
      joint: 'right-knee',
      answer: { swelling, stiffnessMinutes: 5 },
    });
    expect('right-knee' in lastMorningOf(draft)).toBe(isOffered);
  });
});

it('answers given again name the entry they change; first ones name none', () => {
  const again = beginMorning({ ...begin(), entryId: 'morning-2', amends: 'morning-1' });
  expect(morningEntryOf(again, 1)).toMatchObject({ entryId: 'morning-2', amends: 'morning-1' });
  expect('amends' in morningEntryOf(begin(), 1)).toBe(false);
});
