/** A hot joint closes its own loading and not the neighbour's; the trunk gets no cuff. */
import { describe, expect, it } from 'vitest';
import type { Joint } from '#core/joints.ts';
import type { Method } from '#core/methods.ts';
import type { Clearance, ScreeningItemAnswer } from '#core/model/screening.ts';
import { exerciseOpening, jointBlocks } from '#core/screening/joint-blocks.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { outcomesInput, screeningWith, today } from './answers.ts';

const openingFor = (
  answers: readonly ScreeningItemAnswer[],
  exercise: {
    method?: Method;
    limb?: 'arm' | 'leg' | 'trunk';
    side?: 'left' | 'right' | 'both';
    joints?: Joint[];
  },
  clearances: readonly Clearance[] = [],
) => {
  const screening = screeningWith(answers);
  return exerciseOpening({
    exercise: { method: 'low-load', limb: 'leg', side: 'left', joints: [], ...exercise },
    outcomes: methodOutcomes(outcomesInput({ screening, clearances })),
    screening,
    clearances,
    today,
  });
};
const hotKnee: ScreeningItemAnswer = { item: 'hot-joint', answer: 'yes', joints: ['left-knee'] };

describe('a hot joint', () => {
  it('closes an exercise that loads it until a physician has judged it', () => {
    const outcome = openingFor([hotKnee], { joints: ['left-knee', 'left-hip'] });
    expect(outcome.opening).toBe('closed-until-cleared');
    expect(outcome.reasons.map(({ code }) => code)).toContain('hot-joint-left-knee');
  });

  it('leaves the ankle of that leg with a precaution, and the arm alone', () => {
    expect(openingFor([hotKnee], { joints: ['left-ankle'] }).opening).toBe('open-with-precautions');
    expect(openingFor([hotKnee], { limb: 'arm', joints: ['left-elbow'] }).opening).toBe('open');
    expect(openingFor([hotKnee], { side: 'right', joints: ['right-knee'] }).opening).toBe('open');
  });

  it('lets no cuff on its limb', () => {
    expect(openingFor([hotKnee], { method: 'occlusion', joints: ['left-ankle'] }).opening).toBe(
      'closed-until-cleared',
    );
  });

  it('that nobody named may be any joint', () => {
    expect(jointBlocks(screeningWith([{ item: 'hot-joint', answer: 'not-known' }]))).toHaveLength(18);
    expect(
      openingFor([{ item: 'hot-joint', answer: 'yes' }], { limb: 'arm', joints: ['right-hand'] }).opening,
    ).toBe('closed-until-cleared');
  });

  it('is cleared by name and reason for its own code only', () => {
    const clearance: Clearance = {
      method: 'low-load',
      limb: null,
      side: null,
      findings: ['hot-joint-left-knee'],
      reason: 'Aspirated, crystals found and treated.',
      by: 'Dr Example',
      day: today,
    };
    const loadsKnee = { joints: ['left-knee'] as Joint[] };
    expect(openingFor([hotKnee], loadsKnee, [clearance]).opening).toBe('open-with-precautions');
    expect(openingFor([hotKnee], loadsKnee, [{ ...clearance, by: '' }]).opening).toBe('closed-until-cleared');
    expect(openingFor([hotKnee], loadsKnee, [{ ...clearance, method: 'variation' }]).opening).toBe(
      'closed-until-cleared',
    );
    expect(openingFor([hotKnee], loadsKnee, [{ ...clearance, day: '2026-03-03' }]).opening).toBe(
      'closed-until-cleared',
    );
  });
});

describe('the trunk', () => {
  it('gets no occlusion', () => {
    const outcome = openingFor([], { method: 'occlusion', limb: 'trunk', side: 'both' });
    expect(outcome.opening).toBe('closed');
    expect(outcome.reasons.map(({ code }) => code)).toContain('trunk-refused');
  });
  it('is loaded only as far as every limb may be', () => {
    expect(openingFor([], { limb: 'trunk', side: 'both' }).opening).toBe('open');
    expect(
      openingFor([{ item: 'fever-or-unwell', answer: 'yes' }], { limb: 'trunk', side: 'both' }).opening,
    ).toBe('closed');
  });
});

describe('an exercise of both sides', () => {
  it('is as closed as the more closed side', () => {
    const infected: ScreeningItemAnswer = {
      item: 'wound-break-or-infection',
      answer: 'yes',
      details: ['infection'],
      limbs: [{ limb: 'leg', side: 'right' }],
    };
    expect(openingFor([infected], { side: 'both' }).opening).toBe('closed-until-cleared');
    expect(openingFor([infected], { side: 'left' }).opening).toBe('open');
  });
  it('is closed when no outcome was given', () => {
    const exercise = { method: 'low-load', limb: 'leg', side: 'both', joints: [] } as const;
    expect(
      exerciseOpening({ exercise, outcomes: [], screening: screeningWith(), clearances: [], today }).opening,
    ).toBe('closed');
  });
});
