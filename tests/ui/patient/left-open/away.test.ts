/** A session that was left and is taken up again. Half an hour is chosen; no source fixes it. */
import { describe, expect, it } from 'vitest';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import type { SessionEvent } from '#ui/patient/session/events.ts';
import { isOfEarlierDay, lastAnswerAt } from '#ui/patient/session/left-open/away.ts';
import { sessionReducer, timedReducer } from '#ui/patient/session/session-reducer.ts';
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
} from '../session-play.ts';
import { exercise, today, weightDose } from '../views.ts';

const minute = 60_000;
const day = '2026-03-09';
const nextDay = '2026-03-10';

/** Events at instants of their own, minutes after the session began. */
const timed = (
  draft: SessionDraft,
  ...events: readonly (readonly [after: number, event: SessionEvent, on?: string])[]
): SessionDraft =>
  events.reduce(
    (at, [after, event, on = day]) => timedReducer(at, { event, now: began + after * minute, day: on }),
    draft,
  );

const look = (after: number, on = day) => [after, { type: 'resumed' }, on] as const;
const painNow = (score: number): SessionEvent => ({ type: 'score', key: 'before:right-knee', score });

/** One set done a minute after the beginning, at the rest after it. */
const inRest = (view = onlyWeight): SessionDraft =>
  timed(
    play(begin(view), ...eligibility, next),
    ...oneSet(0, 1, 20, began + minute).map((event) => [1, event] as const),
  );

describe('after half an hour away', () => {
  it('under it nothing is asked again; at it and over it warning signs and pain now are', () => {
    expect(timed(inRest(), look(30.99)).step).toBe('rest:0:1');
    for (const after of [31, 31.01, 600]) {
      const back = timed(inRest(), look(after));
      expect(back.step).toBe('flags-before');
      expect(back.flagsBefore).toBeNull();
      expect(back.scores['before:right-knee']).toBeUndefined();
    }
  });

  it('goes on where it stood once both are answered, with every set kept', () => {
    const back = timed(inRest(), look(40), [40, none('before')], [41, painNow(2)], [41, next]);
    expect(back.step).toBe('rest:0:1');
    expect(back.items[0]?.sets[0]?.repetitions).toBe(20);
  });

  it('is asked by the first press as well, where nothing else told of the pause; the press is kept', () => {
    const pressed = timed(inRest(), [40, { type: 'reserve', item: 0, set: 1, reserve: 3 }]);
    expect(pressed.step).toBe('flags-before');
    expect(pressed.items[0]?.sets[0]?.reserve).toBe(3);
  });

  it('cannot be passed by with the browser’s own buttons', () => {
    expect(timed(inRest(), look(40), [40, { type: 'go', step: 'set:0:2' }]).step).toBe('flags-before');
  });

  it('a warning sign told then ends the session with what was done in it', () => {
    const told = timed(
      inRest(),
      look(40),
      ...meant('before', ['chest-pain'], began + 40 * minute).map((event) => [40, event] as const),
    );
    expect(told.stoppedByFlag).toBe(true);
    expect(sessionEntryOf(told, began).sets).toHaveLength(1);
  });

  it('the record has the higher of both pains before; which one was lower is no matter', () => {
    for (const [first, again, recorded] of [
      [2, 5, 5],
      [5, 2, 5],
      [0, 0, 0],
    ] as const) {
      const begun = play(inRest(), { type: 'change', step: 'before:right-knee' }, painNow(first), next);
      const back = timed(
        { ...begun, step: 'rest:0:1' },
        look(40),
        [40, none('before')],
        [41, painNow(again)],
      );
      expect(sessionEntryOf(back, began).joints[0]?.painBefore).toBe(recorded);
    }
  });

  it('where the answer leaves less, the exercise begun ends with the sets that were done, and it is told', () => {
    const view = today({
      exercises: [exercise('weight', weightDose)],
      painLookups: [
        {
          joint: 'right-knee',
          byPain: Array.from({ length: 11 }, (_, pain) => (pain >= 6 ? 'rest-this-joint' : 'as-planned')),
          whenUnknown: 'bad-day',
          painLimit: 5,
        },
      ] as never,
    });
    const answered = (pain: number) =>
      timed(inRest(view), look(40), [40, none('before')], [41, painNow(pain)], [41, next]);
    expect(answered(5).step).toBe('rest:0:1');
    expect(answered(6).step).toBe('offer');
    const on = timed(answered(6), [42, next]);
    expect(on.step).toBe('flags-during');
    expect(on.items[0]?.leftAt).toBe(1);
  });

  it('with a cuff on nothing is asked before it is off', () => {
    const on = timed(play(begin(onlyCuff), ...eligibility, next), [
      1,
      { type: 'cuff-on', item: 0, now: began + minute },
    ]);
    expect(timed(on, look(50)).step).toBe(on.step);
    const off = timed(on, look(50), [50, { type: 'cuff-off', item: 0, now: began + 50 * minute }]);
    expect(off.step).toBe('flags-before');
    expect(timed(off, [50, none('before')], [51, painNow(2)], [51, next]).step).toBe('limb:0');
  });

  it('after the work nothing is asked again: there is nothing left to begin', () => {
    const after = timed(inRest(), [2, { type: 'finish-here' }]);
    expect(after.step).toBe('flags-during');
    expect(timed(after, look(90)).step).toBe('flags-during');
  });
});

describe('on another civil day', () => {
  it('is not gone on with after half an hour; one that runs over midnight is', () => {
    const draft = inRest();
    expect(isOfEarlierDay(draft, nextDay, began + 30.99 * minute)).toBe(false);
    expect(isOfEarlierDay(draft, nextDay, began + 31 * minute)).toBe(true);
    expect(isOfEarlierDay(draft, nextDay, began + 3000 * minute)).toBe(true);
    expect(isOfEarlierDay(draft, day, began + 3000 * minute)).toBe(false);
  });

  it('keeps the answers of its own day, whatever is pressed meanwhile', () => {
    const draft = inRest();
    expect(timed(draft, look(3000, nextDay))).toEqual(draft);
  });

  it('is sent with the end it had, not with the time of sending', () => {
    const draft = inRest();
    const sent = sessionReducer(draft, { type: 'sent', now: lastAnswerAt(draft) });
    const entry = sessionEntryOf(sent, began + 3000 * minute);
    expect(entry.endedAt).toBe(began + minute);
    expect(entry.day).toBe(day);
    expect(entry.sets).toHaveLength(1);
  });

  it('a draft of an earlier release ends with its last set', () => {
    const { answeredAt: _, ...older } = inRest();
    expect(lastAnswerAt(older)).toBe(began + minute);
  });
});
