/** A session under any order of presses, with going back and reloads. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sessionEntryConsistent } from '#core/record/entries.ts';
import { holdsIn } from '#tests/support/holds.ts';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import type { SessionEvent } from '#ui/patient/session/events.ts';
import { partsOf } from '#ui/patient/session/step-names.ts';
import { stepsOf } from '#ui/patient/session/steps.ts';
import { began, begin, next, none, play } from './session-play.ts';

const anyEvent: fc.Arbitrary<SessionEvent> = fc.oneof(
  fc.constant(next),
  fc.constant<SessionEvent>({ type: 'unwell' }),
  fc.constant(none('before')),
  fc.constant(none('during')),
  fc.constant(none('now')),
  fc.constant<SessionEvent>({ type: 'flags', when: 'before', flags: ['fainting'], now: began }),
  fc.record({ type: fc.constant('confirm' as const), isSlip: fc.constant(true), now: fc.constant(began) }),
  fc.record({ type: fc.constant('usual' as const), isUsual: fc.boolean() }),
  fc.record({ type: fc.constant('right' as const), isRight: fc.boolean() }),
  fc.constant<SessionEvent>({ type: 'whole-list', when: 'before' }),
  fc.constant<SessionEvent>({ type: 'finish-here' }),
  fc.record({ type: fc.constant('news' as const), news: fc.constantFrom([], ['fall' as const]) }),
  fc.record({
    type: fc.constant('score' as const),
    key: fc.constantFrom('before:right-knee', 'during:right-knee', 'after:right-knee', 'burn'),
    score: fc.integer({ min: 0, max: 10 }),
  }),
  fc.record({
    type: fc.constant('count' as const),
    item: fc.nat(2),
    set: fc.integer({ min: 1, max: 3 }),
    repetitions: fc.nat(40),
  }),
  fc.record({
    type: fc.constant('set-done' as const),
    item: fc.nat(2),
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
      'item:0',
      'set:0:1',
      'check',
      'nowhere',
    ),
  }),
  fc.record({ type: fc.constant('leave-out' as const), item: fc.nat(2) }),
  fc.record({
    type: fc.constantFrom('cuff-on' as const, 'cuff-off' as const, 'cuff-down' as const),
    item: fc.constant(2),
    now: fc.integer({ min: began, max: began + 1_000_000 }),
  }),
);

/** Everything a patient answered, apart from where on the pages they are. */
const answersOf = ({ step: _, isChanging: __, returnTo: ___, toConfirm: ____, ...answers }: SessionDraft) =>
  answers;

describe('whatever is pressed, in any order', () => {
  it('the step shown is always one of the session, and the entry always one the clinic takes', () => {
    holdsIn(2000, fc.array(anyEvent, { maxLength: 50 }), (events) => {
      const draft = play(begin(), ...events);
      expect(['flags-now', 'confirm', ...stepsOf(draft)]).toContain(draft.step);
      expect(sessionEntryConsistent(sessionEntryOf(draft, began + 2_000_000))).toEqual([]);
    });
  });

  it('going back and forth loses no answer', () => {
    holdsIn(1000, fc.array(anyEvent, { maxLength: 40 }), fc.nat(30), (events, index) => {
      const draft = play(begin(), ...events);
      const steps = stepsOf(draft);
      const moved = play(draft, { type: 'go', step: steps[index % steps.length]! });
      expect(answersOf(moved)).toEqual(answersOf(draft));
    });
  });

  it('a reload in between changes nothing: what was kept goes on as if it had never stopped', () => {
    holdsIn(1000, fc.array(anyEvent, { maxLength: 40 }), fc.nat(40), (events, cut) => {
      const saved = play(begin(), ...events.slice(0, cut));
      const restored = JSON.parse(JSON.stringify(saved)) as SessionDraft;
      expect(play(restored, ...events.slice(cut))).toEqual(play(begin(), ...events));
    });
  });

  it('every step names a page by its first word', () => {
    expect(partsOf('set:2:3')).toEqual({ name: 'set', joint: '', item: 2, set: 3 });
    expect(partsOf('before:left-knee')).toMatchObject({ name: 'before', joint: 'left-knee', item: -1 });
  });
});
