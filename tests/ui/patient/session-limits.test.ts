/** What takes work away in a session: news, the pain now, and the clock of a cuff. */
import { describe, expect, it } from 'vitest';
import type { Today } from '#core/decision/answers.ts';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import type { Score, SessionDraft } from '#ui/patient/session/draft.ts';
import type { SessionEvent } from '#ui/patient/session/events.ts';
import { isTimeUp, restrictedSeconds } from '#ui/patient/session/restriction.ts';
import { stepsOf } from '#ui/patient/session/steps.ts';
import { begin, eligibility, next, none, oneSet, onlyCuff, play } from './session-play.ts';
import { cuffDose, exercise, today, weightDose } from './views.ts';

describe('anything new since last time', () => {
  it('leaves the cuff off and nothing else, and gives it back when corrected', () => {
    const view = today({ exercises: [exercise('weight', weightDose), exercise('cuff', cuffDose)] });
    const told = play(begin(view), { type: 'news', news: ['medicine'] });
    expect(stepsOf(told).some((step) => step.startsWith('cuff-on'))).toBe(false);
    expect(stepsOf(told)).toContain('set:0:1');
    expect(stepsOf(told)).toContain('offer');
    const corrected = play(told, { type: 'news', news: [] });
    expect(stepsOf(corrected)).toContain('cuff-on:1');
    expect(stepsOf(corrected)).not.toContain('offer');
  });
});

describe('what the answers about pain leave of today', () => {
  /** As it may come with the day: 5 eases, 8 rests the joint, 10 stops the day, not known eases. */
  const table: PainLookup = {
    joint: 'right-knee',
    byPain: [
      ...Array<Today>(5).fill('as-planned'),
      ...Array<Today>(3).fill('bad-day'),
      ...Array<Today>(2).fill('rest-this-joint'),
      'none',
    ],
    whenUnknown: 'bad-day',
  };
  const view = today({
    painLookups: [table],
    exercises: [exercise('knee', weightDose), exercise('arm', weightDose, { joints: ['right-elbow'] })],
  });
  const answered = (score: Score | null, isEasierSession = false) =>
    play(
      begin(view, isEasierSession),
      none('before'),
      ...(score === null ? [] : [{ type: 'score' as const, key: 'before:right-knee', score }]),
      next,
      { type: 'usual', isUsual: true },
    );
  const setsOf = (draft: SessionDraft) =>
    draft.items.map((item) => (item.leftOut === null ? item.dose.sets : 0));

  it.each([
    [4, [3, 3], 'item:0'],
    [5, [2, 3], 'offer'],
    [7, [2, 3], 'offer'],
    [8, [0, 3], 'offer'],
    [9, [0, 3], 'offer'],
    [10, [0, 0], 'offer'],
    ['unknown', [2, 3], 'offer'],
    [null, [2, 3], 'offer'],
  ] as const)('%s in the knee leaves %j sets of the knee and of the arm', (score, sets, step) => {
    const draft = answered(score);
    expect(setsOf(draft)).toEqual(sets);
    expect(draft.step).toBe(step);
  });

  it('a day with nothing left goes straight on to sending the answers', () => {
    expect(play(answered(10), next).step).toBe('check');
  });

  it('never makes a lighter day chosen by the patient a full one', () => {
    expect(setsOf(answered(2, true))).toEqual([2, 2]);
  });

  it('can be made lighter from the first page of an exercise, for all that has not been begun', () => {
    const lighter = play(answered(2), { type: 'lighter' });
    expect(setsOf(lighter)).toEqual([2, 2]);
    expect(lighter.kind).toBe('bad-day');
    expect(lighter.step).toBe('item:0');
    const begun = play(answered(2), next, ...oneSet(0, 1, 15, 2_000_000), { type: 'lighter' });
    expect(setsOf(begun)).toEqual([3, 2]);
    expect(begun.kind).toBe('full');
  });

  it('goes back to what was planned when the patient thinks better of it, and never past what today left', () => {
    const lighter = { type: 'lighter' } as const;
    const back = { type: 'not-lighter' } as const;
    expect(play(answered(2), lighter, back)).toEqual(answered(2));
    const eased = play(answered(5), next);
    expect(setsOf(play(eased, lighter))).toEqual([2, 2]);
    expect(setsOf(play(eased, lighter, back))).toEqual([2, 3]);
    const begun = play(answered(2), next, ...oneSet(0, 1, 15, 2_000_000), lighter, back);
    expect(setsOf(begun)).toEqual([3, 3]);
    expect(begun.kind).toBe('full');
    const done = play(answered(2), lighter, next, ...oneSet(0, 1, 15, 2_000_000), back);
    expect(setsOf(done)).toEqual([2, 3]);
    expect(done.items[0]?.isEasierSession).toBe(true);
  });

  it('is given back when the answer is corrected', () => {
    const corrected = play(
      answered(8),
      { type: 'go', step: 'before:right-knee' },
      { type: 'score', key: 'before:right-knee', score: 2 },
      next,
    );
    expect(setsOf(corrected)).toEqual([3, 3]);
  });
});

describe('a cuff', () => {
  const on = play(
    begin(onlyCuff),
    ...eligibility,
    { type: 'load', item: 0, loadKg: 3 },
    next,
    { type: 'cuff-on', item: 0, now: 10_000 },
    next,
  );
  const item = (draft: SessionDraft) => draft.items[0]!;

  it('runs by the clock on the wall: its time goes on while the phone sleeps', () => {
    expect(restrictedSeconds(item(on), 10_000 + 300_000)).toBe(300);
  });

  it.each([
    [479, false],
    [480, true],
    [481, true],
  ])('after %i of at most 480 seconds is called off: %s', (seconds, isUp) => {
    expect(isTimeUp(item(on), 10_000 + seconds * 1000)).toBe(isUp);
  });

  it.each([
    [10_001, false],
    [10_000, false],
    [9_999, true],
  ])('put on at 10,000, is called off by a clock that shows %i: %s', (now, isUp) => {
    expect(isTimeUp(item(on), now)).toBe(isUp);
  });

  it('let down at a time before it was put on counts as nothing, never as less', () => {
    const down = play(on, { type: 'cuff-down', item: 0, now: 5_000 });
    expect(restrictedSeconds(item(down), 20_000)).toBe(0);
  });

  it('pressed on twice keeps its first start', () => {
    expect(item(play(on, { type: 'cuff-on', item: 0, now: 99_000 })).restrictions).toHaveLength(1);
  });

  it('comes off by the stop button, is followed by the look at the toes while seated, and then the reason', () => {
    const stopped = play(on, { type: 'cuff-stop', item: 0, set: 1 });
    expect(stopped.step).toBe('cuff-off:0');
    const off = play(stopped, { type: 'cuff-off', item: 0, now: 60_000 });
    expect(off.step).toBe('limb:0');
    const sign = (name: 'colour' | 'feeling'): SessionEvent => ({
      type: 'limb',
      item: 0,
      isLater: false,
      sign: name,
      answer: 'usual',
    });
    expect(play(off, sign('colour'), next, sign('feeling'), next).step).toBe('stop-count:0:1');
  });
});
