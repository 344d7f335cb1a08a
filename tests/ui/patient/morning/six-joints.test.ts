/** Six joints in the morning check: what is as yesterday by one press, what is asked of the others together. */
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import '#ui/patient/asked-words.ts';
import type { AsYesterday } from '#core/record/as-yesterday.ts';
import { AlikePage } from '#ui/patient/morning/alike-page.tsx';
import { EitherPage } from '#ui/patient/morning/either-page.tsx';
import { questionById, usualStatements } from '#ui/patient/morning/joint-questions.ts';
import type { MorningEvent } from '#ui/patient/morning/morning.ts';
import type { MorningDraft } from '#ui/patient/morning/morning-draft.ts';
import { morningEntryOf } from '#ui/patient/morning/morning-entry.ts';
import { morningEcho, morningRows } from '#ui/patient/morning/morning-rows.ts';
import { isOnceOffered, offered } from '#ui/patient/morning/morning-steps.ts';
import { begin, noSigns, play, quiet, scored, threeFlare, usual, usualJoints } from './six-joints.ts';

const answeredAlike: readonly MorningEvent[] = [
  { type: 'alike', id: 'stiffness', answer: { stiffnessMinutes: 60 } },
  { type: 'alike', id: 'swelling', answer: { swelling: 'slight' } },
  { type: 'alike', id: 'flare', answer: { flare: true } },
  noSigns,
];

describe('six joints as usual', () => {
  const asked = play(begin(), ...scored(2, 2, 3, 2, 2, 2));

  it('are done after six pains, one press and the signs, each with its own values', () => {
    const done = play(asked, usual, noSigns);
    expect([asked.step, done.step]).toEqual(['usual', 'done']);
    const entry = morningEntryOf(done, 10);
    expect(entry).toMatchObject({ via: 'as-yesterday', extraPainRelief: false, otherJoint: 'not-worse' });
    expect(entry.joints.map(({ pain }) => pain)).toEqual([2, 2, 3, 2, 2, 2]);
    expect(new Set(entry.joints.map(({ stiffnessMinutes }) => stiffnessMinutes))).toEqual(new Set([15]));
  });

  it('the page states each joint in a line, and everything else that it answers', () => {
    const statements = usualStatements(asked, offered(asked)!);
    expect(statements).toHaveLength(8);
    expect(statements[0]).toBe('Left hand: Stiff for 15 minutes, Not more swollen than usual, Not a flare');
    expect(statements.slice(6)).toEqual(['No other joint is worse', 'No extra pain relief']);
  });

  it('another joint that was worse yesterday, or not said, is asked about by itself', () => {
    const { noOtherJoint: _, ...rest } = quiet as Extract<AsYesterday, object>;
    const pressed = play(begin({ asYesterday: rest }), ...scored(2, 2, 2, 2, 2, 2), usual);
    expect(pressed.step).toBe('other-joint');
    expect(morningEntryOf(play(pressed, { type: 'flags', flags: [], now: 1 }), 9).otherJoint).toBe(
      'not-answered',
    );
    const told = play(pressed, { type: 'other-joint', isWorse: true }, noSigns);
    expect(morningEntryOf(told, 9).otherJoint).toBe('worse');
  });

  it('a patient who is not asked about another joint sends nothing of it', () => {
    const done = play(begin({ asksOtherJoint: false }), ...scored(2, 2, 2, 2, 2, 2), usual, noSigns);
    expect(morningEntryOf(done, 9)).not.toHaveProperty('otherJoint');
  });
});

describe('three of six joints in a flare', () => {
  it('alike are done in eleven presses: what is quiet by one, each question of the others once', () => {
    const done = play(threeFlare(), usual, ...answeredAlike);
    expect(done.step).toBe('done');
    const entry = morningEntryOf(done, 10);
    expect(entry).toMatchObject({ via: 'partly', otherJoint: 'not-worse', extraPainRelief: false });
    expect(
      entry.joints.map(({ stiffnessMinutes, swelling, flare }) => [stiffnessMinutes, swelling, flare]),
    ).toEqual([
      ...Array.from({ length: 3 }, () => [60, 'slight', true]),
      ...Array.from({ length: 3 }, () => [15, 'none', false]),
    ]);
  });

  it('the short way speaks of the quiet joints, and of relief and another joint, which have a way of their own', () => {
    const draft = threeFlare();
    const statements = usualStatements(draft, offered(draft)!, isOnceOffered(draft));
    expect(statements.slice(0, 3).map((text) => text.split(':')[0])).toEqual([
      'Right wrist',
      'Left knee',
      'Right knee',
    ]);
    expect(statements.slice(3)).toEqual(['No other joint is worse', 'No extra pain relief']);
    const pressed = morningEntryOf(play(draft, usual), 9);
    expect(pressed).toMatchObject({ extraPainRelief: false, otherJoint: 'not-worse' });
    const joints = morningEntryOf(play(draft, usualJoints), 9);
    expect(joints).toMatchObject({ extraPainRelief: null, otherJoint: 'not-answered' });
    for (const { joints: rows } of [pressed, joints])
      expect(rows.slice(0, 3).every(({ flare, swelling }) => flare === null && swelling === null)).toBe(true);
  });

  it('what was said of relief and another joint is asked again once only the joints are as yesterday', () => {
    const again = play(threeFlare(), usual, { type: 'change', step: 'usual' }, usualJoints);
    expect(morningEntryOf(again, 9)).toMatchObject({ extraPainRelief: null, otherJoint: 'not-answered' });
    expect(play(again, noSigns)).toMatchObject({ endedAt: null });
  });

  it('another joint that was worse yesterday is not stated, and asked with relief as before', () => {
    const { noOtherJoint: _, ...rest } = quiet as Extract<AsYesterday, object>;
    const draft = threeFlare({ asYesterday: rest });
    expect(isOnceOffered(draft)).toBe(false);
    const told = play(draft, usual, ...answeredAlike.slice(0, 3));
    expect(told.step).toBe('either');
  });

  it('a question that is not the same in each is asked one by one', () => {
    const stiff = play(threeFlare(), usual, { type: 'alike', id: 'stiffness', answer: 'singly' });
    expect(stiff.step).toBe('stiffness:left-hand');
    const each = ['left-hand', 'right-hand', 'left-wrist'] as const;
    const answered = play(
      stiff,
      ...each.flatMap((joint, place): readonly MorningEvent[] => [
        { type: 'answer', joint, answer: { stiffnessMinutes: 30 * (place + 1) } },
        { type: 'next' },
      ]),
    );
    expect(answered.step).toBe('all:swelling');
    const minutes = morningEntryOf(answered, 9).joints.map(({ stiffnessMinutes }) => stiffnessMinutes);
    expect(minutes).toEqual([30, 60, 90, 15, 15, 15]);
  });

  it('the signs do not send it while anything of it is open', () => {
    expect(play(threeFlare(), usual, noSigns)).toMatchObject({ step: 'all:stiffness', endedAt: null });
    const some = play(threeFlare(), usual, answeredAlike[0]!, noSigns);
    expect(some).toMatchObject({ step: 'all:swelling', endedAt: null });
  });

  it('a pain that turns out higher takes back what was said to be as yesterday', () => {
    const changed = play(
      threeFlare(),
      usual,
      ...answeredAlike.slice(0, 3),
      { type: 'change', step: 'pain:left-knee' },
      { type: 'answer', joint: 'left-knee', answer: { pain: 7 } },
    );
    const knee = morningEntryOf(changed, 9).joints.find(({ joint }) => joint === 'left-knee');
    expect(knee).toMatchObject({ pain: 7, stiffnessMinutes: null, swelling: null, flare: null });
  });

  it('the page names the joints it asks about, and the end names each answer', () => {
    const draft = play(threeFlare(), usual);
    const page = renderToStaticMarkup(
      createElement(AlikePage, { draft, question: questionById('stiffness')!, send: () => undefined }),
    );
    for (const name of ['left hand', 'right hand', 'left wrist']) expect(page).toContain(name);
    expect(page).not.toContain('right wrist');
    const done = play(draft, ...answeredAlike);
    expect(morningEcho(done)).toContain(
      'Left hand: pain 6, stiff for 60 minutes, a little more swollen, flare.',
    );
    const steps = morningRows(done).map(({ key, step }) => [key, step]);
    expect(steps).toContainEqual(['stiffness:left-hand', 'all:stiffness']);
    expect(steps).toContainEqual(['stiffness:left-knee', 'usual']);
  });
});

describe('another joint and extra pain relief', () => {
  const asked = () => play(threeFlare(), usualJoints, ...answeredAlike.slice(0, 3));

  it.each([
    ['neither', 'not-worse', false],
    ['other-joint', 'worse', false],
    ['relief', 'not-worse', true],
    ['both', 'worse', true],
  ] as const)('%s is one press that answers both', (answer, otherJoint, extraPainRelief) => {
    expect(asked().step).toBe('either');
    const told = play(asked(), { type: 'either', answer });
    expect(told.step).toBe('flags');
    expect(morningEntryOf(told, 9)).toMatchObject({ otherJoint, extraPainRelief });
    const rows = morningRows(told).filter(({ step }) => step === 'either');
    expect(rows).toHaveLength(2);
  });

  it('not sure of one: each is asked by itself, and nothing of them is sent until it was', () => {
    const singly = play(asked(), { type: 'either', answer: 'both' }, { type: 'change', step: 'either' });
    const open = play(singly, { type: 'either', answer: 'singly' });
    expect(open.step).toBe('other-joint');
    expect(morningEntryOf(open, 9)).toMatchObject({ otherJoint: 'not-answered', extraPainRelief: null });
    const half = play(open, { type: 'other-joint', isWorse: 'unknown' });
    expect(half.step).toBe('relief');
    expect(play(half, { type: 'go', step: 'flags' }, noSigns)).toMatchObject({
      step: 'relief',
      endedAt: null,
    });
  });

  it('the page says each question in full, and the answer given before is marked', () => {
    const told = play(asked(), { type: 'either', answer: 'relief' });
    const page = renderToStaticMarkup(createElement(EitherPage, { draft: told, send: () => undefined }));
    for (const text of [
      'Is another joint worse than usual today?',
      'Have you taken extra pain relief since yesterday?',
      'It can hide pain',
    ])
      expect(page).toContain(text);
    expect(page).toMatch(/value="relief"[^>]*>Extra pain relief<span class="answer-before">/);
  });

  it('a draft of an earlier release is asked each by itself, as it began', () => {
    const { either: _, ...earlier } = threeFlare();
    const draft = play(earlier, usual, ...answeredAlike.slice(0, 3));
    expect(draft.step).toBe('other-joint');
    expect(play(draft, { type: 'other-joint', isWorse: false }).step).toBe('relief');
  });

  it('a pain that turns out higher takes both answers back', () => {
    const changed = play(
      asked(),
      { type: 'either', answer: 'neither' },
      { type: 'change', step: 'pain:left-knee' },
      { type: 'answer', joint: 'left-knee', answer: { pain: 7 } },
    );
    expect(changed).toMatchObject({ either: null, otherJointWorse: null, relief: null });
  });
});

describe('tiredness, where the clinic has it asked', () => {
  const tired = (fatigue?: number): Partial<MorningDraft> => ({
    asksFatigue: true,
    asYesterday: {
      ...(quiet as Extract<AsYesterday, object>),
      ...(fatigue === undefined ? {} : { fatigue }),
    },
  });
  const pains = scored(2, 2, 2, 2, 2, 2);

  it('is stated as yesterday and sent so; without a value of yesterday it is asked', () => {
    const stated = play(begin(tired(4)), ...pains);
    expect(usualStatements(stated, offered(stated)!)).toContain('Tiredness 4 of 10');
    expect(morningEntryOf(play(stated, usual), 9)).toMatchObject({ fatigue: 4, fatigueState: 'asked' });
    const open = play(begin(tired()), ...pains, usual);
    expect([open.step, morningEntryOf(open, 9).fatigue]).toEqual(['fatigue', null]);
    expect(morningEntryOf(play(open, { type: 'fatigue', fatigue: 7 }, noSigns), 9).fatigue).toBe(7);
  });

  it('is asked by itself where not every joint is as yesterday, and is never taken as nought', () => {
    const pressed = play(threeFlare(tired(4)), usual, ...answeredAlike.slice(0, 3));
    expect([pressed.step, morningEntryOf(pressed, 9).fatigue]).toEqual(['fatigue', null]);
    const unknown = play(pressed, { type: 'fatigue', fatigue: 'unknown' });
    expect(morningEntryOf(unknown, 9)).toMatchObject({ fatigue: null, fatigueState: 'asked' });
  });

  it('has no page and is sent as not asked where it is not', () => {
    const done = play(begin(), ...pains, usual, noSigns);
    expect(morningEntryOf(done, 9)).toMatchObject({ fatigue: null, fatigueState: 'not-applicable' });
  });
});
