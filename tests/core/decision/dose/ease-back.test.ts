/** The way down at its edges: bounds of a cut, the last step that is left, the days of a fresh step. Figures worked by hand. */
import { describe, expect, it } from 'vitest';
import { type EaseContext, easeBack } from '#core/decision/dose/ease-back.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { daysAgo, occlusion, variation } from '../propose.ts';
import { kneeDose, version } from '../small-record.ts';

const none = { harder: () => null, easier: () => null };

const cut = (dose: Dose, changed: Partial<EaseContext> = {}) => {
  const present = version({ dose, signedAt: daysAgo(40) });
  return easeBack({
    version: present,
    history: [present],
    instant: daysAgo(0),
    flareDays: 0,
    flareEnded: null,
    floorDose: dose,
    easeBacksBefore: 0,
    waits: null,
    loadsKg: [],
    ladder: none,
    settings: engineDefaults,
    ...changed,
  });
};
/** Without a floor, so that the cut itself is seen. */
const free = { floorDose: { ...kneeDose, exerciseId: 'nothing-like-it', sets: 0 } } as const;
const lowOf = (low: number) => {
  const { dose } = cut({ ...kneeDose, repetitions: { low, high: low } }, free);
  return dose.method === 'occlusion' ? null : dose.repetitions.low;
};

describe('a cut in repetitions', () => {
  it('leaves 70 to 80 % of them, the whole number nearest to 75 %, the smaller of two as near', () => {
    expect([20, 10, 14, 6, 5, 4].map(lowOf)).toEqual([15, 7, 10, 4, 4, 3]);
  });

  it('of so few that no whole number lies within is the step that repetitions also rise by', () => {
    // 2 of 3 are 67 %, 1 of 2 are 50 %: under the bound.
    expect([3].map(lowOf)).toEqual([1]);
  });

  it('lowers the top with the floor, and never under it', () => {
    const banded = (low: number, high: number) => cut({ ...kneeDose, repetitions: { low, high } }, free).dose;
    expect(banded(15, 20)).toMatchObject({ repetitions: { low: 11, high: 15 } });
    expect(banded(7, 7)).toMatchObject({ repetitions: { low: 5, high: 5 } });
    expect(banded(5, 5)).toMatchObject({ repetitions: { low: 4, high: 4 } });
    expect(banded(3, 4)).toMatchObject({ repetitions: { low: 1, high: 2 } });
    expect(banded(3, 3)).toMatchObject({ repetitions: { low: 1, high: 1 } });
  });

  it('takes a set where one set is a fifth to three tenths: of four and five, not of three or six', () => {
    const setsOf = (sets: number) => cut({ ...kneeDose, sets }, free).dose.sets;
    expect([3, 4, 5, 6].map(setsOf)).toEqual([3, 3, 4, 6]);
  });
});

describe('a cut of a cuff scheme', () => {
  const schemeOf = (scheme: readonly number[]) => {
    const { dose } = cut({ ...occlusion, scheme, sets: scheme.length }, free);
    return dose.method === 'occlusion' ? [dose.scheme, dose.sets] : null;
  };

  it('takes the last set where that leaves 70 to 80 %, otherwise a quarter of each, never the last repetition', () => {
    expect(schemeOf([30, 15, 15, 15])).toEqual([[30, 15, 15], 3]);
    expect(schemeOf([20, 15])).toEqual([[15, 11], 2]);
    expect(schemeOf([20])).toEqual([[15], 1]);
    expect(schemeOf([4, 1, 1])).toEqual([[3, 1, 1], 3]);
  });

  it('of nothing but single repetitions is a lighter load, or none', () => {
    const single = { ...occlusion, scheme: [1, 1], sets: 2 };
    expect(cut(single, { ...free, loadsKg: [8, 9, 10] })).toMatchObject({
      kind: 'ease-back',
      dose: { scheme: [1, 1], loadKg: 9 },
    });
    expect(cut(single, free)).toMatchObject({ kind: 'same', withheld: 'floor-reached' });
  });
});

describe('where no whole number of repetitions is left to take', () => {
  const two = { low: 2, high: 2 };

  it('goes to the heaviest lighter load owned, and not to an equal one', () => {
    const least = { ...kneeDose, repetitions: two };
    expect(cut(least, { ...free, loadsKg: [7, 9, 10, 11] }).dose).toEqual({ ...least, loadKg: 9 });
    expect(cut(least, { ...free, loadsKg: [10, 11] }).dose).toEqual({ ...least, sets: 2 });
    expect(cut({ ...least, sets: 2 }, free).dose).toEqual({ ...least, sets: 1 });
    expect(cut({ ...least, sets: 1 }, free)).toMatchObject({ withheld: 'floor-reached' });
  });

  it('of a variation takes sets first and the easier one last, where it is owned and has a side', () => {
    const least = { ...variation, repetitions: two };
    expect(cut({ ...least, sets: 2 }, { ...free, loadsKg: [1] }).dose).toEqual({ ...least, sets: 1 });
    const easier = (changed: object) => ({
      harder: () => null,
      easier: () => ({
        exerciseId: 'standing-push',
        effectiveLoadKg: 15,
        stepPercent: -25,
        equipmentOwned: true,
        ...changed,
      }),
    });
    const last = { ...least, sets: 1 };
    const at = (changed: object) => cut(last, { ...free, ladder: easier(changed) });
    expect(at({})).toMatchObject({
      kind: 'ease-back',
      dose: { exerciseId: 'standing-push', effectiveLoadKg: 15, side: 'both' },
    });
    expect(at({ side: 'left' })).toMatchObject({ dose: { side: 'left' } });
    expect(at({ side: null })).toMatchObject({ kind: 'same' });
    expect(at({ equipmentOwned: false })).toMatchObject({ kind: 'same' });
  });
});

describe('a step that is fresh', () => {
  const before = version({ signedAt: daysAgo(60), endedAt: daysAgo(5) });
  const stepped = (origin: 'progress' | 'return' | 'clinician' | 'ease-back', low = 17) =>
    version({
      id: 'knee-2',
      version: 2,
      dose: { ...kneeDose, repetitions: { low, high: 20 } },
      signedAt: daysAgo(5),
      origin,
    });
  const easedFrom = (present: ReturnType<typeof stepped>) =>
    cut(present.dose, { ...free, version: present, history: [before, present] }).dose;

  it('is taken back, as is a return; what a clinician wrote is cut', () => {
    expect(easedFrom(stepped('progress'))).toEqual(kneeDose);
    expect(easedFrom(stepped('return'))).toEqual(kneeDose);
    expect(easedFrom(stepped('clinician'))).toMatchObject({ repetitions: { low: 13 } });
  });

  it('is not taken back where the dose before it asks for as much, or more', () => {
    expect(easedFrom(stepped('progress', 15))).toMatchObject({ repetitions: { low: 11 } });
    expect(easedFrom(stepped('progress', 14))).toMatchObject({ repetitions: { low: 10 } });
    expect(easedFrom(stepped('progress', 16))).toEqual(kneeDose);
  });
});

describe('half of what was tolerated', () => {
  it('is the least a cut leaves: 6 of 12 are left, 6 of 13 are not', () => {
    const at = (tolerated: number) =>
      cut(
        { ...kneeDose, repetitions: { low: 8, high: 8 } },
        { floorDose: { ...kneeDose, repetitions: { low: tolerated, high: 20 } } },
      );
    expect(at(12)).toMatchObject({ kind: 'ease-back', dose: { repetitions: { low: 6 } } });
    expect(at(13)).toMatchObject({ kind: 'same', withheld: 'floor-reached', worklist: ['floor-reached'] });
  });
});

describe('of several versions', () => {
  const stepped = (
    versionNumber: number,
    low: number,
    signedDaysAgo: number,
    origin: 'progress' | 'ease-back',
  ) =>
    version({
      id: `knee-${versionNumber}`,
      version: versionNumber,
      dose: { ...kneeDose, repetitions: { low, high: 20 } },
      signedAt: daysAgo(signedDaysAgo),
      origin,
    });

  it('a fresh step goes back to the one directly before it', () => {
    const history = [
      version({ signedAt: daysAgo(60) }),
      stepped(2, 17, 30, 'progress'),
      stepped(3, 19, 5, 'progress'),
    ];
    const present = history.at(-1)!;
    expect(cut(present.dose, { ...free, version: present, history }).dose).toEqual(history[1]!.dose);
  });

  it('the last cut counts for the week', () => {
    const cuts = (last: number) => {
      const history = [
        version({ signedAt: daysAgo(60) }),
        stepped(2, 17, 40, 'ease-back'),
        stepped(3, 16, last, 'ease-back'),
      ];
      const present = history.at(-1)!;
      return cut(present.dose, { ...free, version: present, history }).withheld;
    };
    expect([6, 7].map(cuts)).toEqual(['cut-this-week', undefined]);
  });

  it('a step from a dose it cannot be compared with is cut, not taken back', () => {
    const unknown = { ...variation, effectiveLoadKg: null };
    const history = [
      version({ dose: { ...unknown, exerciseId: 'standing-push' }, signedAt: daysAgo(60) }),
      version({ id: 'knee-2', version: 2, dose: unknown, signedAt: daysAgo(5), origin: 'progress' }),
    ];
    const present = history[1]!;
    const { dose } = cut(unknown, { ...free, version: present, history });
    expect(dose).toMatchObject({ exerciseId: unknown.exerciseId, repetitions: { low: 11 } });
  });
});

it('the only lighter load owned is taken where repetitions leave nothing to take', () => {
  const least = { ...kneeDose, repetitions: { low: 2, high: 2 } };
  expect(cut(least, { ...free, loadsKg: [9, 10] }).dose).toEqual({ ...least, loadKg: 9 });
});

it('half of what was tolerated is counted to the repetition: 75 of 150 are left, 75 of 151 are not', () => {
  const at = (tolerated: number) =>
    cut(
      { ...kneeDose, repetitions: { low: 100, high: 100 } },
      { floorDose: { ...kneeDose, repetitions: { low: tolerated, high: tolerated } } },
    ).kind;
  expect([150, 151].map(at)).toEqual(['ease-back', 'same']);
});
