/** What a session by ear says, and when: from the dose and the entries of the session alone. */
import { afterEach, describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { speak } from '#ui/language/speak.ts';
import { setLanguage } from '#ui/language/words.ts';
import { dueCue, earCues, earKey } from '#ui/patient/by-ear/ear-cues.ts';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import '#ui/patient/words.ts';
import { begin, eligibility, next, oneSet, play } from '../session-play.ts';
import { chairDose, cuffDose, exercise, today, weightDose } from '../views.ts';

afterEach(() => setLanguage());

const opened = 100_000;

const atFirstSet = (dose: Dose): SessionDraft =>
  play(
    begin(today({ exercises: [exercise('a', dose)] })),
    ...eligibility,
    { type: 'load', item: 0, loadKg: 3 },
    next,
    ...(dose.method === 'occlusion' ? ([{ type: 'cuff-on', item: 0, now: opened }, next] as const) : []),
  );

/** Seconds after the page was opened, with what is said then. */
const heard = (draft: SessionDraft, openedAt = opened): readonly string[] =>
  earCues(draft, openedAt).map(({ at, text }) => `${(at - openedAt) / 1000}: ${text}`);

describe('a set', () => {
  it('is told, begun, and counted to its highest number in the tempo of the dose', () => {
    const said = heard(atFirstSet({ ...weightDose, secondsPerRepetition: 4 }));
    expect(said.slice(0, 4)).toEqual([
      '0: Set 1 of 3. 15 to 20 times. Get ready.',
      '5: Start.',
      '9: 1',
      '13: 2',
    ]);
    expect(said.slice(-2)).toEqual(['85: 20', '87: Press the large button.']);
    expect(heard(atFirstSet({ ...weightDose, secondsPerRepetition: 2.5 }))[2]).toBe('7.5: 1');
  });

  it('of holds says when each begins and ends, and its number only once it was held', () => {
    const held: Dose = {
      ...chairDose,
      method: 'variation',
      sets: 1,
      repetitions: { low: 2, high: 2 },
      reserve: 2,
      effectiveLoadKg: null,
      addedKg: 0,
      hold: { seconds: 5, mostSeconds: 10 },
      secondsPerRepetition: 8,
    };
    expect(heard(atFirstSet(held))).toEqual([
      '0: Set 1 of 1. 2 holds of 5 seconds. Get ready.',
      '5: Hold.',
      '10: 1. Let go.',
      '13: Hold.',
      '18: 2. Let go.',
      '20: Press the large button.',
    ]);
  });

  it('of a dose without a tempo is told and begun, and not counted', () => {
    for (const missing of [null, undefined, 0, Number.NaN]) {
      const dose = { ...weightDose, secondsPerRepetition: missing } as Dose;
      expect(heard(atFirstSet(dose))).toEqual(['0: Set 1 of 3. 15 to 20 times. Get ready.', '5: Start.']);
    }
  });

  it('speaks the language of the page', async () => {
    await speak('de');
    const [told, begun] = heard(atFirstSet(weightDose));
    expect([told, begun]).toEqual(['0: Satz 1 von 3. 15 bis 20 Mal. Machen Sie sich bereit.', '5: Los.']);
  });

  it('that is done already, reached again by Back, is not counted', () => {
    const done = play(atFirstSet(weightDose), ...oneSet(0, 1, 20, opened), { type: 'go', step: 'set:0:1' });
    expect(done.step).toBe('set:0:1');
    expect(heard(done)).toEqual([]);
  });

  it('is counted with a cuff only while the cuff is on', () => {
    const on = atFirstSet(cuffDose);
    expect(heard(on)[0]).toBe('0: Set 1 of 4. 30 times. Get ready.');
    const waiting: SessionDraft = { ...on, items: on.items.map((item) => ({ ...item, restrictions: [] })) };
    expect(heard(waiting)).toEqual([]);
    expect(earKey(waiting, opened)).not.toBe(earKey(on, opened));
  });
});

describe('a rest', () => {
  const resting = play(atFirstSet(weightDose), ...oneSet(0, 1, 20, opened));
  const lastOfRest = ['80: 10 more seconds of rest.', '87: 3', '88: 2', '89: 1', '90: Rest is over'];

  it('is told, with its last seconds and its end, for as long as the dose says', () => {
    expect(resting.step).toBe('rest:0:1');
    expect(heard(resting)).toEqual(['0: Rest', ...lastOfRest]);
  });

  it('runs on under the next set, which is told when it is over', () => {
    const nextSet = play(resting, { type: 'reserve', item: 0, set: 1, reserve: 2 }, next);
    expect(nextSet.step).toBe('set:0:2');
    const said = earCues(nextSet, opened + 6000).map(({ at, text }) => `${(at - opened) / 1000}: ${text}`);
    expect(said.slice(0, 7)).toEqual([
      ...lastOfRest,
      '92: Set 2 of 3. 15 to 20 times. Get ready.',
      '97: Start.',
    ]);
  });

  it('that is over when the next set is opened is not told; what has passed of one is not either', () => {
    const nextSet = play(resting, { type: 'reserve', item: 0, set: 1, reserve: 2 }, next);
    expect(heard(nextSet, opened + 90_000)[0]).toBe('0: Set 2 of 3. 15 to 20 times. Get ready.');
    expect(heard(nextSet, opened + 88_000).slice(0, 3)).toEqual(['0: 2', '1: 1', '2: Rest is over']);
  });

  it('between sets with a cuff that stays up begins on the page of the next set', () => {
    const nextSet = play(atFirstSet(cuffDose), ...oneSet(0, 1, 30, opened));
    expect(nextSet.step).toBe('set:0:2');
    expect(heard(nextSet).slice(0, 2)).toEqual(['0: Rest', '20: 10 more seconds of rest.']);
  });
});

describe('the end of the time with a cuff', () => {
  const on = atFirstSet(cuffDose);
  // The most the dose allows, in seconds: 480.
  const cap = opened + 480_000;

  it('is said at the time of the dose, on whatever page, and again each ten seconds', () => {
    expect(earKey(on, cap - 1)).toBe(earKey(on, opened));
    expect(earKey(on, cap)).not.toBe(earKey(on, opened));
    for (const step of [on.step, 'flags-now']) {
      const said = heard({ ...on, step }, cap);
      expect(said.slice(0, 2)).toEqual([
        '0: The time is up. Take it off now, even if you have not finished.',
        '10: The time is up. Take it off now, even if you have not finished.',
      ]);
      expect(said.some((line) => /: \d+$/.test(line))).toBe(false);
    }
  });

  it('is said after the last set and after stopping, once', () => {
    const stopped = play(on, { type: 'cuff-stop', item: 0, set: 1 });
    expect(heard(stopped)).toEqual(['0: You have stopped. Take it off now.']);
    const off = play(stopped, { type: 'cuff-off', item: 0, now: opened + 1000 });
    expect(heard(off)).toEqual([]);
  });
});

describe('what is due', () => {
  const cues = [
    { at: 10, text: 'a' },
    { at: 20, text: 'b' },
  ];

  it('is heard once, at its moment', () => {
    expect(dueCue(cues, 0, 9)).toBeNull();
    expect(dueCue(cues, 9, 10)?.text).toBe('a');
    expect(dueCue(cues, 10, 19)).toBeNull();
  });

  it('is only the last where the phone slept over several', () => {
    expect(dueCue(cues, 0, 100)?.text).toBe('b');
  });
});
