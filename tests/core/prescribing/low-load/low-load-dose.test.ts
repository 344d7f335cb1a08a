import { describe, expect, it } from 'vitest';
import { proposeLowLoadDose } from '#core/prescribing/low-load/low-load-dose.ts';
import { strengthSettings } from '#core/prescribing/low-load/settings.ts';
import { checkSettings } from '#core/sources/clinic-setting.ts';
import { codesOf, resultOf } from '../../assessment/strength/result-of.ts';
import { knownTen, proposal, propose, settings, warned } from './low-load-proposal.ts';

describe('a low-load dose', () => {
  it('from 6 kg × 12 in a woman of 68: 40 % of 7.71 kg (Kemmler 2006) is 3 kg, truly 38.9 %', () => {
    const made = proposal({
      test: { loadKg: 6, repetitions: 12 },
      ageYears: 68,
      availableKg: [1, 2, 3, 4, 5],
    });
    expect(made.equation).toBe('kemmler');
    expect(made.dose.oneRepMaxKg).toBeCloseTo(7.7129, 4);
    expect(made.dose.loadKg).toBe(3);
    expect(made.truePercent).toBeCloseTo(38.896, 3);
    expect(made.spread?.highKg).toBeCloseTo(8.4898, 4);
  });

  it('is three sets near failure with the clinic’s choices where the clinician says nothing', () => {
    expect(proposal(knownTen).dose).toEqual({
      method: 'low-load',
      sets: 3,
      repetitions: { low: 15, high: 25 },
      reserve: 2,
      restSeconds: 90,
      secondsPerRepetition: 4,
      sessionsPerWeek: 2,
      loadKg: 4,
      oneRepMaxKg: 10,
    });
  });

  it('takes the clinician’s word over the clinic’s choice, and the working says whose it is', () => {
    const made = proposal({ ...knownTen, reserve: 0, sets: 2 });
    expect([made.dose.reserve, made.dose.sets]).toEqual([0, 2]);
    const source = (label: string) => made.working.find((line) => line.label === label)?.source;
    expect([source('Repetitions in reserve'), source('Rest between sets')]).toEqual([
      'clinician',
      'clinic-choice',
    ]);
  });

  it('is put on one exercise and side for the record, bad day included', () => {
    const made = resultOf(
      proposeLowLoadDose({ exerciseId: 'knee-extension', side: 'left' }, knownTen, settings),
    );
    expect([made.dose.exerciseId, made.dose.side]).toEqual(['knee-extension', 'left']);
    expect([made.badDay.exerciseId, made.badDay.side]).toEqual(['knee-extension', 'left']);
  });

  it('refuses to start without a test or a maximum, or with both', () => {
    expect(codesOf(propose({ availableKg: [1] }))).toEqual(['input.test missing']);
    const both = { ...knownTen, test: { loadKg: 5, repetitions: 10 } };
    expect(codesOf(propose(both))).toEqual(['input.test inconsistent']);
  });

  it('always says that the clinician decides and that the joint was not asked', () => {
    expect(codesOf(propose(knownTen))).toEqual(
      expect.arrayContaining(['clinician-decides', 'evidence-limits', 'reserve-uncertain-in-long-sets']),
    );
  });
});

describe('percentage of the maximum', () => {
  it('29.9 % is refused as too low, 30 and 50 % are made, 50.1 % is refused as too high', () => {
    const codes = [29.9, 30, 50, 50.1].map((percent) => {
      const outcome = propose({ ...knownTen, percent });
      return outcome.ok ? outcome.result.dose.loadKg : outcome.refused[0]?.code;
    });
    expect(codes).toEqual(['too-low', 3, 5, 'too-high']);
  });

  it('a clinic cannot set its floor under 30 % nor its top over 60 %', () => {
    const checked = (id: string, value: number) =>
      checkSettings(strengthSettings, { ...settings, [id]: value });
    expect(checked('low-load-percent-floor', 29)[0]?.code).toBe('too-low');
    expect(checked('low-load-percent-floor', 30)).toEqual([]);
    expect(checked('low-load-percent-top', 61)[0]?.code).toBe('too-high');
    expect(codesOf(propose(knownTen, { 'low-load-percent-floor': 29 }))).toEqual([
      'choices.low-load-percent-floor too-low',
    ]);
  });

  it('warns when rounding leaves the floor, and not at it', () => {
    expect(warned({ ...knownTen, percent: 30, availableKg: [2.9, 3.19] })).toContain('under-floor');
    expect(warned({ ...knownTen, percent: 30, availableKg: [3, 3.3] })).not.toContain('under-floor');
  });

  it('warns when rounding to the nearest passes the top, and not at it', () => {
    const nearest = (availableKg: number[]) =>
      warned({ ...knownTen, percent: 50, neverAbove: false, availableKg });
    expect(nearest([4, 5.5])).toContain('over-top');
    expect(nearest([4, 5])).not.toContain('over-top');
  });

  it('warns when another equation would put the load outside 30–50 %', () => {
    // 40 kg × 10: Kemmler 48.9 kg, Wathan 53.9 kg; 14.7 kg is 30.03 % of the first, 27.3 % of the other.
    const codes = warned({ test: { loadKg: 40, repetitions: 10 }, percent: 30.5, availableKg: [14.7] });
    expect(codes).toContain('spread-leaves-window');
    expect(codes).not.toContain('under-floor');
  });
});

describe('load owned and limits', () => {
  it('refuses when the lightest load owned is above the target, and says what it would be', () => {
    const outcome = propose({ ...knownTen, percent: 30, availableKg: [4, 5] });
    expect(codesOf(outcome)).toEqual(['input.availableKg inconsistent']);
    expect(outcome.ok ? '' : outcome.refused[0]?.reason).toContain('40 % of the maximum');
    const over = propose({ ...knownTen, percent: 50, availableKg: [6] });
    expect(over.ok ? '' : over.refused[0]?.reason).toContain('over the top of 50 %');
  });

  it('refuses when nothing is owned', () => {
    expect(codesOf(propose({ ...knownTen, availableKg: [] }))).toEqual(['input.availableKg missing']);
  });

  it('holds a clinician’s ceiling for the load, and for the next load named', () => {
    const made = propose({ ...knownTen, percent: 50, loadCeilingKg: 3 });
    expect(resultOf(made).dose.loadKg).toBe(3);
    expect(resultOf(made).nextLoad).toBeNull();
    expect(codesOf(made)).toContain('ceiling-applied');
    expect(codesOf(propose({ ...knownTen, loadCeilingKg: 0.5 }))).toEqual(['input.availableKg inconsistent']);
  });

  it('names a next step over 10 % and stays quiet at 10 %', () => {
    expect(warned({ ...knownTen, availableKg: [4, 4.5] })).toContain('step-over-window');
    expect(warned({ ...knownTen, availableKg: [4, 4.4] })).not.toContain('step-over-window');
    expect(warned({ ...knownTen, availableKg: [4] })).toContain('no-heavier-load');
  });
});
