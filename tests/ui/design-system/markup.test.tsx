/** Static markup of the parts: what a screen reader and a keyboard are given. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { codeProblem, problemAfter, problemsOf, type Reply } from '#ui/account/sign-in/sign-in.ts';
import { CheckboxGroup, switched } from '#ui/design-system/checkbox-group.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { spokenOf } from '#ui/language/said.ts';
import '#ui/patient/asked-words.ts';
import { dayState } from '#ui/patient/day-state.ts';
import type { Saved } from '#ui/patient/outbox/outbox.ts';
import { ScoreQuestion } from '#ui/patient/questions/score-question.tsx';
import { CareAdvice } from '#ui/patient/session/pages/end-pages.tsx';
import { TodayPage, type TodayPageProps } from '#ui/patient/today/today-page.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { exercise, today, weightDose } from '../patient/views.ts';

const nothing = () => undefined;
const count = (html: string, part: string) => html.split(part).length - 1;

const todayHtml = (more: Partial<TodayPageProps> = {}) =>
  renderToStaticMarkup(
    <TodayPage
      view={viewOnDay(today(), '2026-03-09')}
      runningSince={null}
      state={dayState(today(), [], 0)}
      isReady
      onStart={nothing}
      onResume={nothing}
      onMorning={nothing}
      onPain={nothing}
      onTwoHours={nothing}
      onChangeMorning={nothing}
      {...more}
    />,
  );

describe('the 0 to 10 question', () => {
  const asked = { question: 'How is the pain?', low: 'no pain', high: 'worst pain', onAnswer: nothing };
  const html = renderToStaticMarkup(<ScoreQuestion {...asked} />);

  it('is eleven buttons and "I don’t know", no slider, and none of them marked as the answer', () => {
    expect(count(html, 'type="button" value=')).toBe(12);
    expect(html).not.toMatch(/answer-given|Your answer|checked|type="range"/);
  });

  it('names an answer that was given before', () => {
    const again = renderToStaticMarkup(<ScoreQuestion {...asked} given={0} />);
    expect(again.split('Your answer')).toHaveLength(2);
    expect(again).toMatch(/value="0"[^>]*answer-given/);
  });

  it('has its question as the name of its answers, and words at both ends', () => {
    expect(html).toMatch(/<h1[^>]* id="question"[^>]*>How is the pain\?<\/h1>/);
    for (const part of ['role="group" aria-labelledby="question"', 'no pain', 'worst pain'])
      expect(html).toContain(part);
  });

  it('has no slider', () => {
    expect(html).not.toContain('type="range"');
  });
});

describe('form parts', () => {
  const options = [
    { value: 'a', label: 'A' },
    { value: 'b', label: 'B' },
    { value: 'none', label: 'None of these', isApart: true },
  ];

  it('preselect nothing', () => {
    const html = renderToStaticMarkup(
      <>
        <RadioGroup name="r" legend="R" options={options} />
        <CheckboxGroup name="c" legend="C" options={options} />
      </>,
    );
    expect(html).not.toContain('checked');
  });

  it('"None of these" clears the others and is cleared by them', () => {
    expect(switched(options, ['a', 'b'], 'none')).toEqual(['none']);
    expect(switched(options, ['none'], 'a')).toEqual(['a']);
    expect(switched(options, ['a', 'b'], 'a')).toEqual(['b']);
  });

  it('a number is a text control with a keypad, its unit read with the label, its error tied to it', () => {
    const html = renderToStaticMarkup(
      <NumberField name="load" label="Weight" unit="kg" error="Enter a number." />,
    );
    expect(html).toContain('type="text"');
    expect(html).toContain('inputMode="decimal"');
    expect(html).toContain('aria-describedby="load-error"');
    expect(html).toContain(', in kg');
    expect(html).not.toContain('type="number"');
  });

  it.each([
    ['', null],
    [' 2,5 ', 2.5],
    ['12.', 12],
    ['1 000', 1000],
    ['two', Number.NaN],
    ['1.2.3', Number.NaN],
  ])('"%s" typed is read as %s', (typed, number) => {
    expect(readNumber(typed)).toEqual(number);
  });

  it('a status is a word beside its shape, and the shape is hidden from screen readers', () => {
    const html = renderToStaticMarkup(<StatusTag shape="level">Stay here</StatusTag>);
    expect(html).toContain('Stay here');
    expect(html).toContain('aria-hidden="true"');
  });
});

describe('today', () => {
  const open = dayState(today(), [], 0);

  it('has one primary start and the lighter day beside it', () => {
    const html = todayHtml();
    expect(html).toMatch(/class="button button-wide button-large">Start the session/);
    expect(html).toContain('Easier session');
  });

  it('asks the first question of the morning before anything else when it is due', () => {
    const html = todayHtml({ state: { ...open, isMorningDue: true } });
    expect(html).toMatch(/hurt this morning\?[\s\S]*Start the session/);
    expect(count(html, 'class="score')).toBeGreaterThanOrEqual(12);
    expect(html).toMatch(/button-plain button-wide button-large">Start the session/);
  });

  it('offers no start when every exercise rests, when the session is in, or after a warning sign', () => {
    const resting = today({ exercises: [exercise('a', weightDose, { today: 'rest-this-joint' })] });
    for (const html of [
      todayHtml({ view: viewOnDay(resting, resting.day) }),
      todayHtml({ view: viewOnDay(today({ exercises: [] }), '2026-03-09') }),
      todayHtml({ state: { ...open, session: 'sent' } }),
      todayHtml({ state: { ...open, session: 'kept-here' } }),
      todayHtml({ state: { ...open, hasReportedFlag: true } }),
    ]) {
      expect(html).not.toContain('Start the session');
    }
  });

  it('says who reads answers, and when nobody does', () => {
    expect(todayHtml()).toContain('Nobody reads your answers outside these hours');
  });

  it('shows the cautions of today without a tap, each once', () => {
    expect(count(todayHtml(), 'Keep breathing.')).toBe(1);
  });
});

describe('the day as this phone knows it', () => {
  const saved = (more: Partial<Saved>): Saved => ({
    entryId: 'e',
    ownerId: 'p',
    kind: 'session',
    entry: null,
    encrypted: null,
    day: '2026-03-09',
    savedAt: 0,
    isUrgent: false,
    status: 'waiting',
    early: 0,
    clockDoubtful: false,
    ...more,
  });

  it('tells a session saved here from one that has reached the clinic', () => {
    expect(dayState(today(), [], 0).session).toBe('open');
    expect(dayState(today(), [saved({})], 0).session).toBe('kept-here');
    expect(dayState(today(), [saved({ status: 'stored' })], 0).session).toBe('sent');
    expect(dayState(today(), [saved({ day: '2026-03-08' })], 0).session).toBe('open');
  });

  it('remembers a warning sign told today, also with no signal', () => {
    expect(dayState(today(), [saved({ kind: 'morning', isUrgent: true })], 0).hasReportedFlag).toBe(true);
    const told = (more: Partial<Saved>, view = today()) =>
      dayState(view, [saved({ isUrgent: true, ...more })], 0).hasReportedFlag;
    const yesterday = '2026-03-08';
    expect([told({ day: yesterday }), told({ day: yesterday, status: 'stored' })]).toEqual([true, false]);
    expect(told({ status: 'stored' })).toBe(true);
  });

  it('leaves a warning sign the clinic knows to the clinic’s own words, so that it can end', () => {
    const isTold = (knownEntryIds: readonly string[]) =>
      dayState({ ...today(), knownEntryIds }, [saved({ isUrgent: true, status: 'stored' })], 0)
        .hasReportedFlag;
    expect([isTold(['another']), isTold(['e'])]).toEqual([true, false]);
  });

  it('offers to change this morning’s answers once the clinic has them, and only the newest of today', () => {
    const morning = (more: Partial<Saved>) => saved({ kind: 'morning', status: 'stored', ...more });
    const toChange = (...entries: readonly Saved[]) => dayState(today(), entries, 0).morningToChange;
    expect(toChange()).toBeNull();
    expect(toChange(morning({ status: 'waiting' }))).toBeNull();
    expect(toChange(morning({ day: '2026-03-08' }))).toBeNull();
    expect(toChange(morning({}))).toBe('e');
    expect(toChange(morning({}), morning({ entryId: 'newer', savedAt: 9 }))).toBe('newer');
    expect(toChange(morning({}), morning({ entryId: 'newer', savedAt: 9, status: 'waiting' }))).toBeNull();
    expect(toChange(morning({}), morning({ entryId: 'not taken', savedAt: 9, status: 'aside' }))).toBe('e');
    const offered = (entries: readonly Saved[]) =>
      todayHtml({ state: dayState(today(), entries, 0) }).includes('Change my answers');
    expect([offered([morning({ status: 'waiting' })]), offered([morning({})])]).toEqual([false, true]);
  });

  it.each([
    [7_199_999, null],
    [7_200_000, 'e'],
    [7_200_001, 'e'],
  ])('asks about two hours later after %i milliseconds: %s', (now, of) => {
    expect(dayState(today({ asksTwoHours: true }), [saved({})], now).twoHoursOf).toBe(of);
  });

  it.each([
    [0, 'e', 0],
    [1, 'e', 1],
    [2, null, 2],
  ])('asks two joints each, also when the page was left after %i of them', (count, of, answered) => {
    const view = today({ asksTwoHours: true, followedJoints: ['left-knee', 'right-knee'] });
    const answers = Array.from({ length: count }, (_, n) =>
      saved({ entryId: `later-${n}`, kind: 'two-hours', savedAt: 7_200_000 }),
    );
    const state = dayState(view, [saved({}), ...answers], 7_300_000);
    expect([state.twoHoursOf, state.twoHoursAnswered]).toEqual([of, answered]);
  });

  it.each([
    [21_599_999, 'e'],
    [21_600_000, null],
  ])('asks past midnight about a session of the evening, after %i milliseconds: %s', (now, of) => {
    const evening = saved({ day: '2026-03-08' });
    expect(dayState(today({ asksTwoHours: true }), [evening], now).twoHoursOf).toBe(of);
  });
});

describe('care advice', () => {
  const html = (flags: Parameters<typeof CareAdvice>[0]['flags'], isCuffOn = false) =>
    renderToStaticMarkup(
      <CareAdvice
        flags={flags}
        clinic={today().clinic}
        isCuffOn={isCuffOn}
        arrival="kept"
        onHome={nothing}
      />,
    );

  it('names the emergency number first for an emergency, also when a lesser sign was told with it', () => {
    const text = html(['locked-joint', 'chest-pain']);
    expect(text).toContain('Stop. Call <a href="tel:112">112</a> now');
    expect(text.indexOf('tel:112')).toBeLessThan(text.indexOf('tel:01234'));
  });

  it('names the clinic first for the same day', () => {
    const text = html(['dark-urine']);
    expect(text).toContain('Stop. Ring your clinic today');
    expect(text.indexOf('tel:01234')).toBeLessThan(text.indexOf('tel:112'));
  });

  it('says to take the cuff off before anything else when it is on', () => {
    const text = html(['fainting'], true);
    expect(text).toMatch(/First take the cuff or wrap off.*<a href="tel:112" class="button/);
  });

  it('says that the wording is still to be approved, and not to wait for the phone to send', () => {
    const text = html(['fainting']);
    expect(text).toContain('still to be approved by your clinic');
    expect(text).toContain('has not reached the clinic yet');
  });
});

describe('signing in', () => {
  it('says what is missing and how to put it right, each mistake in its own words', () => {
    expect(problemsOf('', '').map((problem) => problem.field)).toEqual(['email', 'passphrase']);
    const wrong = [...problemsOf('ana', 'x'), ...problemsOf('ana@clinic', 'x')];
    expect(wrong.map((one) => spokenOf(one).text)).toEqual([expect.stringContaining('@')]);
  });

  const reply = (status: number | null): Reply => ({ status, waitSeconds: 40, asksCode: false });
  it('tells wrong details from too many tries and from no answer', () => {
    const said = (status: number | null) => spokenOf(problemAfter(reply(status), 'passphrase')!).text;
    expect(new Set([401, 429, null, 500].map(said)).size).toBe(3);
    expect(said(429)).toContain('40 seconds');
    expect(problemAfter(reply(200), 'passphrase')).toBeNull();
  });

  it.each([
    ['code', '12345', true],
    ['code', '123456', false],
    ['code', '1234567', true],
    ['recovery', '', true],
    ['recovery', 'a1b2', false],
  ] as const)('a %s of "%s" is asked for again: %s', (kind, code, isAgain) => {
    expect(codeProblem(kind, code) !== null).toBe(isAgain);
  });
});
