/** Steps that act without a signature: what they may raise, how often, and when they wait again. Since version 2. */
import { describe, expect, it } from 'vitest';
import type { DoseQuestion } from '#core/decision/next-dose.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { atTop, daysAgo, occlusion, propose, today, top, variation } from '../propose.ts';
import { lastSession, morning, record, session, version } from '../small-record.ts';

/** What the step becomes; one too soon leaves the dose as it is. */
const effect = (of: Parameters<typeof propose>[0]) => {
  const { effect: word, kind, withheld } = propose(of);
  return withheld === null ? word : `${kind}: ${withheld}`;
};
const tooSoon = 'same: step-this-week';
const withSettings = (settings: DoseQuestion['settings']) => ({ settings });
const ask = (history: readonly PrescriptionVersion[], more: Partial<DoseQuestion> = {}) =>
  effect({ decision: 'progress', history, more });

describe('a step inside the signed band', () => {
  it('acts at once in repetitions, for low load and for a variation', () => {
    expect(effect({ decision: 'progress' })).toBe('acts-at-once');
    const banded = { ...variation, repetitions: { low: 10, high: 15 } };
    expect(effect({ decision: 'progress', dose: banded })).toBe('acts-at-once');
  });

  it('waits in load, in a set, in a level and in a cuff scheme', () => {
    expect(effect({ decision: 'progress', history: atTop })).toBe('awaits-signature');
    expect(effect({ decision: 'progress', history: atTop, owned: [10, 12.5] })).toBe('awaits-signature');
    const harder = { exerciseId: 'low-push', effectiveLoadKg: 21, stepPercent: 5, equipmentOwned: true };
    const ladder = { harder: () => harder, easier: () => null };
    expect(effect({ decision: 'progress', dose: variation, more: { ladder } })).toBe('awaits-signature');
    const shorter = { ...occlusion, scheme: [15, 15, 15, 15] };
    const more = { targetScheme: [20, 15, 15, 15] };
    expect(effect({ decision: 'progress', dose: shorter, more })).toBe('awaits-signature');
  });

  it('acts at once on a level that was signed when it came, up to the top of its band', () => {
    const chair = { ...variation, repetitions: { low: 10, high: 15 } };
    const levels = (low: number) => [
      version({ dose: chair, signedAt: daysAgo(60) }),
      version({
        id: 'knee-2',
        version: 2,
        dose: { ...chair, exerciseId: 'low-push', repetitions: { low, high: 15 } },
        signedAt: daysAgo(40),
        origin: 'progress',
      }),
    ];
    expect([13, 14].map((low) => propose({ decision: 'progress', history: levels(low) }))).toMatchObject([
      { effect: 'acts-at-once', dose: { repetitions: { low: 15, high: 15 } } },
      { effect: 'acts-at-once', dose: { repetitions: { low: 15, high: 15 } } },
    ]);
    expect(propose({ decision: 'progress', history: levels(15) })).toMatchObject({ kind: 'same' });
  });

  it('waits where the clinic does not let it act, and in version 1', () => {
    expect(ask([version({ signedAt: daysAgo(40) })], withSettings({ 'in-band-steps': 0 }))).toBe(
      'awaits-signature',
    );
    expect(ask([version({ signedAt: daysAgo(40) })], withSettings({ 'engine-version': 1 }))).toBe(
      'awaits-signature',
    );
  });

  it('waits once the screening has run out, and where there was none', () => {
    const until = (screeningUntil: number | null) =>
      ask([version({ signedAt: daysAgo(40) })], { screeningUntil });
    const day = dayNumber(today);
    expect([day - 1, day, day + 1, null].map(until)).toEqual([
      'awaits-signature',
      'acts-at-once',
      'acts-at-once',
      'awaits-signature',
    ]);
  });

  it('follows the last level by seven days at least, and is not made sooner', () => {
    const level = (days: number, origin: PrescriptionVersion['origin'], settings = {}) =>
      ask(
        [
          version({ signedAt: daysAgo(60) }),
          version({ id: 'knee-2', version: 2, signedAt: daysAgo(days), origin }),
        ],
        {
          settings,
        },
      );
    for (const origin of ['progress', 'return', 'clinician'] as const) {
      expect([6, 7, 8].map((days) => level(days, origin))).toEqual([tooSoon, 'acts-at-once', 'acts-at-once']);
    }
    expect(level(7, 'progress', { 'in-band-interval-days': 8 })).toBe(tooSoon);
    // Signed in the evening, answered in the morning: half a day earlier still counts as the seventh.
    const later = (hours: number) => ask([version({ signedAt: daysAgo(7) + hours * 3_600_000 })]);
    expect([11, 12, 13].map(later)).toEqual(['acts-at-once', 'acts-at-once', tooSoon]);
    // The first dose is a level too.
    expect([6, 7].map((days) => ask([version({ signedAt: daysAgo(days) })]))).toEqual([
      tooSoon,
      'acts-at-once',
    ]);
  });

  it('too soon does not keep a step back that is signed for ahead, or that waits anyway', () => {
    const yesterday = { ...version({ signedAt: daysAgo(1) }) };
    const approved = {
      id: 'a',
      itemId: 'knee',
      signedAt: daysAgo(1),
      signedDay: addDays(today, -1),
      signedBy: 'A',
      steps: 3,
      days: 28,
      withdrawnAt: null,
    };
    const screeningUntil = dayNumber(today) + 30;
    expect(ask([yesterday], { preApproval: approved, screeningUntil })).toBe('acts-at-once');
    expect(ask([yesterday], { screeningUntil: dayNumber(today) - 1 })).toBe('awaits-signature');
    expect(ask([yesterday], withSettings({ 'in-band-steps': 0 }))).toBe('awaits-signature');
    expect(effect({ decision: 'progress', history: [{ ...yesterday, dose: top }] })).toBe('awaits-signature');
  });
});

describe('after a cut', () => {
  const cut = (days: number) => [
    version({ signedAt: daysAgo(90), endedAt: daysAgo(days) }),
    version({ id: 'knee-2', version: 2, signedAt: daysAgo(days), origin: 'ease-back' }),
  ];

  it('every step waits for 28 days', () => {
    expect([27, 28, 29].map((days) => ask(cut(days)))).toEqual([
      'awaits-signature',
      'acts-at-once',
      'acts-at-once',
    ]);
    expect(ask(cut(28), withSettings({ 'in-band-lock-days': 29 }))).toBe('awaits-signature');
  });

  it('made in a reported flare, none waits', () => {
    const versions = cut(10);
    const flareOn = (days: readonly number[]): Partial<DoseQuestion> => ({
      record: record({
        prescriptions: versions,
        mornings: record().mornings.map((one) =>
          morning(one.day, { flare: days.includes(dayNumber(today) - dayNumber(one.day)) }),
        ),
        sessions: [...record().sessions.slice(0, -1), session(lastSession, {}, {}, [versions[1]!])],
      }),
    });
    expect(ask(versions, flareOn([10]))).toBe('acts-at-once');
    expect(ask(versions, flareOn([11, 10, 9]))).toBe('acts-at-once');
    // It ended the day before the cut, or began after it.
    expect(ask(versions, flareOn([12, 11]))).toBe('awaits-signature');
    expect(ask(versions, flareOn([9]))).toBe('awaits-signature');
  });
});

it('a step over the top of the band a clinician last wrote waits', () => {
  const wider = { ...top, repetitions: { low: 17, high: 25 } };
  const levels = (high: number) => [
    version({ signedAt: daysAgo(60) }),
    version({
      id: 'knee-2',
      version: 2,
      dose: { ...wider, repetitions: { low: 17, high } },
      signedAt: daysAgo(40),
      origin: 'progress' as const,
    }),
  ];
  expect([20, 25].map((high) => ask(levels(high)))).toEqual(['acts-at-once', 'awaits-signature']);
});
