/** What was pressed in a group hour, what it leaves of today, and the entry it becomes. */
import { describe, expect, it } from 'vitest';
import { sessionEntryConsistent } from '#core/record/entries.ts';
import { typedFrom } from '#ui/clinician/groups/correcting.ts';
import { exercisesNow, stageOf, type Typed } from '#ui/clinician/groups/group-answers.ts';
import { entryOf } from '#ui/clinician/groups/group-entry.ts';
import { notDone } from '#ui/clinician/groups/not-done.ts';
import { pressesFor, withoutSet } from '#ui/clinician/groups/set-presses.ts';
import { after, before, dose, exercise, none, person, today, usual } from './person-of-hour.ts';

const words = { notSaid: 'Not said' };
const one = (typed: Typed, at = today) => exercisesNow(at, typed)[0]!;

/** Presses the first that is offered for the count, and one of those for the effort, until no set is asked about. */
const pressAll = (start: Typed, effort: number) => {
  let typed = start;
  let presses = 0;
  for (;;) {
    const asked = pressesFor(one(typed), typed, words);
    if (asked === null) return { typed, presses };
    typed = { ...typed, ...asked.presses[asked.asks === 'count' ? 0 : effort]!.typed };
    presses += 1;
  }
};

describe('presses', () => {
  it('a set as prescribed is two presses: the count, and how many more were possible', () => {
    const { typed, presses } = pressAll(before, 2);
    expect(presses).toBe(2 * dose.sets);
    expect(one(typed)).toMatchObject({
      state: 'done',
      sets: [1, 2, 3].map((set) => ({ set, repetitions: 20, effort: 2, isWhole: true })),
    });
  });

  it('of holds the count is that of the holds prescribed', () => {
    const { loadKg: _load, oneRepMaxKg: _max, ...held } = dose;
    const holds = {
      ...held,
      method: 'variation',
      effectiveLoadKg: null,
      addedKg: 0,
      hold: { seconds: 5, mostSeconds: 20 },
    } as const;
    const at = { ...today, exercises: [{ ...exercise, dose: holds, badDay: holds }] };
    expect(pressesFor(one(before, at), before, words)?.presses).toMatchObject([{ label: '20' }]);
  });

  it('effort that was not said is no effort of 0', () => {
    const { typed } = pressAll(before, 6);
    expect(one(typed).sets).toMatchObject([{ effort: null }, { effort: null }, { effort: null }]);
    expect(pressAll(before, 0).typed['effort:line1:1']).toBe('0');
  });

  it('a set that is changed is asked about anew, and the others stay', () => {
    const { typed } = pressAll(before, 2);
    const left = withoutSet(typed, 'line1', 2);
    expect(one(left)).toMatchObject({ state: 'open', next: 2, sets: [{ set: 1 }, { set: 3 }] });
  });
});

describe('where a person stands', () => {
  it('asks each thing where not all is as usual, in whatever order it is pressed, before any set', () => {
    const pain = { 'before:right-knee': '2' };
    const differs = { ...none, ...pain, usual: 'no' };
    expect(stageOf(person(), differs)).toBe('before');
    const answered = { ...differs, relief: 'no', 'other-joint': 'not-said', news: 'clot' };
    for (const open of ['relief', 'other-joint', 'news', 'usual', 'before:right-knee'] as const)
      expect(stageOf(person(), { ...answered, 'gone-through': 'yes', [open]: undefined } as never)).toBe(
        'before',
      );
    expect(stageOf(person(), answered)).toBe('before');
    expect(stageOf(person(), { ...answered, 'gone-through': 'yes' })).toBe('work');
  });

  it('warning signs are asked first, then what is asked before the work, and only then sets', () => {
    expect(stageOf(person(), {})).toBe('signs');
    expect(stageOf(person(), none)).toBe('before');
    expect(stageOf(person(), { ...none, ...usual })).toBe('before');
    expect(stageOf(person(), before)).toBe('work');
    expect(stageOf(person(), pressAll(before, 2).typed)).toBe('after');
    expect(stageOf(person(), { ...before, finished: 'yes' })).toBe('after');
  });

  it('a sign that was told stands before everything until it is on record; an open one stops the person', () => {
    expect(stageOf(person(), { ...before, 'signs-now': 'chest-pain' })).toBe('reporting');
    expect(stageOf(person({ today: { ...today, stop: 'warning-sign' } }), {})).toBe('stopped');
    expect(stageOf(person({ today: { ...today, stop: 'no-care' } }), before)).toBe('stopped');
  });
});

describe('what the pain told before the work leaves', () => {
  it.each([
    [4, 'as-planned', 3],
    [5, 'bad-day', 2],
    [6, 'bad-day', 2],
  ] as const)('pain %i: %s, %i sets', (pain, left, sets) => {
    const now = one({ ...before, 'before:right-knee': String(pain) });
    expect(now).toMatchObject({ today: left, isEasier: left === 'bad-day', state: 'open' });
    expect(now.dose.sets).toBe(sets);
  });

  it('pain 7 leaves nothing, and pain that was not said is read as unknown', () => {
    expect(one({ ...before, 'before:right-knee': '7' }).state).toBe('rest');
    expect(one({ ...before, 'before:right-knee': 'not-said' })).toMatchObject({ isEasier: true });
  });

  it('never gives more than the plan: an exercise at rest stays at rest, and cannot be taken up', () => {
    const at = { ...today, exercises: [{ ...exercise, today: 'rest-this-joint' as const }] };
    expect(one({ ...before, 'take:line1': 'yes' }, at).state).toBe('rest');
  });

  it('leaves an exercise that was begun with the dose it was begun with', () => {
    const { typed } = pressAll(before, 2);
    const later = one({ ...typed, 'before:right-knee': '6' });
    expect(later).toMatchObject({ isEasier: false, state: 'done' });
  });

  it('what is not on today’s programme is done only when somebody says so; cuff work is not entered here', () => {
    const at = { ...today, exercises: [{ ...exercise, isPlanned: false }] };
    expect(one(before, at).state).toBe('not-planned');
    expect(one({ ...before, 'take:line1': 'yes' }, at).state).toBe('open');
  });
});

describe('the entry', () => {
  const { typed } = pressAll(before, 2);
  const sent = (over: Typed = after) => entryOf(person(), { ...typed, ...over }, { now: 5000 });

  it('is that of a phone: each set with its dose, load and effort, the answers, and the forms signs were asked in', () => {
    expect(sent()).toMatchObject({
      entryId: 'group-1',
      day: '2026-03-02',
      redFlags: [],
      kind: 'full',
      beganAt: 1000,
      endedAt: 5000,
      didExtra: false,
      news: [],
      otherJointWorse: false,
      stoppedByFlag: false,
      signsAsked: [
        { moment: 'before', form: 'short', wording: 1 },
        { moment: 'during', form: 'statement', wording: 1 },
      ],
      joints: [{ joint: 'right-knee', painBefore: 2, painDuring: 3, painAfter: 2, gaveWay: false }],
    });
    expect(sent().sets).toEqual(
      [1, 2, 3].map((set) => ({
        prescriptionId: 'rx1',
        itemId: 'line1',
        set,
        repetitions: 20,
        loadKg: 4,
        reserve: 2,
        stopReason: 'none',
        easier: false,
      })),
    );
    expect(sessionEntryConsistent(sent())).toEqual([]);
  });

  it('says no warning sign only where they were asked after the work as well', () => {
    expect(sent({}).redFlags).toBeNull();
    expect(sent().redFlags).toEqual([]);
    expect(entryOf(person(), none, { now: 5000 }).redFlags).toEqual([]);
  });

  it('with a warning sign is stopped by it, with the sets done so far', () => {
    const told = entryOf(
      person(),
      { ...withoutSet(typed, 'line1', 3), 'signs-now': 'chest-pain' },
      { now: 5000 },
    );
    expect(told).toMatchObject({
      redFlags: ['chest-pain'],
      stoppedByFlag: true,
      sets: [{ set: 1 }, { set: 2 }],
    });
  });

  it.each([
    ['14', 'unknown'],
    ['15', 'none'],
    ['16', 'none'],
  ])('of %s repetitions where 15 are the least, has the reason %s unless one was said', (count, reason) => {
    const short = { ...typed, 'set:line1:1': count };
    expect(entryOf(person(), short, { now: 5000 }).sets[0]?.stopReason).toBe(reason);
    const said = { ...short, 'stop:line1:1': 'joint-pain' };
    expect(entryOf(person(), said, { now: 5000 }).sets[0]?.stopReason).toBe('joint-pain');
  });

  it('names what was not done and not said, and sends it as open', () => {
    const open = { ...withoutSet(typed, 'line1', 3), 'before:right-knee': 'not-said', finished: 'yes' };
    const entry = entryOf(person(), open, { now: 5000 });
    expect(entry.joints).toMatchObject([
      { painBefore: null, painDuring: null, painAfter: null, gaveWay: null },
    ]);
    expect(notDone(entry, exercisesNow(today, open), today).join('; ')).toMatch(
      /^2 of 3 sets of .*; pain before, right knee; highest pain, right knee; pain after, right knee; giving way, right knee; more than planned/,
    );
  });

  it('read back for a correction becomes the same entry, in the place of the first', () => {
    const first = sent();
    const back = typedFrom(first, 'second');
    const again = entryOf(person(), { hour: 'h', ...back }, { now: 9000 });
    expect(again).toEqual({ ...first, entryId: 'second', amends: 'group-1', sentAt: 9000 });
  });
});
