/** Days with less to do than planned, or nothing: what stands of them on today's page. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Today } from '#core/decision/answers.ts';
import { type DayState, dayState } from '#ui/patient/day-state.ts';
import { checkRows } from '#ui/patient/session/check-rows.ts';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import { EndedSession } from '#ui/patient/today/ended-session.tsx';
import { LessTold, Nothing, RestBeside } from '#ui/patient/today/rest.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { began, begin, eligibility, next, onlyCuff, onlyWeight, play } from '../session-play.ts';
import { today } from '../views.ts';

const nothing = () => undefined;
const viewOf = (left: Today, planned = true) =>
  viewOnDay(
    today({ exercises: today().exercises.map((one) => ({ ...one, today: left, planned })) }),
    '2026-03-09',
  );
const stateOf = (more: Partial<DayState> = {}) => ({ ...dayState(viewOf('as-planned'), [], 0), ...more });

describe('a rest', () => {
  it.each(['none', 'rest-this-joint'] as const)('is said on a day off as well (%s)', (left) => {
    const html = renderToStaticMarkup(<Nothing view={viewOf(left, false)} />);
    expect(html).toContain('Rest today');
    expect(html).not.toContain('A day off is part of the plan');
  });

  it('is not said of a day on which nothing is planned and nothing rests', () => {
    expect(renderToStaticMarkup(<Nothing view={viewOf('as-planned', false)} />)).toContain('A day off');
  });

  it('stands beside a session that was sent or is not gone on with, and not where something can be done', () => {
    const beside = (left: Today, more: Partial<DayState>, ended?: string) =>
      renderToStaticMarkup(<RestBeside view={viewOf(left)} state={stateOf(more)} ended={ended} />);
    expect(beside('none', { session: 'sent' })).toContain('Rest today');
    expect(beside('none', {}, 'ended')).toContain('Rest today');
    expect(beside('none', {})).toBe('');
    expect(beside('bad-day', { session: 'sent' })).toBe('');
    expect(beside('none', { session: 'sent', hasReportedFlag: true })).toBe('');
  });
});

describe('answers of this morning that are not counted yet', () => {
  const told = (left: Today, view = viewOf(left)) =>
    renderToStaticMarkup(<LessTold view={view} state={stateOf({ leftUntilCounted: left })} />);

  it('say to rest with a number to ring where they leave a rest, and to do less where they leave that', () => {
    expect(told('rest-this-joint')).toMatch(/let the joint rest today.*tel:01234/s);
    expect(told('bad-day')).toContain('do less today than planned');
    expect(told('rest-this-joint')).not.toContain('do less');
  });

  it('say nothing of doing less on a day with nothing to do', () => {
    expect(told('bad-day', viewOf('bad-day', false))).toBe('');
  });
});

describe('a session that is not gone on with', () => {
  const shown = (draft: SessionDraft) =>
    renderToStaticMarkup(
      <EndedSession
        draft={draft}
        by="another-day"
        clinic={today().clinic}
        onSend={nothing}
        onThrowAway={nothing}
      />,
    );
  const atCuff = play(
    begin(onlyCuff),
    ...eligibility,
    next,
    { type: 'cuff-on', item: 0, now: began },
    { type: 'cuff-stop', item: 0, set: 1 },
    { type: 'cuff-off', item: 0, now: began + 1 },
  );

  it('counts no set that was stopped before anything was done', () => {
    expect(shown(atCuff)).toContain('no set done');
    const none = { type: 'set-stopped', item: 0, set: 1, now: began } as const;
    const zero = { type: 'count', item: 0, set: 1, repetitions: 0 } as const;
    expect(shown(play(begin(onlyWeight), ...eligibility, next, none, zero))).toContain('no set done');
    const six = { ...zero, repetitions: 6 };
    expect(shown(play(begin(onlyWeight), ...eligibility, next, none, six))).toContain('1 set done');
  });

  it('in which fingers or toes were not as usual names whom to ring, and is not offered to be thrown away', () => {
    const told = play(atCuff, { type: 'limb', item: 0, isLater: false, sign: 'colour', answer: 'not-usual' });
    expect(shown(told)).toMatch(/not as usual after the cuff.*tel:01234/s);
    expect(shown(told)).not.toContain('Throw it away');
    expect(shown(atCuff)).toContain('Throw it away');
  });
});

it('where not all was right, the page before sending has a row for each thing and none for all of them', () => {
  const done = play(begin(onlyWeight), ...eligibility, next);
  const steps = (isRight: boolean | null) => checkRows({ ...done, isRight }).map(({ step }) => step);
  expect(steps(false)).not.toContain('statement');
  expect(steps(false)).toContain('extra');
  expect(steps(true)).toContain('statement');
});
