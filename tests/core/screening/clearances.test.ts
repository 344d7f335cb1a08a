/** A clinician's clearance opens what is clearable, with precautions, and hides nothing. */
import { describe, expect, it } from 'vitest';
import type { Clearance } from '#core/screening/screening.ts';
import { codesOf, outcomeOf, screeningWith, today } from './answers.ts';

describe('clearances', () => {
  const screening = screeningWith([{ item: 'high-blood-pressure', answer: 'yes' }]);
  const clearance: Clearance = {
    method: 'occlusion',
    limb: 'leg',
    side: 'left',
    findings: ['diagnosed-high-blood-pressure'],
    reason: 'Three readings under 130/80 this month.',
    by: 'Dr Example',
    day: today,
  };
  const cleared = (changed: Partial<Clearance> = {}, target: 'left' | 'right' = 'left') =>
    outcomeOf('occlusion', 'leg', target, { screening, clearances: [{ ...clearance, ...changed }] });

  it('open a clearable closing with precautions, and the reason stays with name, day and ground', () => {
    const outcome = cleared();
    expect(outcome.eligibility).toBe('open-with-precautions');
    expect(outcome.reasons[0]?.text).toContain(
      'Cleared by Dr Example on 2026-03-02: Three readings under 130/80 this month.',
    );
  });

  it('reach the limb and side they name; without one they reach all', () => {
    expect(cleared({}, 'right').eligibility).toBe('closed-until-cleared');
    expect(cleared({ side: null }, 'right').eligibility).toBe('open-with-precautions');
    expect(cleared({ limb: 'arm' }).eligibility).toBe('closed-until-cleared');
    expect(cleared({ limb: null, side: null }, 'right').eligibility).toBe('open-with-precautions');
  });

  it('without a name or a reason clear nothing', () => {
    expect(cleared({ by: ' ' }).eligibility).toBe('closed-until-cleared');
    expect(cleared({ reason: '' }).eligibility).toBe('closed-until-cleared');
  });

  it('given before the screening, or dated tomorrow, clear nothing', () => {
    expect(cleared({ day: '2026-03-01' }).eligibility).toBe('closed-until-cleared');
    expect(cleared({ day: '2026-03-03' }).eligibility).toBe('closed-until-cleared');
  });

  it('never open what nobody may clear', () => {
    const clot = screeningWith([{ item: 'past-clot', answer: 'yes', details: [] }]);
    const outcome = outcomeOf('occlusion', 'leg', 'left', {
      screening: clot,
      clearances: [{ ...clearance, findings: ['past-clot'] }],
    });
    expect(outcome.eligibility).toBe('closed');
  });

  it('of one closing leave another standing', () => {
    const two = screeningWith([
      { item: 'high-blood-pressure', answer: 'yes' },
      { item: 'kidney-disease', answer: 'yes' },
    ]);
    const outcome = outcomeOf('occlusion', 'leg', 'left', { screening: two, clearances: [clearance] });
    expect(outcome.eligibility).toBe('closed-until-cleared');
    expect(codesOf(outcome)).toEqual(['diagnosed-high-blood-pressure', 'kidney-disease']);
  });
});
