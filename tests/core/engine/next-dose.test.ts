import { describe, expect, it } from 'vitest';
import { addDays, dayNumber } from '#core/day.ts';
import type { DecisionWord, Step } from '#core/engine/answers.ts';
import type { Ladder, LadderStep } from '#core/engine/dose/proposal.ts';
import { type DoseQuestion, nextDose } from '#core/engine/next-dose.ts';
import type { Dose, OcclusionDose, VariationDose } from '#core/model/dose.ts';
import type { Limit, PrescriptionVersion } from '#core/model/record.ts';
import { instantOn, judgedMorning, knee, kneeDose, noonOf, record, version } from './small-record.ts';

const noLadder: Ladder = { harder: () => null, easier: () => null };
const today = judgedMorning;
const daysAgo = (days: number): number => instantOn(addDays(today, -days), 12);

interface Asked {
  readonly decision: DecisionWord;
  readonly largestStep?: Step;
  readonly dose?: Dose;
  readonly history?: readonly PrescriptionVersion[];
  readonly owned?: readonly number[];
  readonly limits?: readonly Limit[];
  readonly more?: Partial<DoseQuestion>;
}

const propose = ({ decision, largestStep, dose = kneeDose, history, owned, limits, more }: Asked) => {
  const versions = history ?? [version({ dose, signedAt: daysAgo(40) })];
  const current = versions.at(-1)!;
  return nextDose({
    record: record({
      prescriptions: versions,
      ownedLoadsKg: owned ?? [8, 9, 10, 11, 12.5],
      limits: limits ?? [],
    }),
    line: {
      lineId: current.lineId,
      version: current,
      gatedBy: [knee],
      decision,
      largestStep: decision === 'progress' ? (largestStep ?? 'load') : null,
      today: 'as-planned',
      contact: 'none',
      reasons: [],
    },
    at: noonOf(today),
    flareDays: 0,
    easeBacksBefore: 0,
    tolerated: [],
    ladder: noLadder,
    ...more,
  });
};

const top = { ...kneeDose, repetitions: { low: 20, high: 20 } };
/** The band a clinician signed, now worked up to its top. */
const atTop: readonly PrescriptionVersion[] = [
  version({ signedAt: daysAgo(60), endedAt: daysAgo(40) }),
  version({ id: 'knee-2', version: 2, dose: top, signedAt: daysAgo(40), origin: 'progress' }),
];

const occlusion: OcclusionDose = {
  method: 'occlusion',
  exerciseId: 'seated-leg-straightening',
  side: 'left',
  limb: 'leg',
  sets: 4,
  scheme: [20, 15, 15, 15],
  restSeconds: 30,
  secondsPerRepetition: 4,
  sessionsPerWeek: 2,
  loadKg: 10,
  oneRepMaxKg: 30,
  cuff: { kind: 'elastic-wrap', tightness: 5 },
  inflation: 'continuous',
  capSeconds: 600,
  supervised: true,
};

const variation: VariationDose = {
  method: 'variation',
  exerciseId: 'wall-push',
  side: 'both',
  sets: 3,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  repetitions: { low: 15, high: 15 },
  reserve: 2,
  effectiveLoadKg: 20,
  addedKg: 0,
};

describe('hold and pause', () => {
  it('hold repeats the dose, pause proposes none other', () => {
    expect(propose({ decision: 'hold' })).toMatchObject({
      kind: 'same',
      effect: 'repeat',
      dose: kneeDose,
      changes: [],
    });
    expect(propose({ decision: 'pause' })).toMatchObject({ kind: 'stop', effect: 'repeat', changes: [] });
  });
});

describe('a step up with low load', () => {
  it('is repetitions first, waits for a signature, and leaves everything else', () => {
    const proposal = propose({ decision: 'progress' });
    expect(proposal).toMatchObject({ kind: 'step', effect: 'awaits-signature' });
    expect(proposal.dose).toEqual({ ...kneeDose, repetitions: { low: 17, high: 20 } });
    expect(proposal.changes.map((one) => one.variable)).toEqual(['repetitions']);
  });

  it('at the top of the band is the next load owned within 10 %, repetitions starting again', () => {
    const proposal = propose({ decision: 'progress', history: atTop });
    expect(proposal.dose).toEqual({ ...top, loadKg: 11, repetitions: { low: 15, high: 20 } });
    expect(proposal.named).toEqual(['repetitions-start-again']);
  });

  it('allowed repetitions only stays where the band is used up', () => {
    expect(propose({ decision: 'progress', largestStep: 'repetitions', history: atTop }).kind).toBe('same');
  });

  it('10 % is a step, anything over it becomes a set first and is named after that', () => {
    const withOwned = (owned: number[], sets = 3) =>
      propose({
        decision: 'progress',
        owned,
        history: [atTop[0]!, { ...atTop[1]!, dose: { ...top, sets } }],
      });
    expect(withOwned([10, 11]).dose).toMatchObject({ loadKg: 11, sets: 3 });
    expect(withOwned([10, 11.25]).dose).toMatchObject({ loadKg: 10, sets: 4 });
    const named = withOwned([10, 11.25], 4);
    expect(named.dose).toMatchObject({ loadKg: 11.25, sets: 4 });
    expect(named.named).toContain('over-ten-percent');
    expect(named.changes[0]).toMatchObject({ variable: 'load', percent: 12.5 });
  });

  it('never goes onto a load not owned, nor over half of the one-repetition maximum', () => {
    const sets4 = { ...top, sets: 4 };
    const at = (owned: number[], oneRepMaxKg: number) =>
      propose({
        decision: 'progress',
        owned,
        history: [atTop[0]!, { ...atTop[1]!, dose: { ...sets4, oneRepMaxKg } }],
      });
    expect(at([8, 10], 30)).toMatchObject({ kind: 'same', worklist: ['nothing-left-to-step'] });
    expect(at([10, 11], 22).dose).toMatchObject({ loadKg: 11 });
    expect(at([10, 11], 21.9)).toMatchObject({ kind: 'same', worklist: ['nothing-left-to-step'] });
  });
});

describe('a step up with a variation', () => {
  const ladder = (step: Partial<LadderStep> | null): Ladder => ({
    easier: () => null,
    harder: () =>
      step && {
        exerciseId: 'table-push',
        effectiveLoadKg: 22,
        stepPercent: 10,
        equipmentOwned: true,
        ...step,
      },
  });
  const at = (step: Partial<LadderStep> | null, limits: readonly Limit[] = []) =>
    propose({ decision: 'progress', dose: variation, limits, more: { ladder: ladder(step) } });

  it('is the next harder one within 10 %, over it by name, of unknown size by name', () => {
    expect(at({})).toMatchObject({
      kind: 'step',
      dose: { exerciseId: 'table-push' },
      named: ['repetitions-start-again'],
    });
    expect(at({ stepPercent: 10.1 }).named).toContain('over-ten-percent');
    expect(at({ stepPercent: null }).named).toContain('step-size-unknown');
  });

  it('stays where nothing harder is left, the equipment is not owned, or a limit stands in the way', () => {
    expect(at(null).worklist).toEqual(['nothing-left-to-step']);
    expect(at({ equipmentOwned: false }).worklist).toEqual(['nothing-left-to-step']);
    const limit: Limit = {
      joint: knee,
      kind: 'weight-bearing',
      ceilingKg: null,
      from: '2026-01-01',
      to: null,
      author: 'surgeon',
    };
    expect(at({}, [limit])).toMatchObject({ kind: 'same', worklist: ['limit-stands-in-the-way'] });
  });
});

describe('a step up with occlusion', () => {
  const at = (dose: OcclusionDose, more: Partial<DoseQuestion> = {}, owned = [10, 11, 12, 13]) =>
    propose({ decision: 'progress', dose, owned, more: { targetScheme: [30, 15, 15, 15], ...more } });

  it('is repetitions toward the scheme, then a set, then load; the cuff never moves', () => {
    expect(at(occlusion).dose).toEqual({ ...occlusion, scheme: [22, 15, 15, 15] });
    const three = { ...occlusion, scheme: [30, 15, 15], sets: 3 };
    expect(at(three).dose).toEqual({ ...occlusion, scheme: [30, 15, 15, 15] });
    const whole = { ...occlusion, scheme: [30, 15, 15, 15] };
    expect(at(whole).dose).toEqual({ ...whole, loadKg: 11 });
  });

  it('takes load to 40 % of the maximum and no further, and none without a maximum', () => {
    const whole = { ...occlusion, scheme: [30, 15, 15, 15], loadKg: 11 };
    expect(at({ ...whole, oneRepMaxKg: 30 }).dose).toMatchObject({ loadKg: 12 });
    expect(at({ ...whole, oneRepMaxKg: 29.9 })).toMatchObject({
      kind: 'same',
      worklist: ['nothing-left-to-step'],
    });
    expect(at({ ...whole, oneRepMaxKg: null }).worklist).toEqual(['one-rep-max-missing']);
  });

  it('does not step past the time allowed under restriction', () => {
    // 67 repetitions of 4 s and three rests of 30 s are 358 s.
    expect(at({ ...occlusion, capSeconds: 358 }).dose).toMatchObject({ scheme: [22, 15, 15, 15] });
    expect(at({ ...occlusion, capSeconds: 357 }).dose).toMatchObject({ scheme: [20, 15, 15, 15] });
  });
});

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

  it('never goes under half of the last dose tolerated; there the answer is to make contact', () => {
    const at = (low: number) =>
      propose({
        decision: 'ease-back',
        more: {
          tolerated: [{ dose: { ...kneeDose, repetitions: { low, high: 40 } }, day: dayNumber(today) - 20 }],
        },
      });
    // Three sets of 11 are half of three sets of 22 and less than half of three sets of 23.
    expect(at(22)).toMatchObject({ kind: 'ease-back', contact: 'none' });
    expect(at(23)).toMatchObject({
      kind: 'same',
      withheld: 'floor-reached',
      contact: 'routine',
      worklist: ['floor-reached'],
    });
  });

  it('two ease-backs in a row put the patient on the worklist', () => {
    const worklist = (easeBacksBefore: number) =>
      propose({ decision: 'ease-back', more: { easeBacksBefore } }).worklist;
    expect([worklist(0), worklist(1), worklist(2)]).toEqual([[], ['two-ease-backs'], ['two-ease-backs']]);
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
