/** While a correction waits, what counts is never looser than either entry alone. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asCorrected,
  type CorrectionMark,
  indexCorrections,
  inForce,
  readings,
  waitsToBeSeen,
} from '#core/corrections/correction.ts';
import {
  stricterBaseline,
  stricterScreening,
  strictestOutcomes,
  worseEffusion,
} from '#core/corrections/stricter.ts';
import { joints } from '#core/exercises/joints.ts';
import { screeningCautions } from '#core/prescribing/cautions/from-screening.ts';
import { eligibilities, methods } from '#core/prescribing/methods.ts';
import { setByClinicianOn } from '#core/record/baseline-age.ts';
import { type Baseline, effusions } from '#core/record/record.ts';
import { screeningItems } from '#core/screening/items.ts';
import { jointBlocks } from '#core/screening/joint-blocks.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { reasonsFromAnswers } from '#core/screening/reasons-from-answers.ts';
import { type ScreeningItemAnswer, screeningAnswers } from '#core/screening/screening.ts';
import { holdsIn } from '#tests/support/holds.ts';

const limbsOf = fc.option(
  fc.array(fc.record({ limb: fc.constantFrom('arm', 'leg'), side: fc.constantFrom('left', 'right') }), {
    maxLength: 2,
  }),
);
const answerTo = (item: (typeof screeningItems)[number]): fc.Arbitrary<ScreeningItemAnswer | null> =>
  fc.option(
    fc
      .record({
        answer: fc.constantFrom(...screeningAnswers),
        limbs: limbsOf,
        named: fc.option(fc.subarray([...joints], { maxLength: 2 })),
        details: fc.option(fc.subarray([...(item.asks.details ?? [])])),
      })
      .map(({ answer, limbs, named, details }) => ({
        item: item.id,
        answer,
        ...(limbs ? { limbs } : {}),
        ...(named ? { joints: named } : {}),
        ...(details ? { details } : {}),
      })),
  );
const sheet = fc
  .record({
    answers: fc.tuple(...screeningItems.map(answerTo)),
    day: fc.constantFrom('2026-03-01', '2026-03-02'),
    recordedAt: fc.integer({ min: 0, max: 9 }),
  })
  .map(({ answers, ...rest }) => ({
    ...rest,
    version: 1,
    sheetVersion: 'any',
    answers: answers.filter((answer) => answer !== null) as readonly ScreeningItemAnswer[],
  }));

const outcomesOf = (screening: ReturnType<typeof stricterScreening>) =>
  methodOutcomes({
    screening,
    clearances: [],
    measurements: [],
    today: '2026-03-02',
    ageYears: 60,
    settings: {},
  });
const rank = (word: (typeof eligibilities)[number]): number => eligibilities.indexOf(word);
const blocked = (one: Parameters<typeof jointBlocks>[0]) => jointBlocks(one).map(({ reason }) => reason.code);
const cautioned = (one: Parameters<typeof jointBlocks>[0]) =>
  methods.flatMap((method) =>
    screeningCautions(one, method, ['low-back'], {}).map(({ id }) => `${method} ${id}`),
  );
const holdsAll = <T>(of: readonly T[], all: readonly T[]): boolean => all.every((one) => of.includes(one));

describe('two screenings of which one corrects the other', () => {
  it('close what either closes, block the joints either blocks, and bring the cautions of both', () => {
    holdsIn(400, sheet, sheet, (one, other) => {
      const both = stricterScreening(one, other);
      const strictest = strictestOutcomes([outcomesOf(one), outcomesOf(other)]);
      for (const alone of [one, other]) {
        outcomesOf(alone).forEach(({ eligibility }, place) => {
          expect(rank(strictest[place]!.eligibility)).toBeGreaterThanOrEqual(rank(eligibility));
        });
        expect(holdsAll(blocked(both), blocked(alone))).toBe(true);
        expect(holdsAll(cautioned(both), cautioned(alone))).toBe(true);
        expect([both.day <= alone.day, both.recordedAt <= alone.recordedAt]).toEqual([true, true]);
        for (const method of methods) {
          const target = { method, limb: 'leg', side: 'left' } as const;
          const found = reasonsFromAnswers(both, target, 60).map(({ code }) => code);
          const said = reasonsFromAnswers(alone, target, 60).filter(
            ({ code }) => !code.startsWith('not-asked'),
          );
          // Where one left unsaid which it is, that stands for whatever the other named.
          for (const { code, from } of said)
            expect(found.includes(code) || found.includes(`${from}-which-not-said`)).toBe(true);
        }
      }
    });
  });
});

const baseline = (over: Partial<Baseline>): Baseline => ({
  joint: 'left-knee',
  usualPain: 3,
  usualPainTop: 4,
  acceptablePainLimit: 6,
  usualStiffnessMinutes: 10,
  usualSwelling: 'slight',
  usualEffusion: 'trace',
  usualFatigue: 4,
  setOn: '2026-03-02',
  setBy: 'A',
  dueForReview: false,
  ...over,
});

it('of two sets of usual values the lower of each stands, and what either does not know is not known', () => {
  const other = baseline({
    usualPain: 2,
    usualPainTop: null,
    acceptablePainLimit: 7,
    usualSwelling: 'none',
    usualFatigue: null,
    setOn: '2026-02-01',
    dueForReview: true,
  });
  const low = { usualPain: 2, usualPainTop: 2, acceptablePainLimit: 6, usualSwelling: 'none' };
  for (const both of [stricterBaseline(baseline({}), other), stricterBaseline(other, baseline({}))])
    expect(both).toMatchObject({ ...low, usualFatigue: null, setOn: '2026-02-01', dueForReview: true });
  expect(stricterBaseline(baseline({}), baseline({ usualPain: null })).usualPain).toBeNull();
});

it('of a usual pain that followed better mornings and another, the age of the older one stands', () => {
  const aged = (one: Partial<Baseline>, other: Partial<Baseline>) =>
    [stricterBaseline(baseline(one), baseline(other)), stricterBaseline(baseline(other), baseline(one))].map(
      setByClinicianOn,
    );
  const followed = { setOn: '2026-03-20', tightenedFrom: '2026-02-10' };
  expect(aged(followed, { setOn: '2026-03-02' })).toEqual(['2026-02-10', '2026-02-10']);
  expect(aged(followed, { setOn: '2026-02-01' })).toEqual(['2026-02-01', '2026-02-01']);
  expect(aged({ setOn: '2026-03-02' }, { setOn: '2026-03-09' })).toEqual(['2026-03-02', '2026-03-02']);
});

it('a rise of usual pain is acknowledged only where both entries say so', () => {
  const both = (one: Partial<Baseline>, other: Partial<Baseline>) =>
    stricterBaseline(baseline(one), baseline(other)).riseAcknowledged;
  const said = { riseAcknowledged: true } as const;
  expect([both(said, said), both(said, {}), both({}, said)]).toEqual([true, undefined, undefined]);
});

it('of two grades of fluid the worse stands', () => {
  const test = (grade: (typeof effusions)[number]) =>
    ({ joint: 'left-knee', day: '2026-03-02', grade }) as const;
  for (const [a, one] of effusions.entries())
    for (const [b, other] of effusions.entries())
      expect(worseEffusion(test(one), test(other)).grade).toBe(effusions[Math.max(a, b)]);
});

describe('what became of an entry', () => {
  const mark = (subjectId: string, replacedById: string | null, isWaiting: boolean): CorrectionMark => ({
    subjectId,
    replacedById,
    firstSaidAt: 1,
    isWaiting,
  });
  const rows = ['a', 'b', 'c', 'x'].map((id) => ({ id }));
  const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id).join('');

  it.each([
    ['nothing corrected', [], 'abcx', 'abcx', ['abcx']],
    ['replaced and seen', [mark('a', 'b', false)], 'bcx', 'bcx', ['bcx']],
    ['replaced and waiting', [mark('a', 'b', true)], 'bcx', 'abcx', ['acx', 'bcx']],
    ['struck out and waiting', [mark('a', null, true)], 'bcx', 'abcx', ['abcx', 'bcx']],
    [
      'replaced twice, both waiting',
      [mark('a', 'b', true), mark('b', 'c', true)],
      'cx',
      'abcx',
      ['ax', 'bx', 'cx'],
    ],
    [
      'replaced twice, the first seen',
      [mark('a', 'b', false), mark('b', 'c', true)],
      'cx',
      'bcx',
      ['bx', 'cx'],
    ],
    [
      'replaced twice, the second seen',
      [mark('a', 'b', true), mark('b', 'c', false)],
      'cx',
      'acx',
      ['ax', 'cx'],
    ],
  ] as const)('%s', (_, marks, corrected, counted, read) => {
    const index = indexCorrections(marks);
    expect(ids(asCorrected(rows, index))).toBe(corrected);
    expect(ids(inForce(rows, index))).toBe(counted);
    expect(readings(rows, index).map(ids)).toEqual(read);
  });

  it('waits where it bounds or stops, and nowhere else', () => {
    expect(
      ['screening', 'event', 'limit', 'baseline', 'effusion-test'].every((of) =>
        waitsToBeSeen(of as never, null),
      ),
    ).toBe(true);
    expect(waitsToBeSeen('goal', null)).toBe(false);
    const kinds = ['blood-pressure', 'ankle-brachial-index', 'limb-occlusion-pressure', 'body-mass', 'grip'];
    expect(kinds.map((kind) => waitsToBeSeen('measurement', kind))).toEqual([true, true, true, false, false]);
  });
});
