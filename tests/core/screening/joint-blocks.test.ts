/** A hot joint closes its own loading and not the neighbour's; the trunk gets no cuff. */
import { describe, expect, it } from 'vitest';
import type { Joint } from '#core/exercises/joints.ts';
import type { Method } from '#core/prescribing/methods.ts';
import { exerciseEligibility, jointBlocks } from '#core/screening/joint-blocks.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import type { Clearance, ScreeningItemAnswer } from '#core/screening/screening.ts';
import { outcomesInput, screeningWith, today } from './answers.ts';

const eligibilityFor = (
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
  return exerciseEligibility({
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
    const outcome = eligibilityFor([hotKnee], { joints: ['left-knee', 'left-hip'] });
    expect(outcome.eligibility).toBe('closed-until-cleared');
    expect(outcome.reasons.map(({ code }) => code)).toContain('hot-joint-left-knee');
  });

  it('leaves the ankle of that leg with a precaution, and the arm alone', () => {
    expect(eligibilityFor([hotKnee], { joints: ['left-ankle'] }).eligibility).toBe('open-with-precautions');
    expect(eligibilityFor([hotKnee], { limb: 'arm', joints: ['left-elbow'] }).eligibility).toBe('open');
    expect(eligibilityFor([hotKnee], { side: 'right', joints: ['right-knee'] }).eligibility).toBe('open');
  });

  it('lets no cuff on its limb', () => {
    expect(eligibilityFor([hotKnee], { method: 'occlusion', joints: ['left-ankle'] }).eligibility).toBe(
      'closed-until-cleared',
    );
  });

  it('that nobody named may be any joint', () => {
    expect(jointBlocks(screeningWith([{ item: 'hot-joint', answer: 'not-known' }]))).toHaveLength(22);
    expect(
      eligibilityFor([{ item: 'hot-joint', answer: 'yes' }], { limb: 'arm', joints: ['right-hand'] })
        .eligibility,
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
    expect(eligibilityFor([hotKnee], loadsKnee, [clearance]).eligibility).toBe('open-with-precautions');
    expect(eligibilityFor([hotKnee], loadsKnee, [{ ...clearance, by: '' }]).eligibility).toBe(
      'closed-until-cleared',
    );
    expect(eligibilityFor([hotKnee], loadsKnee, [{ ...clearance, method: 'variation' }]).eligibility).toBe(
      'closed-until-cleared',
    );
    expect(eligibilityFor([hotKnee], loadsKnee, [{ ...clearance, day: '2026-03-03' }]).eligibility).toBe(
      'closed-until-cleared',
    );
  });
});

describe('the trunk', () => {
  it('gets no occlusion', () => {
    const outcome = eligibilityFor([], { method: 'occlusion', limb: 'trunk', side: 'both' });
    expect(outcome.eligibility).toBe('closed');
    expect(outcome.reasons.map(({ code }) => code)).toContain('trunk-refused');
  });
  it('is loaded only as far as every limb may be', () => {
    expect(eligibilityFor([], { limb: 'trunk', side: 'both' }).eligibility).toBe('open');
    expect(
      eligibilityFor([{ item: 'fever-or-unwell', answer: 'yes' }], { limb: 'trunk', side: 'both' })
        .eligibility,
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
    expect(eligibilityFor([infected], { side: 'both' }).eligibility).toBe('closed-until-cleared');
    expect(eligibilityFor([infected], { side: 'left' }).eligibility).toBe('open');
  });
  it('is closed when no outcome was given', () => {
    const exercise = { method: 'low-load', limb: 'leg', side: 'both', joints: [] } as const;
    expect(
      exerciseEligibility({ exercise, outcomes: [], screening: screeningWith(), clearances: [], today })
        .eligibility,
    ).toBe('closed');
  });
});
