/** Three of six joints in a flare, not alike: each has its own answers, in no more presses than the bar. */
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import '#ui/patient/asked-words.ts';
import { AlikePage } from '#ui/patient/morning/alike-page.tsx';
import { questionById } from '#ui/patient/morning/joint-questions.ts';
import type { MorningEvent } from '#ui/patient/morning/morning.ts';
import { morningEntryOf } from '#ui/patient/morning/morning-entry.ts';
import { morningRows } from '#ui/patient/morning/morning-rows.ts';
import { noSigns, play, six, threeFlare, usual } from './six-joints.ts';

describe('three of six joints in a flare, not alike', () => {
  it('are done in fifteen presses, each joint with its own', () => {
    const each = (id: 'stiffness' | 'swelling', answers: readonly object[]): readonly MorningEvent[] =>
      answers.map((answer, place) => ({ type: 'each', id, joint: six[place]!, answer }));
    const presses: readonly MorningEvent[] = [
      usual,
      ...each(
        'stiffness',
        [60, 30, 45].map((stiffnessMinutes) => ({ stiffnessMinutes })),
      ),
      ...each(
        'swelling',
        ['slight', 'none', 'clear'].map((swelling) => ({ swelling })),
      ),
      { type: 'flares', joints: ['left-hand', 'left-wrist'] },
      noSigns,
    ];
    const done = play(threeFlare(), ...presses);
    expect([6 + presses.length, done.step]).toEqual([15, 'done']);
    const entry = morningEntryOf(done, 9);
    expect(
      entry.joints.map(({ stiffnessMinutes, swelling, flare }) => [stiffnessMinutes, swelling, flare]),
    ).toEqual([
      [60, 'slight', true],
      [30, 'none', false],
      [45, 'clear', true],
      ...Array.from({ length: 3 }, () => [15, 'none', false]),
    ]);
    const steps = morningRows(done).map(({ key, step }) => [key, step]);
    expect(steps).toContainEqual(['stiffness:right-hand', 'all:stiffness']);
    expect(steps).toContainEqual(['relief', 'usual']);
  });

  it('with one of them open the page stays, and nothing is sent', () => {
    const one = play(threeFlare(), usual, {
      type: 'each',
      id: 'stiffness',
      joint: 'left-hand',
      answer: { stiffnessMinutes: 60 },
    });
    expect(one.step).toBe('all:stiffness');
    expect(play(one, { type: 'go', step: 'flags' }, noSigns)).toMatchObject({
      step: 'all:stiffness',
      endedAt: null,
    });
  });

  it('a joint whose answer is not known is sent as missing, the others as told', () => {
    const told = play(
      threeFlare(),
      usual,
      ...six.slice(0, 3).map((joint, place): MorningEvent => {
        const answer = { swelling: place === 1 ? ('unknown' as const) : ('slight' as const) };
        return { type: 'each', id: 'swelling', joint, answer };
      }),
    );
    const swelling = morningEntryOf(told, 9).joints.map((row) => row.swelling);
    expect(swelling.slice(0, 3)).toEqual(['slight', null, 'slight']);
  });

  it('the page of which flare holds every answer for three as one press, and a way to be asked one by one', () => {
    const draft = play(threeFlare(), usual);
    const page = renderToStaticMarkup(
      createElement(AlikePage, { draft, question: questionById('flare')!, send: () => undefined }),
    );
    const values = [...page.matchAll(/<button[^>]*value="([^"]*)"/g)].map(([, value]) => value);
    expect(values.slice(0, -1).toSorted()).toEqual(
      [
        '',
        'left-hand',
        'right-hand',
        'left-wrist',
        'left-hand right-hand',
        'left-hand left-wrist',
        'right-hand left-wrist',
        'left-hand right-hand left-wrist',
      ].toSorted(),
    );
    expect(values.at(-1)).toBe('singly');
  });
});
