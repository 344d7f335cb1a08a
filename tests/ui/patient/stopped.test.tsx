/** Stopping a set: buttons alone, the advice at once where the joint hurt more than is allowed, and what is left of today. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import { stopReasons } from '#core/record/record.ts';
import { type Arrival, arrivalOf } from '#ui/patient/day-state.ts';
import { emptyOutbox } from '#ui/patient/outbox/outbox.ts';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import type { SessionEvent } from '#ui/patient/session/events.ts';
import { SessionScreen } from '#ui/patient/session/session-screen.tsx';
import { began, begin, eligibility, next, none, oneSet, play } from './session-play.ts';
import { chairDose, cuffDose, exercise, today, weightDose } from './views.ts';

const nothing = () => undefined;
const limit: PainLookup = {
  joint: 'right-knee',
  byPain: Array.from({ length: 11 }, () => 'as-planned'),
  whenUnknown: 'as-planned',
  acceptablePainLimit: 5,
};
const weight = exercise('weight', weightDose);
const chair = exercise('chair', chairDose);
const push = exercise('push', { ...chairDose, exerciseId: 'wall-push-up' }, { joints: ['right-shoulder'] });

const dayOf = (...exercises: readonly (typeof weight)[]) => today({ exercises, painLookups: [limit] });

const stop = (reason: Extract<SessionEvent, { type: 'stop-reason' }>['reason']): readonly SessionEvent[] => [
  { type: 'load', item: 0, loadKg: 4 },
  next,
  { type: 'set-stopped', item: 0, set: 1, now: began },
  { type: 'count', item: 0, set: 1, repetitions: 6 },
  next,
  { type: 'stop-reason', item: 0, set: 1, reason },
];
const hurt = (score: number | 'unknown'): SessionEvent => ({
  type: 'hurt',
  item: 0,
  set: 1,
  joint: 'right-knee',
  score,
});
const stoppedWith = (view: ReturnType<typeof dayOf>, score: number | 'unknown') =>
  play(begin(view), ...eligibility, ...stop('joint-pain'), hurt(score));

const pageOf = (draft: SessionDraft, arrival: Arrival = 'kept') =>
  renderToStaticMarkup(
    <SessionScreen
      draft={draft}
      clinic={today().clinic}
      hasCuff={false}
      asksPregnancy={false}
      clock={() => began}
      send={nothing}
      arrival={arrival}
      onHome={nothing}
    />,
  );
const mainButtons = (page: string) => page.match(/class="button(?: button-(?:wide|large))*"/g)?.length ?? 0;

describe('the page that asks why a set was stopped', () => {
  const asked = play(begin(dayOf(weight)), ...eligibility, ...stop('tired').slice(0, -1));

  it('has no radio and no main button: each reason is a press that answers', () => {
    expect(asked.step).toBe('stop:0:1');
    const page = pageOf(asked);
    expect(page).not.toContain('type="radio"');
    expect(mainButtons(page)).toBe(0);
    for (const reason of stopReasons.filter((one) => one !== 'none'))
      expect(page).toContain(`value="${reason}"`);
  });

  it('asks first how many were done, and a lost count is an answer', () => {
    const stopped = play(begin(dayOf(weight)), ...eligibility, ...stop('tired').slice(0, 3));
    expect(stopped.step).toBe('stop-count:0:1');
    const lost = play(stopped, { type: 'count', item: 0, set: 1, repetitions: null }, next);
    expect(lost).toMatchObject({ step: 'stop:0:1' });
    expect(lost.items[0]?.sets[0]).toMatchObject({ repetitions: null, lostCount: true });
  });

  it('is followed by the question whether to go on, where a set is left', () => {
    const tired = play(asked, stop('tired').at(-1)!);
    expect(tired.step).toBe('stop-next:0:1');
    const done = (isLeft: boolean) => play(tired, { type: 'stop-done', item: 0, set: 1, isLeft }).step;
    expect(done(false)).toBe('rest:0:1');
    expect(done(true)).toBe('flags-during');
  });

  it('leads on once feeling unwell was none of the warning signs', () => {
    const unwell = play(asked, stop('symptom').at(-1)!, { type: 'unwell' });
    expect(unwell.step).toBe('flags-now');
    expect(play(unwell, none('now')).step).toBe('stop-next:0:1');
  });
});

describe('a set stopped because the joint hurt', () => {
  it.each([
    [4, 'stop-next:0:1'],
    [5, 'stop-next:0:1'],
    [6, 'stop-advice:0:1'],
    ['unknown' as const, 'stop-next:0:1'],
  ])('by %s of 10, with 5 allowed, leads to %s', (score, step) => {
    expect(stoppedWith(dayOf(weight), score).step).toBe(step);
  });

  it('says at once what to do, names what loads the joint too, and whom to ring, with one main button', () => {
    const page = pageOf(stoppedWith(dayOf(weight, chair, push), 7));
    expect(page).toContain('Stopped: your right knee hurt, 7 of 10.');
    expect(page).toContain('Do no more for your right knee today.');
    expect(page).toContain('because it loads the same joint: Exercise chair.');
    expect(page).toContain('Tomorrow morning we ask how your right knee is.');
    expect(page).toContain('<a href="tel:01234">01 234</a>');
    expect(page).toContain('<a href="tel:0209130166">020 913 0166</a>');
    expect(mainButtons(page)).toBe(1);
    expect(page).toContain('Go on with exercise 3');
  });

  it('goes on with what spares the joint, and else with the questions after the work', () => {
    expect(play(stoppedWith(dayOf(weight, chair, push), 7), next).step).toBe('item:2');
    expect(play(stoppedWith(dayOf(weight, chair), 7), next).step).toBe('flags-during');
    expect(
      play(stoppedWith(dayOf(weight, chair), 5), { type: 'stop-done', item: 0, set: 1, isLeft: true }).step,
    ).toBe('item:1');
  });

  it('leaves out a cuff on the same joint as well', () => {
    const draft = play(stoppedWith(dayOf(weight, exercise('cuff', cuffDose)), 7), next);
    expect(draft.step).toBe('flags-during');
  });

  it('gives back what was left out when the answer is taken back', () => {
    const draft = play(
      stoppedWith(dayOf(weight, chair), 7),
      { type: 'go', step: 'stop:0:1' },
      { type: 'stop-reason', item: 0, set: 1, reason: 'tired' },
      { type: 'stop-done', item: 0, set: 1, isLeft: true },
    );
    expect(draft.step).toBe('item:1');
    expect(draft.scores['during:right-knee']).toBeUndefined();
  });

  it('is sent as the highest pain, unless that is said to be another', () => {
    const draft = stoppedWith(dayOf(weight), 7);
    expect(sessionEntryOf(draft, began).joints[0]?.painDuring).toBe(7);
    const other = play(draft, { type: 'score', key: 'during:right-knee', score: 8 });
    expect(sessionEntryOf(other, began).joints[0]?.painDuring).toBe(8);
  });
});

describe('the page after sending', () => {
  const sent = (during: number, after: number, view = dayOf(weight, chair)) =>
    play(
      begin(view),
      ...eligibility,
      next,
      ...oneSet(0, 1, 15, began),
      { type: 'score', key: 'during:right-knee', score: during },
      { type: 'score', key: 'after:right-knee', score: after },
      { type: 'sent', now: began },
    );

  it.each([
    [5, 5, false],
    [6, 1, true],
    [1, 6, true],
  ])(
    'after a highest pain of %i and %i now, with 5 allowed, gives the advice: %s',
    (during, after, isGiven) => {
      const page = pageOf(sent(during, after));
      expect(page.includes('Do no more for your right knee today.')).toBe(isGiven);
      expect(page.includes('because it loads the same joint: Exercise chair.')).toBe(isGiven);
      expect(mainButtons(page)).toBe(1);
    },
  );

  it('promises to send by itself only while somebody is signed in', () => {
    expect(pageOf(sent(1, 1), 'kept')).toContain('as soon as there is a signal');
    expect(pageOf(sent(1, 1), 'signed-out')).not.toContain('signal');
    expect(pageOf(sent(1, 1), 'signed-out')).toContain('Sign in again to send them.');
    expect(arrivalOf({ ...emptyOutbox, isSignedOut: true }, 'entry-1')).toBe('signed-out');
    expect(arrivalOf(emptyOutbox, 'entry-1')).toBe('kept');
  });
});
