/** What each choice of version 3 does, under, at and over its figure; and that as delivered nothing of it acts. Chosen on invented people, no source. */
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { toleratedDoses } from '#core/decision/dose/tolerated.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { preSessionCheck } from '#core/decision/pre-session-check.ts';
import { engineDefaults, engineSettings } from '#core/decision/settings.ts';
import { version3, version3Settings } from '#core/decision/version-3-settings.ts';
import { checkSettings, type SettingValues } from '#core/sources/clinic-setting.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { facts } from './base-facts.ts';
import { propose, today } from './propose.ts';
import { baseline, knee, kneeDose, morning, noonOf, record, trainingDays, version } from './small-record.ts';

it('the set lies inside the bounds of its choices, moves each, and is off as delivered', () => {
  expect(checkSettings(engineSettings, { ...engineDefaults, ...version3 })).toEqual([]);
  expect(version3Settings.filter(({ id, default: value }) => version3[id] === value)).toEqual([]);
  expect([engineDefaults['swap-rise'], engineDefaults['swap-once']]).toEqual([1, 0]);
  expect([engineDefaults['flare-easier-days'], engineDefaults['tolerated-cut-rise']]).toEqual([0, 0]);
  expect(engineDefaults['tolerated-sessions']).toBe(1);
});

describe('pain before the session', () => {
  const high = { usualPain: 5, usualPainTop: 5, painCeiling: 7, repetitionsDonePercent: null } as const;
  const today = (changed: Partial<Facts>, settings = version3) =>
    decide(facts({ ...high, ...changed }), settings).today;

  it('swaps it at 2 over usual where usual is high, from 5 on where it is low', () => {
    expect([6, 7].map((painBefore) => today({ painBefore }))).toEqual(['as-planned', 'bad-day']);
    expect([5, 6].map((painBefore) => today({ painBefore }, {}))).toEqual(['as-planned', 'bad-day']);
    const low = { usualPain: 1, usualPainTop: 1, painCeiling: 5 } as const;
    expect([4, 5].map((painBefore) => today({ ...low, painBefore }))).toEqual(['as-planned', 'bad-day']);
  });

  it('swaps that session alone: once the work is known the next stands as planned, and the plan still waits', () => {
    const done = decide(facts({ ...high, painBefore: 7, repetitionsDonePercent: 100 }), version3);
    expect([done.decision, done.today]).toEqual(['hold', 'as-planned']);
    expect(decide(facts({ ...high, painBefore: 7, repetitionsDonePercent: 100 })).today).toBe('bad-day');
    const asked = preSessionCheck({ ...facts({ ...high, painBefore: 7 }), redFlags: [] }, version3);
    expect(asked.today).toBe('bad-day');
  });
});

describe('a cut that only pain asks for', () => {
  const reason = (rule: string, decision: 'ease-back' | 'hold' = 'ease-back') =>
    ({ rule, joint: knee, observed: {}, threshold: '', support: '', effect: { decision } }) as never;
  const borne = { dose: kneeDose, day: dayNumber(today) - 28 };
  /** Mornings after the last three sessions, the newest last; usual pain is 1. */
  const recordAfter = (pains: readonly (number | null)[], flare = false, usual: number | null = 1) => {
    const days = trainingDays.slice(-3).map((day) => addDays(day, 1));
    const mornings = record().mornings.map((one) => {
      const place = days.indexOf(one.day);
      return place < 0 ? one : morning(one.day, { pain: pains[place]!, flare });
    });
    return record({ mornings, baselines: [baseline({ usualPain: usual, usualPainTop: usual })] });
  };
  const cut = (more: object = {}, rules = ['P5'], settings: SettingValues = version3) => {
    const item = {
      itemId: 'knee',
      version: version(),
      limitingJoints: [knee],
      decision: 'ease-back',
      largestStep: null,
      today: 'as-planned',
      contact: 'none',
      reasons: [...rules.map((rule) => reason(rule)), reason('P5h', 'hold')],
    } as const;
    const question = { tolerated: [borne], record: recordAfter([1, 1, 4]), ...more, settings, item };
    return propose({ decision: 'ease-back', more: question }).withheld;
  };

  it('waits at a dose tolerated lately until two of the last three mornings were 2 over usual', () => {
    expect(cut()).toBe('tolerated-lately');
    expect(cut({ record: recordAfter([2, 2, 4]) })).toBe('tolerated-lately');
    expect(cut({ record: recordAfter([3, 1, 3]) })).toBeNull();
    expect(cut({ record: recordAfter([1, 3, 3]) })).toBeNull();
    expect(cut({ record: recordAfter([3, 3, 2]) })).toBeNull();
    expect(cut({}, ['P5'], {})).toBeNull();
  });

  it('a worse morning can only end the waiting', () => {
    const scores = [0, 1, 2, 3, 4];
    const all = scores.flatMap((a) => scores.flatMap((b) => scores.map((c) => [a, b, c])));
    const waits = (pains: readonly number[]) => cut({ record: recordAfter(pains) }) !== null;
    for (const pains of all.filter((one) => !waits(one)))
      for (const place of [0, 1, 2]) expect(waits(pains.with(place, pains[place]! + 1))).toBe(false);
  });

  it('is made at a dose not tolerated in 28 days, or more than a small step above one that was', () => {
    expect(cut({ tolerated: [] })).toBeNull();
    expect(cut({ tolerated: [{ ...borne, day: borne.day - 1 }] })).toBeNull();
    const less = (low: number) => [{ ...borne, dose: { ...kneeDose, repetitions: { low, high: 20 } } }];
    expect([13, 14].map((low) => cut({ tolerated: less(low) }))).toEqual([null, 'tolerated-lately']);
  });

  it('is made where usual pain is not known: nothing says that the joint bears it', () => {
    expect(cut({ record: recordAfter([1, 1, 1], false, null) })).toBeNull();
  });

  it('waits in the first seven days of a flare, and the mornings of a flare are not held against the dose', () => {
    const inFlare = (flareDays: number, settings: SettingValues = version3) =>
      cut({ flareDays, tolerated: [] }, ['F2', 'P2'], settings);
    expect([0, 1, 7, 8].map((days) => inFlare(days))).toEqual([
      null,
      'easier-in-flare',
      'easier-in-flare',
      null,
    ]);
    expect(inFlare(1, {})).toBeNull();
    expect(cut({ record: recordAfter([3, 3, 3], true) })).toBe('tolerated-lately');
  });

  it.each(['P1', 'W2', 'S2f', 'T1', 'C1', 'A2', 'F1', 'F1i'])(
    'never waits where %s asks for it as well',
    (rule) => {
      expect(cut({}, ['P5', rule])).toBeNull();
      expect(cut({ flareDays: 3 }, ['F2', rule])).toBeNull();
    },
  );
});

it('a dose counts as tolerated after as many sessions as the clinic asks for, with the day of the last', () => {
  const last = trainingDays.slice(-2);
  const minded = (days: readonly string[]): readonly string[] =>
    trainingDays.filter((day) => !days.includes(day));
  const sore = (days: readonly string[]) =>
    record({
      mornings: record().mornings.map((one) =>
        morning(one.day, { pain: minded(days).includes(addDays(one.day, -1)) ? 2 : 1 }),
      ),
    });
  const found = (days: readonly string[], sessions: number) =>
    toleratedDoses(sore(days), 'knee', [knee], noonOf(today), { 'tolerated-sessions': sessions });
  expect(found(last, 2)).toEqual([{ dose: kneeDose, day: dayNumber(last[1]!) }]);
  expect(found(last, 3)).toEqual([]);
  expect([found(last.slice(1), 1).length, found(last.slice(1), 2).length]).toEqual([1, 0]);
});
