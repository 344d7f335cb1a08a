import { describe, expect, it } from 'vitest';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { dayNumber } from '#core/time/day.ts';
import { daysAgo, occlusion, propose, today, variation } from './propose.ts';
import { kneeDose, morning, record, version } from './small-record.ts';

describe('the way down', () => {
  it('takes 20 to 30 % of the volume off and acts at once', () => {
    const proposal = propose({ decision: 'ease-back' });
    expect(proposal).toMatchObject({ kind: 'ease-back', effect: 'acts-at-once' });
    expect(proposal.dose).toEqual({ ...kneeDose, repetitions: { low: 11, high: 15 } });
    expect(propose({ decision: 'ease-back', dose: { ...kneeDose, sets: 4 } }).dose).toEqual(kneeDose);
    const scheme = { ...occlusion, scheme: [30, 15, 15, 15] };
    expect(propose({ decision: 'ease-back', dose: scheme }).dose).toMatchObject({
      scheme: [30, 15, 15],
      sets: 3,
    });
  });

  it('after a fresh step goes back that one step', () => {
    const stepped = { ...kneeDose, repetitions: { low: 17, high: 20 } };
    const history = [
      version({ signedAt: daysAgo(60), endedAt: daysAgo(14) }),
      version({ id: 'knee-2', version: 2, dose: stepped, signedAt: daysAgo(14), origin: 'progress' }),
    ];
    expect(propose({ decision: 'ease-back', history }).dose).toEqual(kneeDose);
    const older = [history[0]!, { ...history[1]!, signedAt: daysAgo(15) }];
    expect(propose({ decision: 'ease-back', history: older }).dose).toMatchObject({
      repetitions: { low: 13 },
    });
  });

  const cutDaysAgo = (days: number): readonly PrescriptionVersion[] => [
    version({ signedAt: daysAgo(60), endedAt: daysAgo(days) }),
    version({ id: 'knee-2', version: 2, signedAt: daysAgo(days), origin: 'ease-back' }),
  ];

  it('cuts at most once in seven days', () => {
    const withheld = (days: number) => propose({ decision: 'ease-back', history: cutDaysAgo(days) }).withheld;
    expect([6, 7, 8].map(withheld)).toEqual(['cut-this-week', null, null]);
  });

  it('cuts once for a flare, however long it lasts', () => {
    const withheld = (flareDays: number) =>
      propose({ decision: 'ease-back', history: cutDaysAgo(10), more: { flareDays } }).withheld;
    expect([9, 10, 11].map(withheld)).toEqual([null, 'cut-this-flare', 'cut-this-flare']);
  });

  it('cuts no second time within seven days after a flare in which a cut was made', () => {
    // The flare ran on the five days that ended `ended` days ago; the cut was made on its last day but one.
    const withheld = (ended: number, cutBefore: number, settings = {}, silent = 0) => {
      const flared = Array.from({ length: 5 }, (_, place) => ended + place);
      const mornings = record().mornings.map((one) => {
        const back = dayNumber(today) - dayNumber(one.day);
        const isSilent = back < ended && back >= ended - silent;
        return morning(one.day, { flare: isSilent ? null : flared.includes(back) });
      });
      const cut = cutDaysAgo(ended + cutBefore);
      return propose({
        decision: 'ease-back',
        history: cut,
        more: { record: record({ mornings, prescriptions: cut }), settings },
      }).withheld;
    };
    const days = { 'cut-interval-days': 5 };
    expect([6, 7, 8].map((ended) => withheld(ended, 1, days))).toEqual([
      'cut-last-flare',
      'cut-last-flare',
      null,
    ]);
    expect([4, 5].map((before) => withheld(6, before, days))).toEqual(['cut-last-flare', null]);
    // Two days before the answer that it was over were left out: it began as long ago as before.
    expect([4, 5].map((before) => withheld(6, before, days, 2))).toEqual(['cut-last-flare', null]);
    expect(withheld(7, 1, { ...days, 'after-flare-days': 6 })).toBeNull();
    expect(withheld(7, 1, { ...days, 'engine-version': 1 })).toBeNull();
  });

  const atFloor = (low: number, daysBack: number, settings = {}) =>
    propose({
      decision: 'ease-back',
      more: {
        settings,
        tolerated: [
          { dose: { ...kneeDose, repetitions: { low: 15, high: 20 } }, day: dayNumber(today) - 2 },
          { dose: { ...kneeDose, repetitions: { low, high: 40 } }, day: dayNumber(today) - daysBack },
        ],
      },
    });

  it('never goes under half of the most tolerated in 28 days; there the answer is to make contact', () => {
    // Three sets of 11 are half of three sets of 22 and less than half of three sets of 23.
    expect(atFloor(22, 20)).toMatchObject({ kind: 'ease-back', contact: 'none' });
    expect(atFloor(23, 20)).toMatchObject({
      kind: 'same',
      withheld: 'floor-reached',
      contact: 'routine',
      worklist: ['floor-reached'],
    });
    expect([27, 28, 29].map((days) => atFloor(23, days).kind)).toEqual(['same', 'same', 'ease-back']);
  });

  it('in version 1 it was half of the last one tolerated, which sank with every cut', () => {
    expect(atFloor(23, 20, { 'engine-version': 1 }).kind).toBe('ease-back');
    expect(atFloor(23, 1, { 'engine-version': 1 }).kind).toBe('same');
  });

  it('two ease-backs in a row put the patient on the worklist', () => {
    const worklist = (easeBacksBefore: number) =>
      propose({ decision: 'ease-back', more: { easeBacksBefore } }).worklist;
    expect([worklist(0), worklist(1), worklist(2)]).toEqual([[], ['two-ease-backs'], ['two-ease-backs']]);
  });

  it('in a reported flare they do not: its own rules ask for a look', () => {
    const worklist = (flareDays: number, settings = {}) =>
      propose({ decision: 'ease-back', more: { easeBacksBefore: 3, flareDays, settings } }).worklist;
    expect([worklist(0), worklist(1)]).toEqual([['two-ease-backs'], []]);
    expect(worklist(1, { 'engine-version': 1 })).toEqual(['two-ease-backs']);
  });

  it('an easier variation never signed for waits, although it is a reduction', () => {
    const few = { ...variation, sets: 1, repetitions: { low: 2, high: 2 } };
    const easier = {
      exerciseId: 'standing-push',
      effectiveLoadKg: 15,
      stepPercent: -25,
      equipmentOwned: true,
    };
    const ladder = { harder: () => null, easier: () => easier };
    expect(propose({ decision: 'ease-back', dose: few, more: { ladder } })).toMatchObject({
      effect: 'awaits-signature',
      dose: { exerciseId: 'standing-push' },
    });
  });

  it('few repetitions go one step down, which acts at once', () => {
    const few = { ...variation, repetitions: { low: 6, high: 7 } };
    expect(propose({ decision: 'ease-back', dose: few })).toMatchObject({
      effect: 'acts-at-once',
      dose: { repetitions: { low: 4, high: 5 } },
    });
  });

  it('the easier session never asks for more than the dose', () => {
    const history = [version({ signedAt: daysAgo(40), badDay: kneeDose })];
    const { dose, badDay } = propose({ decision: 'ease-back', history });
    expect(badDay).toEqual(dose);
  });
});
