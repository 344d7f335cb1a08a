/** Today's page has one thing to do first, whatever comes together on a day. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { dayState } from '#ui/patient/day-state.ts';
import { emptyOutbox, type Saved } from '#ui/patient/outbox/outbox.ts';
import { SavedHere } from '#ui/patient/outbox/saved-here.tsx';
import { EndedSession } from '#ui/patient/today/ended-session.tsx';
import { TodayPage, type TodayPageProps } from '#ui/patient/today/today-page.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { begin } from '../session-play.ts';
import { today } from '../views.ts';

const nothing = () => undefined;
const waiting = { entryId: 'a', kind: 'session', status: 'waiting', savedAt: 0 } as Saved;
const signedOut = { ...emptyOutbox, entries: [waiting], isSignedOut: true };
const state = dayState(viewOnDay(today(), '2026-03-09'), [], 0);
const ended = (
  <EndedSession
    draft={begin()}
    by="another-day"
    clinic={today().clinic}
    onSend={nothing}
    onThrowAway={nothing}
  />
);

const pageOf = (more: Partial<TodayPageProps>, isStopped = false) =>
  renderToStaticMarkup(
    <TodayPage
      view={viewOnDay(today({ questionsWait: true, isStopped }), '2026-03-09')}
      runningSince={null}
      state={state}
      isReady
      onStart={nothing}
      onResume={nothing}
      onMorning={nothing}
      onPain={nothing}
      onChangeMorning={nothing}
      onTwoHours={nothing}
      onCorrect={nothing}
      onChanged={nothing}
      {...more}
    >
      <SavedHere state={signedOut} isLasting phone="01 234" onSend={nothing} />
    </TodayPage>,
  );
const mainOf = (html: string) =>
  [...html.matchAll(/<(?:button|a)[^>]*class="button(?: button-(?:wide|large))*"[^>]*>([^<]*)</g)].map(
    ([, text]) => text,
  );

const later = { ...state, twoHoursOf: 's' };

describe('the main button of today', () => {
  it.each([
    ['a session to begin', { state }, ['Start the session']],
    ['a question two hours after, and a session to begin', { state: later }, ['Answer it now']],
    ['the same, and a session that lies open', { state: later, runningSince: 0 }, ['Continue your session']],
    ['the same, and a session of another day', { state: later, ended }, ['Send what I did']],
    ['the morning question, whose numbers are the answer', { state: { ...state, isMorningDue: true } }, []],
    [
      'the morning of yesterday still open',
      { state: { ...state, lateMorning: '2026-03-08' } },
      ['Start the session'],
    ],
    ['a session that was sent', { state: { ...state, session: 'sent' as const } }, []],
    [
      'a flare told here that is not counted yet',
      { state: { ...state, leftUntilCounted: 'none' as const } },
      [],
    ],
    ['a warning sign told here', { state: { ...state, hasReportedFlag: true } }, []],
  ] as const)('with %s', (_name, more, expected) => {
    expect(mainOf(pageOf(more))).toEqual(expected);
  });

  it('is none while a warning sign is open', () => {
    expect(mainOf(pageOf({ runningSince: 0 }, true))).toEqual([]);
  });
});

describe('an easier session that is all there is today', () => {
  const exercises = today().exercises.map((one) => ({ ...one, today: 'bad-day' as const }));

  it('is named on the one button that begins it', () => {
    const html = pageOf({ view: viewOnDay(today({ exercises }), '2026-03-09') });
    expect(mainOf(html)).toEqual(['Start the easier session']);
    expect(html).not.toMatch(/>Start the session<|>Easier session</);
  });

  it('is chosen beside the whole one where one exercise is done in full', () => {
    const [first, ...rest] = exercises;
    const mixed = today({ exercises: [{ ...first!, today: 'as-planned' }, ...rest] });
    expect(pageOf({ view: viewOnDay(mixed, '2026-03-09') })).toMatch(
      />Start the session<.*>Easier session</s,
    );
  });
});

describe('a session that was sent', () => {
  const sent = { ...state, session: 'sent' as const };
  const quiet = viewOnDay(today(), '2026-03-09');
  const done = 'No more training is planned today.';

  it('is said to be the last of the day only where no question is open', () => {
    expect(pageOf({ state: sent, view: quiet })).toContain(done);
    expect(pageOf({ state: sent })).not.toContain(done);
    for (const open of [{ isMorningDue: true }, { twoHoursOf: 's' }, { lateMorning: '2026-03-08' }])
      expect(pageOf({ state: { ...sent, ...open }, view: quiet })).not.toContain(done);
  });

  it('kept on the phone promises no sending that needs a sign-in first', () => {
    const html = pageOf({ state: { ...state, session: 'kept-here' }, view: quiet });
    expect(html).not.toMatch(/signal|will be sent/);
    expect(html).toContain('Sign in again to send them.');
  });
});
