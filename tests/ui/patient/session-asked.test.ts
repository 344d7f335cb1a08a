/** How a session asks: warning signs by list or short question, and statements in place of questions. */
import { describe, expect, it } from 'vitest';
import { neededStep } from '#ui/patient/session/check-rows.ts';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import { stepsOf } from '#ui/patient/session/steps.ts';
import { began, begin, eligibility, next, none, oneSet, onlyWeight, play } from './session-play.ts';
import { today } from './views.ts';

describe('a ticked sign', () => {
  const ticked = play(begin(onlyWeight), { type: 'flags', when: 'before', flags: ['fainting'], now: began });

  it('is asked about once more before anything ends', () => {
    expect(ticked).toMatchObject({ step: 'confirm', stoppedByFlag: false, endedAt: null, flagsBefore: null });
    expect(sessionEntryOf(ticked, began).redFlags).toBeNull();
  });

  it('taken back as a slip opens no warning sign, is stored, and the list is asked again', () => {
    const slipped = play(ticked, { type: 'confirm', isSlip: true, now: began });
    expect(slipped).toMatchObject({ step: 'flags-before', stoppedByFlag: false, endedAt: null });
    const answered = play(slipped, none('before'));
    expect(sessionEntryOf(answered, began)).toMatchObject({ redFlags: [], signSlips: ['fainting'] });
  });
});

describe('how warning signs are asked for', () => {
  const short = today({ ...onlyWeight, shortSignsUntil: '2026-03-09' });
  const formsOf = (draft: SessionDraft) =>
    (sessionEntryOf(draft, began).signsAsked ?? []).map(({ moment, form }) => `${moment} ${form}`);
  const worked = (view: typeof short) =>
    play(begin(view), ...eligibility, next, ...oneSet(0, 1, 15, began), { type: 'finish-here' });

  it.each([
    ['2026-03-08', 'list'],
    ['2026-03-09', 'short'],
    ['2026-03-10', 'short'],
    [null, 'list'],
  ] as const)('with the short form allowed until %s, 9 March is asked by: %s', (shortSignsUntil, form) => {
    expect(begin(today({ shortSignsUntil })).signForm).toBe(form);
  });

  it('by the short question and a statement: both are stored as what they were', () => {
    const draft = play(worked(short), { type: 'go', step: 'statement' }, { type: 'right', isRight: true });
    expect(sessionEntryOf(draft, began).redFlags).toEqual([]);
    expect(formsOf(draft)).toEqual(['before short', 'during statement']);
  });

  it('nothing is sent before the statement was answered, and its “no” opens the whole list', () => {
    expect(neededStep(worked(short))).toBe('statement');
    const no = play(worked(short), { type: 'go', step: 'statement' }, { type: 'right', isRight: false });
    expect(no.step).toBe('flags-during');
    expect(neededStep(no)).toBe('flags-during');
    expect(formsOf(play(no, none('during')))).toEqual(['before short', 'during list']);
  });

  it('by the list, opened in place of the short question, is stored as the list', () => {
    const opened = play(begin(short), { type: 'whole-list', when: 'before' }, none('before'));
    expect(formsOf(opened)).toEqual(['before list']);
  });

  it('a statement taken back is no answer any more, about signs or about the joint', () => {
    const yes = play(worked(short), { type: 'go', step: 'statement' }, { type: 'right', isRight: true });
    const no = play(yes, { type: 'change', step: 'statement' }, { type: 'right', isRight: false });
    const entry = sessionEntryOf(no, began);
    expect([entry.redFlags, entry.didExtra, entry.joints[0]?.gaveWay]).toEqual([null, null, null]);
  });
});

describe('“as usual today”', () => {
  const asked = play(
    begin(onlyWeight),
    none('before'),
    { type: 'score', key: 'before:right-knee', score: 2 },
    next,
  );

  it('takes each of its statements as answered', () => {
    expect(asked.step).toBe('usual');
    const entry = sessionEntryOf(play(asked, { type: 'usual', isUsual: true }), began);
    expect(entry).toMatchObject({ otherJointWorse: false, extraPainRelief: false, news: [] });
  });

  it('with something different asks each, and answers none by itself', () => {
    const no = play(asked, { type: 'usual', isUsual: false });
    expect(no.step).toBe('other-joint');
    expect(stepsOf(no)).toEqual(expect.arrayContaining(['other-joint', 'relief', 'news']));
    const entry = sessionEntryOf(no, began);
    expect(entry).toMatchObject({ otherJointWorse: null, extraPainRelief: null, news: null });
  });

  it('taken back while checking asks each before it is sent, and goes back to the check', () => {
    const yes = play(asked, { type: 'usual', isUsual: true });
    const changed = play(yes, { type: 'change', step: 'usual' }, { type: 'usual', isUsual: false });
    expect(changed.step).toBe('other-joint');
    const done = play(
      changed,
      { type: 'other-joint', isWorse: false },
      next,
      { type: 'relief', relief: true },
      next,
      { type: 'news', news: [] },
      next,
    );
    expect(done.step).toBe('check');
    expect(sessionEntryOf(done, began).extraPainRelief).toBe(true);
  });
});
