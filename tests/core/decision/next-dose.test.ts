import { describe, expect, it } from 'vitest';
import type { Ladder, LadderStep } from '#core/decision/dose/proposal.ts';
import type { DoseQuestion } from '#core/decision/next-dose.ts';
import type { OcclusionDose } from '#core/prescribing/dose.ts';
import type { Limit } from '#core/record/limit.ts';
import { atTop, occlusion, propose, top, variation } from './propose.ts';
import { knee, kneeDose } from './small-record.ts';

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
  it('is repetitions first, acts at once inside the signed band, and leaves everything else', () => {
    const proposal = propose({ decision: 'progress' });
    expect(proposal).toMatchObject({ kind: 'step', effect: 'acts-at-once' });
    const version1 = propose({ decision: 'progress', more: { settings: { 'engine-version': 1 } } });
    expect(version1).toMatchObject({ kind: 'step', effect: 'awaits-signature' });
    expect(proposal.dose).toEqual({ ...kneeDose, repetitions: { low: 17, high: 20 } });
    expect(proposal.changes.map((one) => one.variable)).toEqual(['repetitions']);
  });

  it('waits until the dose in force has been done once, however well the dose before it went', () => {
    expect(propose({ decision: 'progress', history: atTop, tried: false })).toMatchObject({
      kind: 'same',
      effect: 'repeat',
    });
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

  it('goes on with the side the harder one works, asks a clinician where a side has to be chosen, and names further joints', () => {
    expect(at({ side: 'left' }).dose.side).toBe('left');
    expect(at({ side: null })).toMatchObject({ kind: 'same', worklist: ['side-to-choose'] });
    expect(at({ addsDemand: true }).named).toContain('loads-more-joints');
    expect(at({ addsDemand: false }).named).not.toContain('loads-more-joints');
  });

  it('stays where nothing harder is left, the equipment is not owned, or a limit stands in the way', () => {
    expect(at(null).worklist).toEqual(['nothing-left-to-step']);
    expect(at({ equipmentOwned: false }).worklist).toEqual(['nothing-left-to-step']);
    const limit: Limit = {
      joint: knee,
      kind: 'weight-bearing',
      limitKg: null,
      from: '2026-01-01',
      to: null,
      author: 'surgeon',
    };
    expect(at({}, [limit])).toMatchObject({ kind: 'same', worklist: ['limit-stands-in-the-way'] });
  });
});

describe('a step to another exercise that a limit closes', () => {
  const bare = { limitKg: null, from: '2026-01-01', to: null, author: 'surgeon' } as const;
  const onto = (exerciseId: string): LadderStep => ({
    exerciseId,
    effectiveLoadKg: null,
    stepPercent: 5,
    equipmentOwned: true,
  });

  it('up is not taken, also where the limit stands on a joint the present exercise does not load', () => {
    const dose = { ...variation, exerciseId: 'toe-raise-seated', side: 'both' } as const;
    const up = { harder: () => onto('toe-raise-standing'), easier: () => null };
    const at = (limits: readonly Limit[]) =>
      propose({ decision: 'progress', dose, limits, more: { ladder: up } });
    expect(at([]).dose.exerciseId).toBe('toe-raise-standing');
    expect(at([{ ...bare, joint: 'left-hip', kind: 'weight-bearing' }])).toMatchObject({
      kind: 'same',
      dose: { exerciseId: 'toe-raise-seated' },
      worklist: ['limit-stands-in-the-way'],
    });
  });

  it.each([
    ['under the angle of the easier one', 94, true],
    ['at it', 95, false],
    ['over it', 96, false],
  ])('down is not taken either, and a clinician hears of it: allowed %s', (_name, toDegrees, isClosed) => {
    // From memory: standing up from a chair of 46 cm takes the knee to 95° of flexion.
    const few = { ...variation, exerciseId: 'leg-raise', sets: 1, repetitions: { low: 2, high: 2 } };
    const down = {
      harder: () => null,
      easier: () => ({ ...onto('sit-to-stand-chair'), side: 'both' as const }),
    };
    const allowed = { movement: 'flexion', fromDegrees: 0, toDegrees } as const;
    const proposal = propose({
      decision: 'ease-back',
      dose: few,
      limits: [{ ...bare, joint: knee, kind: 'range', ...allowed }],
      more: { ladder: down },
    });
    expect(proposal.dose.exerciseId).toBe(isClosed ? 'leg-raise' : 'sit-to-stand-chair');
    expect(proposal.worklist.includes('no-dose-within-limit')).toBe(isClosed);
    expect(proposal.contact === 'none').toBe(!isClosed);
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
