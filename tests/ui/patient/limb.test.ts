/** Fingers or toes after a cuff, on the phone: asked sign by sign, waited for, and sent as answered. */
import { describe, expect, it } from 'vitest';
import '#ui/patient/asked-words.ts';
import { checkRows, neededStep } from '#ui/patient/session/check-rows.ts';
import type { LimbAnswer, SessionDraft } from '#ui/patient/session/draft.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import type { SessionEvent } from '#ui/patient/session/events.ts';
import { limbAnswers } from '#ui/patient/session/pages/limb-pages.tsx';
import { stepsOf } from '#ui/patient/session/steps.ts';
import { begin, eligibility, meant, next, play } from './session-play.ts';
import { cuffDose, exercise, today } from './views.ts';

const withPulse = { ...cuffDose, pulseShown: true };
const released = (dose: typeof cuffDose, more: readonly (typeof cuffDose)[] = []): SessionDraft =>
  play(
    begin(today({ exercises: [dose, ...more].map((one, at) => exercise(`cuff-${at}`, one)) })),
    ...eligibility,
    { type: 'load', item: 0, loadKg: 3 },
    next,
    { type: 'cuff-on', item: 0, now: 10_000 },
    next,
    { type: 'cuff-stop', item: 0, set: 1 },
    { type: 'cuff-off', item: 0, now: 60_000 },
  );

type Sign = 'colour' | 'feeling' | 'pulse';
const answered = (sign: Sign, answer: LimbAnswer, isLater = false): readonly SessionEvent[] => [
  { type: 'limb', item: 0, isLater, sign, answer },
  next,
];
const first = (...answers: readonly LimbAnswer[]): readonly SessionEvent[] =>
  (['colour', 'feeling', 'pulse'] as const).flatMap((sign, at) =>
    answers[at] === undefined ? [] : answered(sign, answers[at]),
  );
const sent = (draft: SessionDraft) => sessionEntryOf(draft, 99_000).limbChecks;
const look = { itemId: 'cuff-0', moment: 'after', colour: 'usual', feeling: 'usual' };

describe('two minutes after release', () => {
  it('colour, feeling and the pulse that was shown are asked apart, in this order', () => {
    const off = released(withPulse);
    expect(off.step).toBe('limb:0');
    expect(stepsOf(off).filter((step) => step.startsWith('limb'))).toEqual([
      'limb:0',
      'limb:0:2',
      'limb:0:3',
    ]);
    const usual = play(off, ...first('usual', 'usual', 'usual'));
    expect(usual.step).toBe('stop-count:0:1');
    expect(sent(usual)).toEqual([{ ...look, pulse: 'usual', pulseState: 'asked' }]);
  });

  it('a pulse that was not shown by the prescription is not asked, and goes out as not asked', () => {
    const usual = play(released(cuffDose), ...first('usual', 'usual'));
    expect(usual.step).toBe('stop-count:0:1');
    expect(sent(usual)).toEqual([{ ...look, pulse: null, pulseState: 'not-asked' }]);
  });

  it('“I was not shown how” is no answer about the pulse: missing, never as usual', () => {
    const draft = play(released(withPulse), ...first('usual', 'usual', 'not-shown'));
    expect(draft.step).toBe('stop-count:0:1');
    expect(sent(draft)).toEqual([{ ...look, pulse: null, pulseState: 'not-shown' }]);
  });

  it.each([
    ['white fingers or toes', ['not-usual', 'usual', 'usual']],
    ['numbness', ['usual', 'not-usual', 'usual']],
    ['no pulse', ['usual', 'usual', 'not-usual']],
    ['a colour that is not known', ['unknown', 'usual', 'usual']],
  ] as const)('%s is waited for and asked again before anything else', (_, answers) => {
    expect(play(released(withPulse), ...first(...answers)).step).toBe('limb-later:0');
  });

  it('not as usual leaves the cuff off for the rest of the day', () => {
    const two = released(withPulse, [withPulse]);
    expect(stepsOf(two)).toContain('cuff-on:1');
    expect(stepsOf(play(two, ...first('usual', 'usual', 'not-usual')))).not.toContain('cuff-on:1');
  });
});

describe('asked again', () => {
  const waiting = play(released(withPulse), ...first('usual', 'usual', 'not-usual'));

  it('all as usual goes on, and both looks are sent', () => {
    const later = (sign: Sign) => answered(sign, 'usual', true);
    const back = play(waiting, ...later('colour'), ...later('feeling'), ...later('pulse'));
    expect(back.step).toBe('stop-count:0:1');
    expect(sent(back)).toEqual([
      { ...look, pulse: 'not-usual', pulseState: 'asked' },
      { ...look, moment: 'later', pulse: 'usual', pulseState: 'asked' },
    ]);
  });

  it('too early and still not as usual goes back to waiting, and is asked from the start', () => {
    const early = play(waiting, { type: 'limb-again', item: 0 }, ...answered('colour', 'usual', true));
    expect(early.step).toBe('limb-later:0:2');
    const again = play(early, { type: 'limb-wait', item: 0 });
    expect([again.step, again.items[0]?.signsLater]).toEqual(['limb-later:0', undefined]);
  });

  it('a sign told as still there ends the session and is sent with what was answered', () => {
    const ended = play(
      waiting,
      { type: 'limb', item: 0, isLater: true, sign: 'colour', answer: 'not-usual' },
      ...meant('now', ['persistent-limb-change-after-release'], 700_000),
    );
    const entry = sessionEntryOf(ended, 700_000);
    expect(entry).toMatchObject({ stoppedByFlag: true, redFlags: ['persistent-limb-change-after-release'] });
    expect(entry.limbChecks?.[1]).toEqual({
      itemId: 'cuff-0',
      moment: 'later',
      colour: 'not-usual',
      feeling: null,
      pulse: null,
      pulseState: 'asked',
    });
  });
});

describe('before anything is sent', () => {
  it('a look that was left open is asked for, also one that a changed answer brings', () => {
    const off = play(released(withPulse), ...first('usual'), {
      type: 'flags',
      when: 'before',
      flags: [],
      now: 1,
    });
    expect(neededStep(off)).toBe('limb:0:2');
    const usual = play(released(withPulse), ...first('usual', 'usual', 'usual'));
    const changed = play(usual, { type: 'change', step: 'limb:0:3' }, ...answered('pulse', 'not-usual'));
    expect([changed.step, neededStep(changed)]).toEqual(['check', 'limb-later:0']);
  });

  it('each sign stands among the answers to be checked', () => {
    const rows = checkRows(play(released(withPulse), ...first('usual', 'not-usual', 'not-shown')));
    expect(
      rows.filter(({ step }) => step.startsWith('limb:')).map(({ name, value }) => [name, value]),
    ).toEqual([
      ['Do your toenails and sole look as usual, compared with the other foot?', 'Yes'],
      ['Do your toes feel as usual?', 'No'],
      ['Is the pulse at your foot as usual?', 'I was not shown how'],
    ]);
  });
});

describe('a session begun before the pulse was asked', () => {
  const old = (limb: 'usual' | 'not-yet', step: string): SessionDraft => {
    const off = released(withPulse);
    return { ...off, step, items: off.items.map(({ signs: _, ...item }) => ({ ...item, limb })) };
  };

  it('goes on waiting for the limb that was not as usual', () => {
    const draft = old('not-yet', 'limb-later:0');
    expect(stepsOf(draft)).toContain('limb-later:0');
    expect(play(draft, { type: 'limb-again', item: 0 }).step).toBe('limb-later:0');
  });

  it('claims nothing it was not told: the signs are asked for before it is sent', () => {
    const draft = old('usual', 'check');
    expect(sent(draft)).toEqual([
      {
        itemId: 'cuff-0',
        moment: 'after',
        colour: null,
        feeling: null,
        pulse: null,
        pulseState: 'asked',
      },
    ]);
    expect(neededStep({ ...draft, flagsBefore: [] })).toBe('limb:0');
  });
});

describe('before the two minutes are over', () => {
  const values = (sign: 'colour' | 'pulse', isLater: boolean, isEarly: boolean) =>
    limbAnswers(sign, isLater, isEarly).map(({ value }) => value);

  it('a change can be told at once, and “as usual” is no answer yet', () => {
    expect(values('colour', false, true)).toEqual(['not-usual']);
    expect(values('pulse', false, true)).toEqual(['not-usual', 'not-shown']);
    expect(values('colour', false, false)).toEqual(['usual', 'not-usual', 'unknown']);
    expect(values('pulse', true, false)).toEqual(['usual', 'not-usual']);
  });
});
