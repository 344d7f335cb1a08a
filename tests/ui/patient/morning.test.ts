/** The next-morning check on the phone. */
import '#ui/patient/asked-words.ts';
import { describe, expect, it } from 'vitest';
import type { LastOfJoint } from '#core/record/as-yesterday.ts';
import { beginMorning, type MorningEvent, morningReducer } from '#ui/patient/morning/morning.ts';
import type { MorningDraft } from '#ui/patient/morning/morning-draft.ts';
import { morningEntryOf } from '#ui/patient/morning/morning-entry.ts';
import { morningRows } from '#ui/patient/morning/morning-rows.ts';
import { offered } from '#ui/patient/morning/morning-steps.ts';
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

const lastOf = (joint: LastOfJoint['joint'], more: Partial<LastOfJoint> = {}): LastOfJoint => ({
  joint,
  stiffnessMinutes: 15,
  underPain: 4,
  ...more,
});
/** As the day brings it: yesterday was quiet, and usual pain is 2. */
const known = (more: Partial<MorningDraft> = {}): MorningDraft => ({
  ...begin(),
  asYesterday: { joints: [lastOf('right-knee')] },
  ...more,
});

const scored = (pain: number | 'unknown', joint: LastOfJoint['joint'] = 'right-knee') =>
  [{ type: 'answer', joint, answer: { pain } }, { type: 'next' }] as const satisfies readonly MorningEvent[];
const noSigns: MorningEvent = { type: 'flags', flags: [], now: 9 };
const pain: MorningEvent = scored(3)[0];
/** Each question after the pain, answered as on a usual morning. */
const singly: readonly MorningEvent[] = [
  { type: 'answer', joint: 'right-knee', answer: { stiffnessMinutes: 5 } },
  { type: 'next' },
  { type: 'answer', joint: 'right-knee', answer: { swelling: 'none' } },
  { type: 'next' },
  { type: 'answer', joint: 'right-knee', answer: { flare: false } },
  { type: 'next' },
  { type: 'relief', relief: false },
  { type: 'next' },
];

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
    expect(morningRows(begin()).map((row) => row.value)).toEqual(Array(5).fill('not answered'));
  });

  it('takes three presses when the rest is as yesterday, and sends yesterday’s values with how it was answered', () => {
    const done = play(known(), ...scored(3), { type: 'usual' }, noSigns);
    expect(done.step).toBe('done');
    expect(morningEntryOf(done, 10)).toMatchObject({
      redFlags: [],
      extraPainRelief: false,
      answeredAt: 9,
      via: 'as-yesterday',
      joints: [{ joint: 'right-knee', pain: 3, stiffnessMinutes: 15, swelling: 'none', flare: false }],
    });
  });

  it('never offers “as yesterday” where yesterday did not come with the day, and states no value of it', () => {
    for (const asYesterday of [undefined, null, 'singly'] as const) {
      const draft = play({ ...begin(), asYesterday }, ...scored(2));
      expect(draft.step).toBe('stiffness:right-knee');
      expect(offered(draft)).toBeNull();
      const forced = play(draft, { type: 'usual' });
      expect(morningEntryOf(forced, 10).joints[0]).toMatchObject({ stiffnessMinutes: null, swelling: null });
    }
  });

  it.each([
    [3, 'usual'],
    [4, 'stiffness:right-knee'],
    [5, 'stiffness:right-knee'],
    ['unknown', 'stiffness:right-knee'],
  ] as const)('a pain of %s where it is offered under 4 leads to %s', (value, step) => {
    expect(play(known(), ...scored(value)).step).toBe(step);
  });

  it('asks each question when something is different, the warning signs last', () => {
    const draft = play(known(), ...scored(3), { type: 'not-usual' });
    expect(draft.step).toBe('stiffness:right-knee');
    const asked = play(draft, ...singly);
    expect([asked.step, asked.flags]).toEqual(['flags', null]);
    expect(morningEntryOf(play(asked, noSigns), 10)).toMatchObject({ via: 'asked', redFlags: [] });
  });

  it('a morning asked singly is sent as such', () => {
    const done = play({ ...begin(), asYesterday: 'singly' }, ...scored(2), ...singly, noSigns);
    expect(morningEntryOf(done, 10).via).toBe('singly');
  });

  it('a pain changed to one that is asked about in full takes back what “as yesterday” answered', () => {
    const changed = play(
      known(),
      ...scored(2),
      { type: 'usual' },
      { type: 'change', step: 'pain:right-knee' },
      ...scored(6),
    );
    expect(morningEntryOf(changed, 10)).toMatchObject({
      extraPainRelief: null,
      joints: [{ pain: 6, stiffnessMinutes: null, swelling: null, flare: null }],
    });
    expect(play(changed, noSigns)).toMatchObject({ step: 'stiffness:right-knee', endedAt: null });
  });

  it('a ticked sign is asked about once more; then it stops with advice, and what was answered is kept', () => {
    const ticked = play(begin(), pain, { type: 'flags', flags: ['fainting'], now: 7 });
    expect(ticked).toMatchObject({ step: 'confirm', endedAt: null, flags: null });
    const meant = play(ticked, { type: 'confirm', isSlip: false, now: 8 });
    expect(meant).toMatchObject({ step: 'care', endedAt: 8 });
    expect(morningEntryOf(meant, 9)).toMatchObject({ redFlags: ['fainting'], joints: [{ pain: 3 }] });
  });

  it('a slip opens no warning sign, is stored, and the question is asked again', () => {
    const ticked = play(begin(), ...scored(2), ...singly, { type: 'flags', flags: ['fainting'], now: 7 });
    const slipped = play(ticked, { type: 'confirm', isSlip: true, now: 8 });
    expect(slipped).toMatchObject({ step: 'flags', flags: null, ticked: [], endedAt: null });
    const sent = morningEntryOf(play(slipped, noSigns), 9);
    expect(sent).toMatchObject({ redFlags: [], signSlips: ['fainting'] });
  });

  it('dark urine told on its own page is asked about once more as well', () => {
    const asks = play({ ...begin(), asksUrine: true }, ...scored(2));
    expect(asks.step).toBe('urine');
    const told = play(asks, { type: 'urine', urine: true });
    expect(told).toMatchObject({ step: 'confirm', endedAt: null });
    expect(play(told, { type: 'confirm', isSlip: false, now: 8 })).toMatchObject({ flags: ['dark-urine'] });
    expect(play(told, { type: 'confirm', isSlip: true, now: 8 })).toMatchObject({
      step: 'urine',
      urine: null,
    });
  });

  it('which form asked for the signs is stored: short, or the list once it was opened', () => {
    const short = play({ ...begin(), signForm: 'short' }, ...scored(2), ...singly);
    const wholeList = play(short, { type: 'whole-list' });
    const asked = (draft: MorningDraft) => morningEntryOf(play(draft, noSigns), 9).signsAsked;
    expect(asked(short)).toEqual([{ moment: 'morning', form: 'short', wording: 1 }]);
    expect(asked(wholeList)).toEqual([{ moment: 'morning', form: 'list', wording: null }]);
    expect(morningEntryOf(short, 9)).toMatchObject({ redFlags: null });
    expect('signsAsked' in morningEntryOf(short, 9)).toBe(false);
  });

  it('lets each answer be changed before it is sent, also after the short way', () => {
    const draft = play(
      known(),
      ...scored(3),
      { type: 'usual' },
      { type: 'change', step: 'pain:right-knee' },
      ...scored(1),
    );
    expect(draft.step).toBe('flags');
    expect(morningEntryOf(play(draft, noSigns), 9)).toMatchObject({
      via: 'as-yesterday',
      joints: [{ pain: 1, stiffnessMinutes: 15 }],
    });
  });

  it('sends which question about swelling was answered', () => {
    const draft = play(begin(), { type: 'answer', joint: 'right-knee', answer: { swelling: 'slight' } });
    expect(morningEntryOf(draft, 9).joints[0]).toMatchObject({
      swelling: 'slight',
      swellingState: 'asked',
      swellingQuestion: 'more-than-usual',
    });
  });

  it('an answer to the older question in a half-done check counts as not answered', () => {
    const old: MorningDraft = {
      ...begin(),
      byJoint: { 'right-knee': { pain: 3, stiffnessMinutes: 5, swelling: 'clear', flare: false } },
    };
    expect(morningEntryOf(old, 9).joints[0]).toMatchObject({ pain: 3, stiffnessMinutes: 5, swelling: null });
  });
});

it('answers given again name the entry they change; first ones name none', () => {
  const again = beginMorning({ ...begin(), entryId: 'morning-2', amends: 'morning-1' });
  expect(morningEntryOf(again, 1)).toMatchObject({ entryId: 'morning-2', amends: 'morning-1' });
  expect('amends' in morningEntryOf(begin(), 1)).toBe(false);
});
