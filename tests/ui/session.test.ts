/** A session on the phone: what a patient may rely on, step by step. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Today } from '#core/engine/answers.ts';
import { sessionEntryConsistent } from '#core/model/entries.ts';
import type { GateTable } from '#core/prescribing/gate-table.ts';
import { beginSession } from '#ui/patient/session/begin.ts';
import { checkRows, neededStep } from '#ui/patient/session/check-rows.ts';
import { pressed } from '#ui/patient/session/counter.tsx';
import type { Score, SessionDraft } from '#ui/patient/session/draft.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import type { SessionEvent } from '#ui/patient/session/events.ts';
import { isTimeUp, restrictedSeconds } from '#ui/patient/session/restriction.ts';
import { sessionReducer } from '#ui/patient/session/session-reducer.ts';
import { partsOf, stepsOf } from '#ui/patient/session/steps.ts';
import { chairDose, cuffDose, exercise, today, weightDose } from './views.ts';

const began = 1_000_000;

const begin = (view = today(), isLighter = false): SessionDraft =>
  beginSession({ view, ownerId: 'p', entryId: 'entry-1', zone: 'Europe/Dublin', now: began, isLighter });

const play = (draft: SessionDraft, ...events: readonly SessionEvent[]): SessionDraft =>
  events.reduce(sessionReducer, draft);

const none = (when: 'before' | 'during' | 'now'): SessionEvent => ({
  type: 'flags',
  when,
  flags: [],
  now: began,
});

const next: SessionEvent = { type: 'next' };

const onlyWeight = today({ exercises: [exercise('weight', weightDose)] });
const onlyCuff = today({ exercises: [exercise('cuff', cuffDose)] });

/** Questions before the first exercise, with nothing unusual. */
const opening: readonly SessionEvent[] = [
  none('before'),
  { type: 'score', key: 'before:right-knee', score: 2 },
  next,
  { type: 'relief', relief: false },
  next,
  { type: 'news', news: [] },
  next,
];

const oneSet = (line: number, set: number, repetitions: number, now: number): readonly SessionEvent[] => [
  { type: 'count', line, set, repetitions },
  { type: 'set-done', line, set, lostCount: false, now },
];

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
        gaveWay: false,
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
    const { lines } = begin(view);
    expect(lines.map((line) => line.lineId)).toEqual(['d']);
    expect(lines[0]?.dose.sets).toBe(2);
  });

  it('on a lighter day follows the signed lighter doses and says so in the record', () => {
    const draft = begin(today(), true);
    expect(draft.lines.every((line) => line.dose.sets === 2)).toBe(true);
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
    const worked = play(begin(onlyWeight), ...opening, next, ...oneSet(0, 1, 15, began));
    expect(sessionEntryOf(worked, began).redFlags).toBeNull();
    expect(sessionEntryOf(play(worked, none('during')), began).redFlags).toEqual([]);
  });

  it('the record has no gap for are asked before anything is sent', () => {
    const draft = play(begin(onlyWeight), ...opening);
    expect(neededStep(draft)).toBe('flags-during');
    expect(neededStep(play(draft, none('during')))).toBe('gave-way:right-knee');
  });

  it('a step opened from the check page leads back to it', () => {
    const draft = play(begin(onlyWeight), ...opening, { type: 'change', step: 'before:right-knee' }, next);
    expect(draft.step).toBe('check');
  });
});

describe('a set', () => {
  const atSet = play(begin(onlyWeight), ...opening, { type: 'load', line: 0, loadKg: 4 }, next);

  it('starts without a count; the first press on plus gives the target and on minus one less', () => {
    expect(atSet.step).toBe('set:0:1');
    expect(atSet.lines[0]?.sets).toEqual([]);
    expect(pressed(null, 15, 1)).toBe(15);
    expect(pressed(null, 15, -1)).toBe(14);
    expect(pressed(15, 15, 1)).toBe(16);
  });

  it('never counts under 0 or over 500', () => {
    expect(pressed(0, 15, -1)).toBe(0);
    expect(pressed(500, 15, 1)).toBe(500);
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
    const draft = play(atSet, { type: 'set-done', line: 0, set: 1, lostCount: true, now: began });
    expect(sessionEntryOf(draft, began).sets[0]).toMatchObject({ repetitions: null, stopReason: 'unknown' });
  });

  it('keeps the start of its rest when it is gone back to and said to be done again', () => {
    const once = play(atSet, ...oneSet(0, 1, 15, 5_000));
    const twice = play(once, { type: 'go', step: 'set:0:1' }, ...oneSet(0, 1, 16, 60_000));
    expect(twice.lines[0]?.sets[0]).toMatchObject({ repetitions: 16, finishedAt: 5_000 });
  });

  it('that was not reached is not sent', () => {
    const stopped = play(
      atSet,
      ...oneSet(0, 1, 15, began),
      next,
      { type: 'count', line: 0, set: 2, repetitions: 4 },
      { type: 'set-stopped', line: 0, set: 2, now: began },
      { type: 'stop-reason', line: 0, set: 2, reason: 'joint-pain' },
      { type: 'stop-done', line: 0, set: 2, isLeft: true },
    );
    expect(stopped.step).toBe('flags-during');
    expect(sessionEntryOf(stopped, began).sets).toEqual([
      expect.objectContaining({ set: 1, repetitions: 15, stopReason: 'none', loadKg: 4 }),
      expect.objectContaining({ set: 2, repetitions: 4, stopReason: 'joint-pain' }),
    ]);
  });

  it('without a weight is sent with 0 kg, and with a weight that was not said as not said', () => {
    const chair = today({ exercises: [exercise('chair', chairDose)] });
    const free = play(begin(chair), ...opening, next, ...oneSet(0, 1, 8, began));
    expect(sessionEntryOf(free, began).sets[0]?.loadKg).toBe(0);
    const unsaid = play(begin(onlyWeight), ...opening, next, ...oneSet(0, 1, 15, began));
    expect(sessionEntryOf(unsaid, began).sets[0]?.loadKg).toBeNull();
  });
});

describe('a warning sign', () => {
  const told: SessionEvent = { type: 'flags', when: 'now', flags: ['fainting'], now: began + 9 };

  it('stops the session at once from any step and is sent with it', () => {
    const draft = play(
      begin(onlyWeight),
      ...opening,
      next,
      ...oneSet(0, 1, 15, began),
      { type: 'unwell' },
      told,
    );
    expect(draft).toMatchObject({ step: 'care', stoppedByFlag: true, endedAt: began + 9 });
    const entry = sessionEntryOf(draft, began + 20);
    expect(entry).toMatchObject({ stoppedByFlag: true, redFlags: ['fainting'], endedAt: began + 9 });
    expect(entry.sets).toHaveLength(1);
  });

  it('ends the taking of answers: nothing after it changes what is sent', () => {
    const stopped = play(begin(), told);
    const after = play(
      stopped,
      { type: 'score', key: 'before:right-knee', score: 1 },
      { type: 'go', step: 'check' },
      { type: 'sent', now: began + 99 },
    );
    expect(after).toBe(stopped);
  });

  it('that turns out to be none of them leads back to where it was asked for', () => {
    const draft = play(begin(onlyWeight), ...opening, next, { type: 'unwell' }, none('now'));
    expect(draft.step).toBe('set:0:1');
    expect(draft.stoppedByFlag).toBe(false);
  });
});

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
  const table: GateTable = {
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
    gates: [table],
    exercises: [exercise('knee', weightDose), exercise('arm', weightDose, { joints: ['right-elbow'] })],
  });
  const answered = (score: Score | null, isLighter = false) =>
    play(
      begin(view, isLighter),
      none('before'),
      ...(score === null ? [] : [{ type: 'score' as const, key: 'before:right-knee', score }]),
      next,
      next,
      { type: 'news', news: [] },
      next,
    );
  const setsOf = (draft: SessionDraft) =>
    draft.lines.map((line) => (line.leftOut === null ? line.dose.sets : 0));

  it.each([
    [4, [3, 3], 'line:0'],
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
    ...opening,
    { type: 'load', line: 0, loadKg: 3 },
    next,
    { type: 'cuff-on', line: 0, now: 10_000 },
    next,
  );
  const line = (draft: SessionDraft) => draft.lines[0]!;

  it('runs by the clock on the wall: its time goes on while the phone sleeps', () => {
    expect(restrictedSeconds(line(on), 10_000 + 300_000)).toBe(300);
  });

  it.each([
    [479, false],
    [480, true],
    [481, true],
  ])('after %i of at most 480 seconds is called off: %s', (seconds, isUp) => {
    expect(isTimeUp(line(on), 10_000 + seconds * 1000)).toBe(isUp);
  });

  it('is not given time back by a clock that was set back', () => {
    const down = play(on, { type: 'cuff-down', line: 0, now: 5_000 });
    expect(restrictedSeconds(line(down), 20_000)).toBe(0);
    expect(restrictedSeconds(line(on), 5_000)).toBe(0);
  });

  it('pressed on twice keeps its first start', () => {
    expect(line(play(on, { type: 'cuff-on', line: 0, now: 99_000 })).restrictions).toHaveLength(1);
  });

  it('comes off by the stop button, is followed by sitting, the look at the toes and then the reason', () => {
    const stopped = play(on, { type: 'cuff-stop', line: 0, set: 1 });
    expect(stopped.step).toBe('cuff-off:0');
    const off = play(stopped, { type: 'cuff-off', line: 0, now: 60_000 });
    expect(off.step).toBe('seated:0');
    const usual = play(off, next, { type: 'limb', line: 0, isLater: false, answer: 'usual' }, next);
    expect(usual.step).toBe('stop:0:1');
  });

  it('after which the toes are not as usual is asked about again before anything else', () => {
    const off = play(on, { type: 'cuff-stop', line: 0, set: 1 }, { type: 'cuff-off', line: 0, now: 60_000 });
    const waiting = play(off, next, { type: 'limb', line: 0, isLater: false, answer: 'not-yet' }, next);
    expect(waiting.step).toBe('limb-later:0');
  });
});

const anyEvent: fc.Arbitrary<SessionEvent> = fc.oneof(
  fc.constant(next),
  fc.constant<SessionEvent>({ type: 'unwell' }),
  fc.constant(none('before')),
  fc.constant(none('during')),
  fc.constant(none('now')),
  fc.constant<SessionEvent>({ type: 'finish-here' }),
  fc.record({ type: fc.constant('news' as const), news: fc.constantFrom([], ['fall' as const]) }),
  fc.record({
    type: fc.constant('score' as const),
    key: fc.constantFrom('before:right-knee', 'during:right-knee', 'after:right-knee', 'burn'),
    score: fc.integer({ min: 0, max: 10 }),
  }),
  fc.record({
    type: fc.constant('count' as const),
    line: fc.nat(2),
    set: fc.integer({ min: 1, max: 3 }),
    repetitions: fc.nat(40),
  }),
  fc.record({
    type: fc.constant('set-done' as const),
    line: fc.nat(2),
    set: fc.integer({ min: 1, max: 3 }),
    lostCount: fc.boolean(),
    now: fc.integer({ min: began, max: began + 1_000_000 }),
  }),
  fc.record({
    type: fc.constantFrom('go' as const, 'change' as const),
    step: fc.constantFrom(
      'flags-before',
      'before:right-knee',
      'relief',
      'line:0',
      'set:0:1',
      'check',
      'nowhere',
    ),
  }),
  fc.record({ type: fc.constant('leave-out' as const), line: fc.nat(2) }),
  fc.record({
    type: fc.constantFrom('cuff-on' as const, 'cuff-off' as const, 'cuff-down' as const),
    line: fc.constant(2),
    now: fc.integer({ min: began, max: began + 1_000_000 }),
  }),
);

/** Everything a patient answered, apart from where on the pages they are. */
const answersOf = ({ step: _, isChanging: __, returnTo: ___, ...answers }: SessionDraft) => answers;

describe('whatever is pressed, in any order', () => {
  it('the step shown is always one of the session, and the entry always one the clinic takes', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 50 }), (events) => {
        const draft = play(begin(), ...events);
        expect(['flags-now', ...stepsOf(draft)]).toContain(draft.step);
        expect(sessionEntryConsistent(sessionEntryOf(draft, began + 2_000_000))).toEqual([]);
      }),
      { seed: 20260131, numRuns: 2000 },
    );
  });

  it('going back and forth loses no answer', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 40 }), fc.nat(30), (events, index) => {
        const draft = play(begin(), ...events);
        const steps = stepsOf(draft);
        const moved = play(draft, { type: 'go', step: steps[index % steps.length]! });
        expect(answersOf(moved)).toEqual(answersOf(draft));
      }),
      { seed: 20260131, numRuns: 1000 },
    );
  });

  it('a reload in between changes nothing: what was kept goes on as if it had never stopped', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 40 }), fc.nat(40), (events, cut) => {
        const kept = play(begin(), ...events.slice(0, cut));
        const restored = JSON.parse(JSON.stringify(kept)) as SessionDraft;
        expect(play(restored, ...events.slice(cut))).toEqual(play(begin(), ...events));
      }),
      { seed: 20260131, numRuns: 1000 },
    );
  });

  it('every step names a page by its first word', () => {
    expect(partsOf('set:2:3')).toEqual({ name: 'set', joint: '', line: 2, set: 3 });
    expect(partsOf('before:left-knee')).toMatchObject({ name: 'before', joint: 'left-knee', line: -1 });
  });
});
