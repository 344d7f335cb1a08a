/** Holds are steps of the dose as repetitions are, and count by their seconds. Figures worked by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EaseContext, easeBack } from '#core/decision/dose/ease-back.ts';
import { type StepContext, stepVariation } from '#core/decision/dose/steps.ts';
import { changesBetween, easierSession, shareOf } from '#core/decision/dose/volume.ts';
import { halfWayTo } from '#core/decision/dose/way-back.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { changesForClinician } from '#core/prescribing/changes-in-words.ts';
import type { VariationDose } from '#core/prescribing/dose.ts';
import { holdsIn } from '#tests/support/holds.ts';
import { daysAgo, propose, variation } from '../propose.ts';
import { version } from '../small-record.ts';

const held = (low: number, high: number, seconds: number, mostSeconds = 10): VariationDose => ({
  ...variation,
  sets: 1,
  effectiveLoadKg: null,
  repetitions: { low, high },
  hold: { seconds, mostSeconds },
  secondsPerRepetition: seconds + 5,
});
const moving: VariationDose = { ...held(5, 10, 5), hold: undefined as never };

const context = (changed: Partial<StepContext> = {}): StepContext => ({
  largestStep: 'load',
  settings: engineDefaults,
  loadsKg: [],
  limits: [],
  ladder: { easier: () => null, harder: () => null },
  signed: held(5, 10, 5),
  ...changed,
});

describe('the share of a dose of holds', () => {
  it.each([
    // 10 × 5 of 5 × 5 s; 5 × 7 of 10 × 5 s; the same.
    [held(10, 10, 5), held(5, 10, 5), 2],
    [held(5, 10, 7), held(10, 10, 5), 0.7],
    [held(5, 10, 5), held(5, 10, 5), 1],
  ])('is holds times seconds', (dose, reference, share) => {
    expect(shareOf(dose, reference)).toBeCloseTo(share, 12);
  });

  it('is not known beside a dose that moves, nor between two marks', () => {
    expect(shareOf(held(5, 10, 5), moving)).toBeNull();
    expect(shareOf(moving, held(5, 10, 5))).toBeNull();
    const marked = (mark: number) => ({ ...moving, mark });
    expect(shareOf(marked(2), marked(1))).toBeNull();
    expect(shareOf(marked(2), moving)).toBeNull();
    expect(shareOf(marked(2), marked(2))).toBe(1);
  });

  it('names seconds and marks that changed', () => {
    expect(changesBetween(held(10, 10, 5), held(5, 10, 7)).map(({ variable }) => variable)).toEqual([
      'hold',
      'holds',
    ]);
    expect(changesBetween(held(5, 5, 5), held(5, 5, 7))[0]).toMatchObject({
      from: 5,
      to: 7,
      percent: expect.closeTo(40, 9),
    });
    expect(changesBetween({ ...moving, mark: 1 }, { ...moving, mark: 2 })).toMatchObject([
      { variable: 'mark', from: 1, to: 2, percent: null },
    ]);
  });
});

describe('a step of holds', () => {
  it('adds holds up to the top of the band first, at the same seconds', () => {
    expect([5, 8, 9].map((low) => stepVariation(held(low, 10, 5), context()).dose)).toMatchObject(
      [7, 10, 10].map((low) => ({ repetitions: { low }, hold: { seconds: 5 } })),
    );
  });

  it('then holds longer by two seconds, named, and the holds start again', () => {
    const { dose, named, kind } = stepVariation(held(10, 10, 5), context());
    expect(kind).toBe('step');
    expect(dose).toMatchObject({
      repetitions: { low: 5, high: 10 },
      hold: { seconds: 7 },
      secondsPerRepetition: 12,
    });
    expect(named).toEqual(['over-ten-percent', 'repetitions-start-again']);
  });

  it('ends at the longest hold that was signed', () => {
    expect(stepVariation(held(10, 10, 9), context()).dose).toMatchObject({ hold: { seconds: 10 } });
    expect(stepVariation(held(10, 10, 10), context())).toMatchObject({
      kind: 'same',
      worklist: ['nothing-left-to-step'],
    });
    // 10 → 11 s is ten per cent and goes unnamed.
    const byOne = { ...engineDefaults, 'hold-step-seconds': 1 };
    expect(stepVariation(held(10, 10, 10, 20), context({ settings: byOne })).named).toEqual([
      'repetitions-start-again',
    ]);
  });

  it('says of a longer hold neither that it is owned nor that it is repeated', () => {
    const named = ['over-ten-percent', 'repetitions-start-again'] as const;
    const changes = [{ variable: 'hold', from: 7, to: 9, percent: 28.57 }] as const;
    const told = (over: object) =>
      changesForClinician({ ...propose({ decision: 'hold' }), withheld: null, named, ...over } as never);
    expect(told({ changes })).toEqual([
      'Each hold: 7 s → 9 s (+28.6 %).',
      'This step is over 10 %.',
      'Holds start again at the bottom of the band.',
    ]);
    const load = [{ variable: 'load', from: 4, to: 5, percent: 25 }] as const;
    expect(told({ changes: load })).toContain('This step is over 10 %; nothing smaller is owned.');
  });

  it('goes no further than holds where only repetitions may rise', () => {
    const small = context({ largestStep: 'repetitions' });
    expect(stepVariation(held(10, 10, 5), small)).toMatchObject({ kind: 'same' });
  });

  it('acts at once in holds inside the signed band, and waits for a signature in seconds', () => {
    expect(propose({ decision: 'progress', dose: held(5, 10, 5) })).toMatchObject({ effect: 'acts-at-once' });
    const history = [
      version({ dose: held(5, 10, 5), signedAt: daysAgo(60) }),
      version({
        id: 'knee-2',
        version: 2,
        dose: held(10, 10, 5),
        signedAt: daysAgo(40),
        origin: 'progress',
      }),
    ];
    expect(propose({ decision: 'progress', largestStep: 'load', history })).toMatchObject({
      effect: 'awaits-signature',
      dose: { hold: { seconds: 7 } },
    });
  });
});

describe('the way down and back', () => {
  const cut = (dose: VariationDose, changed: Partial<EaseContext> = {}) => {
    const present = version({ dose, signedAt: daysAgo(40) });
    return easeBack({
      version: present,
      history: [present],
      instant: daysAgo(0),
      flareDays: 0,
      flareEnded: null,
      floorDose: { ...dose, exerciseId: 'nothing-like-it' },
      easeBacksBefore: 0,
      waits: null,
      loadsKg: [],
      ladder: { harder: () => null, easier: () => null },
      settings: engineDefaults,
      ...changed,
    }).dose;
  };

  it('takes holds before seconds, and never less than three seconds', () => {
    expect(cut(held(10, 10, 5))).toMatchObject({ repetitions: { low: 7 }, hold: { seconds: 5 } });
    expect(cut(held(1, 1, 5))).toMatchObject({ hold: { seconds: 3 }, secondsPerRepetition: 8 });
    expect(cut(held(1, 1, 4))).toMatchObject({ hold: { seconds: 4 } });
  });

  it('comes back in holds before seconds, and never toward shorter holds', () => {
    expect(halfWayTo(held(4, 8, 5), held(8, 8, 5), [])).toMatchObject({ repetitions: { low: 6 } });
    expect(halfWayTo(held(8, 8, 5), held(8, 8, 9), [])).toMatchObject({
      hold: { seconds: 7 },
      secondsPerRepetition: 12,
    });
    expect(halfWayTo(held(4, 8, 7), held(8, 8, 5), [])).toBeNull();
  });

  it('keeps the easier session from asking a longer hold or a firmer mark than the dose', () => {
    const easier = { ...held(5, 5, 9), mark: 3 };
    const dose = { ...held(5, 10, 5), mark: 2 };
    expect(easierSession(easier, dose, dose, false)).toMatchObject({ hold: { seconds: 5 }, mark: 2 });
  });

  const anyHeld = fc
    .record({
      sets: fc.integer({ min: 1, max: 5 }),
      low: fc.integer({ min: 1, max: 20 }),
      over: fc.integer({ min: 0, max: 10 }),
      seconds: fc.integer({ min: 2, max: 45 }),
    })
    .map(({ sets, low, over, seconds }) => ({ ...held(low, low + over, seconds, seconds + 10), sets }));

  it('never asks more after a cut, whatever is held', () => {
    holdsIn(2000, anyHeld, (dose) => {
      const after = cut(dose);
      expect(shareOf(after, dose)! <= 1).toBe(true);
      expect(after.method === 'variation' && after.hold!.seconds <= dose.hold!.seconds).toBe(true);
    });
  });

  it('never goes over the dose it returns to, in holds or in seconds', () => {
    holdsIn(2000, anyHeld, anyHeld, (dose, target) => {
      const back = halfWayTo(dose, target, []);
      if (back?.method !== 'variation') return;
      expect(back.hold!.seconds).toBeLessThanOrEqual(Math.max(dose.hold!.seconds, target.hold!.seconds));
      expect(back.repetitions.low).toBeLessThanOrEqual(
        Math.max(dose.repetitions.low, target.repetitions.low),
      );
    });
  });
});
