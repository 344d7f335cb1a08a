/** A session on the phone: what a patient may rely on, step by step. */
import { describe, expect, it } from 'vitest';
import '#ui/patient/asked-words.ts';
import { checkRows, neededStep } from '#ui/patient/session/check-rows.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import { stepsOf } from '#ui/patient/session/steps.ts';
import {
  began,
  begin,
  eligibility,
  meant,
  next,
  none,
  oneSet,
  onlyCuff,
  onlyWeight,
  play,
} from './session-play.ts';
import { chairDose, exercise, today, weightDose } from './views.ts';

describe('a session that begins', () => {
  it('has not one answer in it', () => {
    const entry = sessionEntryOf(begin(), began);
    expect(entry.redFlags).toBeNull();
    expect(entry.extraPainRelief).toBeNull();
    expect(entry.sets).toEqual([]);
    expect(entry.joints).toEqual([
      {
        joint: 'right-knee',
        painBefore: null,
        painDuring: null,
        painAfter: null,
        twoHoursState: 'not-applicable',
        muscleBurn: null,
        cuffDiscomfort: null,
        gaveWay: null,
      },
    ]);
  });

  it('asks for warning signs first and then for the pain of each followed joint', () => {
    const view = today({ followedJoints: ['right-knee', 'left-hip'] });
    expect(stepsOf(begin(view)).slice(0, 3)).toEqual([
      'flags-before',
      'before:right-knee',
      'before:left-hip',
    ]);
  });

  it('leaves out what rests today and what is not planned, and takes the lighter dose where that is all that holds', () => {
    const view = today({
      exercises: [
        exercise('a', weightDose, { today: 'rest-this-joint' }),
        exercise('b', weightDose, { planned: false }),
        exercise('c', weightDose, { today: 'none' }),
        exercise('d', weightDose, { today: 'bad-day' }),
      ],
    });
    const { items } = begin(view);
    expect(items.map((item) => item.itemId)).toEqual(['d']);
    expect(items[0]?.dose.sets).toBe(2);
  });

  it('on a lighter day follows the signed lighter doses and says so in the record', () => {
    const draft = begin(today(), true);
    expect(draft.items.every((item) => item.dose.sets === 2)).toBe(true);
    expect(sessionEntryOf(draft, began).kind).toBe('bad-day');
  });
});

describe('answers', () => {
  it('that were not given go out as not given, never as zero or no', () => {
    const draft = play(begin(onlyWeight), none('before'), next, next);
    const entry = sessionEntryOf(draft, began);
    expect(entry.joints[0]?.painBefore).toBeNull();
    expect(entry.extraPainRelief).toBeNull();
    const rows = new Map(checkRows(draft).map((row) => [row.step, row.value]));
    expect(rows.get('before:right-knee')).toBe('not answered');
    expect(rows.get('burn')).toBe('not answered');
  });

  it('"I don’t know" is shown as that and sent as missing', () => {
    const draft = play(begin(onlyWeight), { type: 'score', key: 'before:right-knee', score: 'unknown' });
    expect(sessionEntryOf(draft, began).joints[0]?.painBefore).toBeNull();
    expect(checkRows(draft).find((row) => row.step === 'before:right-knee')?.value).toBe('I don’t know');
  });

  it('zero is an answer: it is kept and sent as zero', () => {
    const draft = play(begin(onlyWeight), { type: 'score', key: 'before:right-knee', score: 0 });
    expect(sessionEntryOf(draft, began).joints[0]?.painBefore).toBe(0);
  });

  it('warning signs count as asked only when both times of asking were answered after work was done', () => {
    const worked = play(begin(onlyWeight), ...eligibility, next, ...oneSet(0, 1, 15, began));
    expect(sessionEntryOf(worked, began).redFlags).toBeNull();
    expect(sessionEntryOf(play(worked, none('during')), began).redFlags).toEqual([]);
  });

  it('on warning signs are asked before anything is sent; every other may stand open', () => {
    const draft = play(begin(onlyWeight), ...eligibility);
    expect(neededStep(draft)).toBe('flags-during');
    expect(neededStep(play(draft, none('during')))).toBeNull();
  });

  it('left open or not known after the work go out as gaps, never as no', () => {
    const open = sessionEntryOf(play(begin(onlyWeight), ...eligibility), began);
    expect(open.didExtra).toBeNull();
    expect(open.joints[0]?.gaveWay).toBeNull();
    const unsure = play(
      begin(onlyWeight),
      { type: 'gave-way', joint: 'right-knee', gaveWay: 'unknown' },
      { type: 'extra', didExtra: 'unknown' },
    );
    expect(sessionEntryOf(unsure, began).joints[0]?.gaveWay).toBeNull();
    expect(sessionEntryOf(unsure, began).didExtra).toBeNull();
  });

  it('another joint worse than usual reaches the clinic and leaves the cuff off', () => {
    const worse = play(begin(onlyCuff), { type: 'other-joint', isWorse: true });
    expect(sessionEntryOf(worse, began).otherJointWorse).toBe(true);
    expect(stepsOf(worse).some((step) => step.startsWith('cuff-on'))).toBe(false);
  });

  it('anything new reaches the clinic with the session', () => {
    const fell = play(begin(onlyWeight), { type: 'news', news: ['fall'] });
    expect(sessionEntryOf(fell, began).news).toEqual(['fall']);
    expect(sessionEntryOf(begin(onlyWeight), began).news).toBeNull();
  });

  it('each set says whether it was the easier session', () => {
    const done = (isEasierSession: boolean) =>
      play(begin(onlyWeight, isEasierSession), ...eligibility, next, ...oneSet(0, 1, 15, began));
    expect(sessionEntryOf(done(true), began).sets.map((set) => set.easier)).toEqual([true]);
    expect(sessionEntryOf(done(false), began).sets.map((set) => set.easier)).toEqual([false]);
  });

  it('a step opened from the check page leads back to it', () => {
    const draft = play(
      begin(onlyWeight),
      ...eligibility,
      { type: 'change', step: 'before:right-knee' },
      next,
    );
    expect(draft.step).toBe('check');
  });
});

describe('a set', () => {
  const atSet = play(begin(onlyWeight), ...eligibility, { type: 'load', item: 0, loadKg: 4 }, next);

  it('starts without a count', () => {
    expect(atSet.step).toBe('set:0:1');
    expect(atSet.items[0]?.sets).toEqual([]);
  });

  it.each([
    [14, 'stop:0:1'],
    [15, 'rest:0:1'],
    [16, 'rest:0:1'],
  ])('with %i of 15 to 20 leads to %s', (repetitions, step) => {
    expect(play(atSet, ...oneSet(0, 1, repetitions, began)).step).toBe(step);
  });

  it('that fell short without a reason is sent with the reason unknown', () => {
    const draft = play(atSet, ...oneSet(0, 1, 3, began));
    expect(sessionEntryOf(draft, began).sets[0]).toMatchObject({ repetitions: 3, stopReason: 'unknown' });
  });

  it('whose count was lost is sent as reached and not counted', () => {
    const draft = play(atSet, { type: 'set-done', item: 0, set: 1, lostCount: true, now: began });
    expect(sessionEntryOf(draft, began).sets[0]).toMatchObject({ repetitions: null, stopReason: 'unknown' });
  });

  it('keeps the start of its rest when it is gone back to and said to be done again', () => {
    const once = play(atSet, ...oneSet(0, 1, 15, 5_000));
    const twice = play(once, { type: 'go', step: 'set:0:1' }, ...oneSet(0, 1, 16, 60_000));
    expect(twice.items[0]?.sets[0]).toMatchObject({ repetitions: 16, finishedAt: 5_000 });
  });

  it('that was not reached is not sent', () => {
    const stopped = play(
      atSet,
      ...oneSet(0, 1, 15, began),
      next,
      { type: 'set-stopped', item: 0, set: 2, now: began },
      { type: 'count', item: 0, set: 2, repetitions: 4 },
      next,
      { type: 'stop-reason', item: 0, set: 2, reason: 'joint-pain' },
      { type: 'hurt', item: 0, set: 2, joint: 'right-knee', score: 4 },
      { type: 'stop-done', item: 0, set: 2, isLeft: true },
    );
    expect(stopped.step).toBe('flags-during');
    expect(sessionEntryOf(stopped, began).sets).toEqual([
      expect.objectContaining({ set: 1, repetitions: 15, stopReason: 'none', loadKg: 4 }),
      expect.objectContaining({ set: 2, repetitions: 4, stopReason: 'joint-pain' }),
    ]);
  });

  it('said to be done by a slip, gone back to and stopped, is counted anew and never sent as done', () => {
    const slip = play(
      atSet,
      ...oneSet(0, 1, 15, began),
      { type: 'go', step: 'set:0:1' },
      { type: 'set-stopped', item: 0, set: 1, now: began + 1 },
    );
    expect(slip.step).toBe('stop-count:0:1');
    expect(sessionEntryOf(slip, began).sets).toEqual([
      expect.objectContaining({ set: 1, repetitions: null, stopReason: 'unknown' }),
    ]);
    const counted = play(slip, { type: 'count', item: 0, set: 1, repetitions: 6 }, next, {
      type: 'stop-reason',
      item: 0,
      set: 1,
      reason: 'tired',
    });
    expect(checkRows(counted).find(({ step }) => step === 'item:0')?.value).toBe(
      '6 (My muscles were tired) · 4 kg',
    );
  });

  it('without a weight is sent with 0 kg, and with a weight that was not said as not said', () => {
    const chair = today({ exercises: [exercise('chair', chairDose)] });
    const free = play(begin(chair), ...eligibility, next, ...oneSet(0, 1, 8, began));
    expect(sessionEntryOf(free, began).sets[0]?.loadKg).toBe(0);
    const unsaid = play(begin(onlyWeight), ...eligibility, next, ...oneSet(0, 1, 15, began));
    expect(sessionEntryOf(unsaid, began).sets[0]?.loadKg).toBeNull();
  });
});

describe('a warning sign', () => {
  const told = meant('now', ['fainting'], began + 9);

  it('stops the session at once from any step and is sent with it', () => {
    const draft = play(
      begin(onlyWeight),
      ...eligibility,
      next,
      ...oneSet(0, 1, 15, began),
      { type: 'unwell' },
      ...told,
    );
    expect(draft).toMatchObject({ step: 'care', stoppedByFlag: true, endedAt: began + 9 });
    const entry = sessionEntryOf(draft, began + 20);
    expect(entry).toMatchObject({ stoppedByFlag: true, redFlags: ['fainting'], endedAt: began + 9 });
    expect(entry.sets).toHaveLength(1);
  });

  it('ends the taking of answers: nothing after it changes what is sent', () => {
    const stopped = play(begin(), ...told);
    const after = play(
      stopped,
      { type: 'score', key: 'before:right-knee', score: 1 },
      { type: 'go', step: 'check' },
      { type: 'sent', now: began + 99 },
    );
    expect(after).toBe(stopped);
  });

  it('that turns out to be none of them leads back to where it was asked for', () => {
    const draft = play(begin(onlyWeight), ...eligibility, next, { type: 'unwell' }, none('now'));
    expect(draft.step).toBe('set:0:1');
    expect(draft.stoppedByFlag).toBe(false);
  });
});
