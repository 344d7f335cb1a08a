/** The next-morning check on the phone. */
import '#ui/patient/asked-words.ts';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { morningQuestions } from '#core/record/morning-questions.ts';
import { usualStatements } from '#ui/patient/morning/joint-questions.ts';
import { beginMorning, type MorningEvent, morningReducer } from '#ui/patient/morning/morning.ts';
import type { MorningDraft } from '#ui/patient/morning/morning-draft.ts';
import { lastMorningOf, morningEntryOf } from '#ui/patient/morning/morning-entry.ts';
import { morningRows } from '#ui/patient/morning/morning-rows.ts';
import { takenUp } from '#ui/patient/morning/two-mornings.ts';
import { UsualPage } from '#ui/patient/morning/usual-page.tsx';
import { flagOptions } from '#ui/patient/questions/flag-list.ts';

const begin = (): MorningDraft =>
  beginMorning({
    entryId: 'morning-1',
    ownerId: 'p',
    day: '2026-03-09',
    zone: 'Europe/Dublin',
    asksStiffness: true,
    asksSwelling: true,
    joints: ['right-knee'],
  });

const play = (draft: MorningDraft, ...events: readonly MorningEvent[]) =>
  events.reduce(morningReducer, draft);

const pain: MorningEvent = { type: 'answer', joint: 'right-knee', answer: { pain: 3 } };

describe('two mornings half answered', () => {
  const [yesterday, today] = [{ ...begin(), day: '2026-03-08' }, begin()];

  it('neither takes the place of the other', () => {
    const second = takenUp('2026-03-09', yesterday, null);
    expect(second).toEqual({ running: null, aside: yesterday });
    expect(takenUp('2026-03-08', today, second.aside)).toEqual({ running: yesterday, aside: today });
  });

  it('one that was sent is not gone on with', () => {
    const sent = { ...today, endedAt: 9 };
    expect(takenUp('2026-03-09', sent, null)).toEqual({ running: null, aside: null });
  });
});

describe('the morning check', () => {
  it('begins with not one answer, and sends what was not answered as missing', () => {
    const entry = morningEntryOf(begin(), 5);
    expect(entry).toMatchObject({ redFlags: null, extraPainRelief: null, fatigueState: 'not-applicable' });
    expect(entry.joints[0]).toMatchObject({
      pain: null,
      stiffnessMinutes: null,
      swelling: null,
      flare: null,
    });
    expect(morningRows(begin()).map((row) => row.value)).toEqual(Array(6).fill('not answered'));
  });

  it('takes four taps when all is usual: the pain, continue, all of this is right, send', () => {
    const done = play(begin(), pain, { type: 'next' }, { type: 'usual', last: {} }, { type: 'sent', now: 9 });
    expect(done.step).toBe('done');
    expect(morningEntryOf(done, 10)).toMatchObject({
      redFlags: [],
      extraPainRelief: false,
      answeredAt: 9,
      joints: [{ joint: 'right-knee', pain: 3, stiffnessMinutes: 0, swelling: 'none', flare: false }],
    });
  });

  it('says "as last time" with what was said last time', () => {
    const last = { 'right-knee': { stiffnessMinutes: 15 } } as const;
    const done = play(begin(), pain, { type: 'next' }, { type: 'usual', last });
    expect(morningEntryOf(done, 10).joints[0]).toMatchObject({ stiffnessMinutes: 15, swelling: 'none' });
  });

  it('asks each question when not all is usual, warning signs first', () => {
    const draft = play(begin(), pain, { type: 'next' }, { type: 'not-usual' });
    expect(draft.step).toBe('flags');
    expect(draft.flags).toBeNull();
  });

  it('stops at a warning sign with advice, and what was answered is kept', () => {
    const draft = play(begin(), pain, { type: 'flags', flags: ['dark-urine'], now: 7 });
    expect(draft).toMatchObject({ step: 'care', endedAt: 7 });
    expect(morningEntryOf(draft, 8)).toMatchObject({ redFlags: ['dark-urine'], joints: [{ pain: 3 }] });
  });

  it('lets each answer be changed from the check page, also after the short way', () => {
    const draft = play(
      begin(),
      pain,
      { type: 'next' },
      { type: 'usual', last: {} },
      { type: 'change', step: 'stiffness:right-knee' },
      { type: 'answer', joint: 'right-knee', answer: { stiffnessMinutes: 20 } },
      { type: 'next' },
    );
    expect(draft.step).toBe('check');
    expect(morningEntryOf(draft, 9).joints[0]?.stiffnessMinutes).toBe(20);
  });

  it('offers a stiffness that was answered as "as last time" the next day, and swelling never', () => {
    const answer = { swelling: 'severe', stiffnessMinutes: 5 } as const;
    const draft = play(begin(), { type: 'answer', joint: 'right-knee', answer });
    expect(lastMorningOf(draft)).toEqual({ 'right-knee': { stiffnessMinutes: 5 } });
    expect(lastMorningOf(begin())).toEqual({});
  });

  it('sends which question about swelling was answered', () => {
    const draft = play(begin(), { type: 'answer', joint: 'right-knee', answer: { swelling: 'slight' } });
    expect(morningEntryOf(draft, 9).joints[0]).toMatchObject({
      swelling: 'slight',
      swellingState: 'asked',
      swellingQuestion: 'more-than-usual',
    });
  });

  it('an answer to the older question in a half-done check counts as not answered', () => {
    const old: MorningDraft = {
      ...begin(),
      byJoint: { 'right-knee': { pain: 3, stiffnessMinutes: 5, swelling: 'clear', flare: false } },
    };
    expect(morningEntryOf(old, 9).joints[0]).toMatchObject({ pain: 3, stiffnessMinutes: 5, swelling: null });
  });
});

describe('a joint that is not asked about swelling', () => {
  const hip = (): MorningDraft => ({
    ...begin(),
    joints: ['left-hip', 'right-knee'],
    swellingNotAsked: ['left-hip'],
  });

  it('has no page, no line to check and no statement for it, and is sent as not asked', () => {
    const draft = play(hip(), { type: 'go', step: 'usual' }, { type: 'not-usual' });
    expect(play(draft, { type: 'go', step: 'swelling:left-hip' }).step).not.toBe('swelling:left-hip');
    expect(play(draft, { type: 'go', step: 'swelling:right-knee' }).step).toBe('swelling:right-knee');
    const swellingRows = morningRows(draft).filter(({ step }) => step.startsWith('swelling:'));
    expect(swellingRows.map(({ step }) => step)).toEqual(['swelling:right-knee']);
    const statements = usualStatements(draft, {}).join(' ');
    expect(statements).not.toMatch(/hip is no more swollen/);
    expect(statements).toMatch(/knee is no more swollen/);
    const [left, right] = morningEntryOf(play(draft, { type: 'usual', last: {} }), 9).joints;
    expect(left).toMatchObject({ swelling: null, swellingState: 'not-applicable' });
    expect(right).toMatchObject({ swelling: 'none', swellingState: 'asked' });
  });
});

describe('“as usual”', () => {
  const last = { 'right-knee': { stiffnessMinutes: 15 } };
  /** What the page must state for each answer it may give; an answer without a row here fails. */
  const statedAs = new Map<string, readonly string[]>([
    ['right-knee stiffnessMinutes 15', ['Your right knee was stiff for 15 minutes, as last time.']],
    ['left-hip stiffnessMinutes 0', ['Your left hip was not stiff.']],
    ['right-knee swelling none', ['Your right knee is no more swollen than usual.']],
    ['left-hip swelling none', ['Your left hip is no more swollen than usual.']],
    ['right-knee flare false', ['This is not a flare.']],
    ['left-hip flare false', ['This is not a flare.']],
    ['relief false', ['You took no extra pain relief.']],
    ['flags ', ['You have none of these:', ...flagOptions(true).map(({ label }) => label)]],
  ]);
  const answersOf = (entry: ReturnType<typeof morningEntryOf>) => [
    ...entry.joints.flatMap((row) =>
      morningQuestions.flatMap(({ id, answer: { name } }) =>
        id === 'pain' || row[name] === null ? [] : [`${row.joint} ${name} ${row[name]}`],
      ),
    ),
    ...(entry.extraPainRelief === null ? [] : [`relief ${entry.extraPainRelief}`]),
    ...(entry.redFlags === null ? [] : [`flags ${entry.redFlags.join()}`]),
  ];

  it.each([
    ['one joint', {}],
    ['two joints', { joints: ['right-knee', 'left-hip'] }],
    [
      'a joint not asked about swelling',
      { joints: ['right-knee', 'left-hip'], swellingNotAsked: ['left-hip'] },
    ],
    ['stiffness not asked', { asksStiffness: false }],
  ] as const)('answers nothing that the page did not state: %s', (_name, over) => {
    const draft: MorningDraft = { ...begin(), ...over };
    const page = renderToStaticMarkup(
      createElement(UsualPage, { draft, last, hasCuff: true, send: () => undefined }),
    );
    const answers = answersOf(morningEntryOf(play(draft, { type: 'usual', last }), 9));
    expect(answers.length).toBeGreaterThan(3);
    for (const answer of answers) {
      const statements = statedAs.get(answer) ?? [`no statement is known for ${answer}`];
      for (const statement of statements) expect(page).toContain(statement);
    }
  });
});

it('answers given again name the entry they change; first ones name none', () => {
  const again = beginMorning({ ...begin(), entryId: 'morning-2', amends: 'morning-1' });
  expect(morningEntryOf(again, 1)).toMatchObject({ entryId: 'morning-2', amends: 'morning-1' });
  expect('amends' in morningEntryOf(begin(), 1)).toBe(false);
});
