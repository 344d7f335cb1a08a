/** What was sent today can be opened and each answer put right; nothing else of it changes. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { SentSession } from '#api/patient/today-view.ts';
import { sessionEntryConsistent } from '#core/record/entries.ts';
import { CorrectScreen } from '#ui/patient/correcting/correct-screen.tsx';
import { amending, answerAt, placesOf, putRight, stepOf } from '#ui/patient/correcting/correction.ts';
import { sessionToCorrect } from '#ui/patient/correcting/sent-session.ts';
import { dayState } from '#ui/patient/day-state.ts';
import type { Saved } from '#ui/patient/outbox/outbox.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { began, begin, eligibility, meant, next, none, oneSet, onlyWeight, play } from './session-play.ts';
import { today } from './views.ts';

const done = play(
  begin(onlyWeight),
  ...eligibility,
  { type: 'load', item: 0, loadKg: 4 },
  next,
  ...oneSet(0, 1, 15, began),
  { type: 'go', step: 'flags-during' },
  none('during'),
  { type: 'score', key: 'during:right-knee', score: 3 },
  { type: 'score', key: 'after:right-knee', score: 2 },
  { type: 'score', key: 'burn', score: 4 },
  { type: 'sent', now: began + 1000 },
);
const entry = sessionEntryOf(done, began + 1000);
const titles = { 'prescription-weight': 'Exercise weight' };
const sent: SentSession = { entry, titles };

describe('the answers that can be put right', () => {
  it('are repetitions and weight, highest pain, pain now, burn, and each statement', () => {
    expect(placesOf(entry).map(stepOf)).toEqual([
      'set:0',
      'load:weight',
      'during:right-knee',
      'after:right-knee',
      'burn',
      'gave-way:right-knee',
      'extra',
    ]);
  });

  it('leave out a weight where none is used, and name the cuff where one was', () => {
    const free = { ...entry, sets: entry.sets.map((set) => ({ ...set, loadKg: 0 })) };
    expect(placesOf(free).map(stepOf)).not.toContain('load:weight');
    const look = {
      itemId: 'weight',
      moment: 'after',
      colour: 'usual',
      feeling: 'usual',
      pulse: null,
      pulseState: 'not-asked',
    } as const;
    expect(placesOf({ ...entry, limbChecks: [look] }).map(stepOf)).toContain('cuff');
  });

  it.each(placesOf(entry).map((place) => [stepOf(place), place] as const))(
    '%s is put right alone, and so is that it is not known',
    (_step, place) => {
      const value = place.what === 'gave-way' || place.what === 'extra' ? true : 9;
      for (const answer of [value, null]) {
        const after = putRight(entry, place, answer);
        expect(answerAt(after, place)).toBe(answer);
        for (const other of placesOf(entry).filter((one) => stepOf(one) !== stepOf(place)))
          expect(answerAt(after, other)).toBe(answerAt(entry, other));
        expect(sessionEntryConsistent(after)).toEqual([]);
      }
    },
  );

  it.each([
    [14, 'unknown'],
    [15, 'none'],
    [16, 'none'],
    [null, 'unknown'],
  ])('of 15 repetitions, %s leaves the reason for stopping %s', (count, reason) => {
    expect(putRight(entry, { what: 'set', index: 0 }, count).sets[0]?.stopReason).toBe(reason);
  });

  it('go in the place of what was sent, under an id of their own and by whom they were typed', () => {
    const carer = { ...entry, enteredAs: 'friend' as const };
    const after = amending({ entry: carer, titles }, carer, { entryId: 'b', now: 7, enteredAs: null });
    expect(after).toMatchObject({ entryId: 'b', amends: 'entry-1', sentAt: 7, beganAt: entry.beganAt });
    expect(after.enteredAs).toBeUndefined();
  });
});

describe('the session that can be opened', () => {
  const view = { day: '2026-03-09', clinicDay: '2026-03-09', sent: null };
  const known = { view, entries: [], draft: done, corrected: null, entryOf: sessionEntryOf };
  const saved = (more: Partial<Saved>): Saved =>
    ({ entryId: 'b', kind: 'session', day: '2026-03-09', status: 'waiting', savedAt: 0, ...more }) as Saved;

  it('is known to this page at once, also without signal', () => {
    expect(sessionToCorrect(known)?.entry).toMatchObject({ entryId: 'entry-1', sets: [{ repetitions: 15 }] });
  });

  it('is none of this page until the pages that ask are there', () => {
    expect(sessionToCorrect({ ...known, entryOf: undefined })).toBeNull();
  });

  it('is the one the clinic has, once this page does not know it any more', () => {
    expect(sessionToCorrect({ ...known, draft: null })).toBeNull();
    expect(sessionToCorrect({ ...known, draft: null, view: { ...view, sent } })).toBe(sent);
  });

  it('is the corrected one after a correction, never one that was amended', () => {
    const corrected = { entry: amending(sent, entry, { entryId: 'b', now: 1, enteredAs: null }), titles };
    expect(sessionToCorrect({ ...known, corrected })).toBe(corrected);
    expect(sessionToCorrect({ ...known, entries: [saved({ amends: 'entry-1' })] })).toBeNull();
    expect(
      sessionToCorrect({ ...known, entries: [saved({ amends: 'entry-1', status: 'aside' })] }),
    ).not.toBeNull();
  });

  it('is none on another day of the clinic, while it runs, or after a warning sign', () => {
    expect(sessionToCorrect({ ...known, view: { ...view, clinicDay: '2026-03-10' } })).toBeNull();
    expect(sessionToCorrect({ ...known, draft: { ...done, endedAt: null } })).toBeNull();
    const stopped = play(begin(onlyWeight), ...meant('now', ['fainting'], began));
    expect(sessionToCorrect({ ...known, draft: stopped })).toBeNull();
    expect(viewOnDay(today({ sent }), '2026-03-10').sent).toBeNull();
  });

  it('is asked about two hours later once, not again for its correction', () => {
    const two = 2 * 60 * 60_000;
    const entries = [saved({ entryId: 'entry-1', savedAt: 0 }), saved({ amends: 'entry-1', savedAt: 1 })];
    const state = dayState({ ...viewOnDay(today({ asksTwoHours: true }), '2026-03-09') }, entries, two + 1);
    expect(state.twoHoursOf).toBe('entry-1');
  });
});

describe('the page', () => {
  const page = (step: string, of: SentSession = sent) =>
    renderToStaticMarkup(
      <CorrectScreen
        sent={of}
        ownerId="p"
        view={today()}
        step={step}
        enteredAs={null}
        clock={() => began}
        arrivalOf={() => 'kept'}
        onStep={() => undefined}
        onSave={async () => true}
        onHome={() => undefined}
      />,
    );

  it('asks of what was held how many holds of so many seconds, and names no repetitions', () => {
    const held = { ...sent, held: { [entry.sets[0]!.prescriptionId]: 7 } };
    expect(page('', held)).toContain('Exercise weight: holds of 7 seconds in set 1');
    expect(page('set:0', held)).toContain('holds of 7 seconds in set 1');
    expect(page('set:0', held)).not.toMatch(/repetitions/i);
  });

  it('lists each answer as it was sent, and has nothing to send before one is changed', () => {
    const html = page('');
    expect(html).toContain('Exercise weight: repetitions in set 1');
    expect(html).toContain('3 of 10');
    expect(html).toContain('Your clinic sees what you change, and what you sent before.');
    expect(html).not.toContain('Send the correction');
  });

  it.each([
    ['during:right-knee', /<h1[^>]*>What was the highest pain in your right knee\?/, 'value="3"'],
    ['burn', /How much did the muscles burn\?/, 'value="4"'],
    ['gave-way:right-knee', /Did your right knee give way\?/, 'value="true"'],
    ['set:0', /repetitions in set 1/, '>14<'],
    ['load:weight', /Exercise weight: weight/, 'name="load-kg"'],
  ])('asks %s as it was asked', (step, question, control) => {
    expect(page(step)).toMatch(question);
    expect(page(step)).toContain(control);
  });
});
