/** Additive points, blood pressure against them, and reported side effects. */
import { describe, expect, it } from 'vitest';
import { reportedPercent, sideEffectReports } from '#core/prescribing/occlusion/side-effects.ts';
import { bloodPressure, codesOf, outcomeOf, screeningWith } from '../../screening/answers.ts';
import { noteCodes, resultOf } from './row-answers.ts';

const conditionNames = [
  'pastClot',
  'acuteIllness',
  'earlyPostoperative',
  'severeArrhythmiaOrIschaemia',
  'pregnant',
  'varicoseVeins',
  'prolongedInactivity',
  'atrialFibrillationOrHeartFailure',
  'malignancy',
  'hyperlipidaemia',
  'oestrogen',
] as const;
const none = Object.fromEntries(conditionNames.map((name) => [name, false]));
const person = (
  sex: string,
  ageYears: number,
  bodyMassIndex: number,
  conditions: Partial<Record<(typeof conditionNames)[number], boolean>> = {},
  pressure: readonly [number, number] = [124, 76],
) => ({
  sex,
  ageYears,
  bodyMassIndex,
  systolicMmhg: pressure[0],
  diastolicMmhg: pressure[1],
  conditions: { ...none, ...conditions },
});
const listA = (input: unknown) => resultOf('occlusion-points-a', input);

describe('list A (course summary, scrambled layout, completed from memory): asks for a clinician above 4', () => {
  it('woman, 62 years, body-mass index 31: 5, so a clinician decides [occlusion 39]', () => {
    expect(listA(person('female', 62, 31))).toEqual({ points: 5, gate: 'needs-clinician-decision' });
  });
  it('woman, 45 years, body-mass index 27: 3 [occlusion 40]', () => {
    expect(listA(person('female', 45, 27))).toEqual({ points: 3, gate: 'below-gate' });
  });
  it('man, 65 years, atrial fibrillation, body-mass index 24: 5 [occlusion 41]', () => {
    expect(listA(person('male', 65, 24, { atrialFibrillationOrHeartFailure: true }))).toEqual({
      points: 5,
      gate: 'needs-clinician-decision',
    });
  });
  it('pregnancy alone in a woman of 30: 5, and a stop of its own [occlusion 42]', () => {
    const pregnant = person('female', 30, 22, { pregnant: true });
    expect(listA(pregnant)).toEqual({ points: 5, gate: 'needs-clinician-decision' });
    expect(noteCodes('occlusion-points-a', pregnant)).toContain('stop-on-its-own');
    const answered = outcomeOf('occlusion', 'leg', 'left', {
      screening: screeningWith([{ item: 'pregnancy-or-birth', answer: 'yes' }]),
    });
    expect(answered.eligibility).toBe('closed');
  });
  it('closes the holes of its bands upward: 39, 40, 59, 60 years; 24.9, 25, 29.9, 30', () => {
    const age = (years: number) => listA(person('male', years, 22)).points;
    expect([39, 40, 59, 60].map(age)).toEqual([0, 1, 1, 2]);
    const mass = (index: number) => listA(person('male', 30, index)).points;
    expect([24.9, 25, 29.9, 30].map(mass)).toEqual([0, 1, 1, 2]);
  });
  it('4 points are below the gate, 5 are not', () => {
    expect(listA(person('female', 30, 22, { varicoseVeins: true }))).toEqual({
      points: 4,
      gate: 'below-gate',
    });
    expect(listA(person('female', 40, 22, { varicoseVeins: true }))).toEqual({
      points: 5,
      gate: 'needs-clinician-decision',
    });
  });
  it('weighs each condition as printed or remembered', () => {
    const one = conditionNames.map((name) => listA(person('male', 30, 22, { [name]: true })).points);
    expect(one).toEqual([5, 5, 5, 5, 4, 3, 3, 3, 2, 2, 2]);
  });
  it('counts 160/95 and 180/100 from the figure itself', () => {
    const pressure = (systolic: number, diastolic: number) =>
      listA(person('male', 30, 22, {}, [systolic, diastolic])).points;
    expect([pressure(159, 94), pressure(160, 94), pressure(159, 95)]).toEqual([0, 3, 3]);
    expect([pressure(179, 99), pressure(180, 99), pressure(179, 100)]).toEqual([3, 5, 5]);
  });
  it('says that a low total clears nothing', () => {
    expect(noteCodes('occlusion-points-a', person('male', 30, 22))).toContain('clears-nothing');
  });
});

describe('list B (Nascimento 2022, table 3: points seen, cut-offs not)', () => {
  const noneB = {
    previousClot: false,
    thrombophilia: false,
    legParalysis: false,
    pastCancer: false,
    intensiveCareStay: false,
    immobilised: false,
  };
  const listB = (ageYears: number, conditions = {}) =>
    resultOf('occlusion-points-b', { ageYears, conditions: { ...noneB, ...conditions } }).points;

  it('previous clot at 70 years: 4 [occlusion 43]', () => {
    expect(listB(70, { previousClot: true })).toBe(4);
  });
  it('60 years exactly: 1; 59: none [occlusion 44]', () => {
    expect([listB(59), listB(60), listB(61)]).toEqual([0, 1, 1]);
  });
  it('the rest as printed: 2 for thrombophilia, paralysis and past cancer, 1 for intensive care and immobility', () => {
    const one = (name: keyof typeof noneB) => listB(40, { [name]: true });
    expect([one('thrombophilia'), one('legParalysis'), one('pastCancer')]).toEqual([2, 2, 2]);
    expect([one('intensiveCareStay'), one('immobilised')]).toEqual([1, 1]);
  });
});

describe('resting pressure before occlusion work', () => {
  const at = (systolic: number, diastolic: number) =>
    outcomeOf('occlusion', 'leg', 'left', { measurements: [bloodPressure(systolic, diastolic)] });

  it('180/110 blocks; 165/92 scores 3 and is held by the stricter gate; 138/84 passes list A yet lies over a trial limit of 140/80 [occlusion 45]', () => {
    expect(at(180, 110).eligibility).toBe('closed');
    expect(listA(person('male', 30, 22, {}, [165, 92])).points).toBe(3);
    expect(codesOf(at(165, 92))).toEqual(['blood-pressure-hold-occlusion']);
    expect(listA(person('male', 30, 22, {}, [138, 84])).points).toBe(0);
    expect(at(138, 84).eligibility).toBe('open');
    expect(noteCodes('exercise-start-gate', { systolicMmhg: 138, diastolicMmhg: 84 })).toContain(
      'above-trial-limit',
    );
    expect(noteCodes('exercise-start-gate', { systolicMmhg: 140, diastolicMmhg: 80 })).not.toContain(
      'above-trial-limit',
    );
  });

  it('rheumatoid arthritis is a precaution and no block (Nascimento 2022 against Rodrigues 2020) [occlusion 46]', () => {
    const outcome = outcomeOf('occlusion', 'leg', 'left', {
      screening: screeningWith([{ item: 'rheumatoid-arthritis', answer: 'yes' }]),
    });
    expect(outcome.eligibility).toBe('open-with-precautions');
    expect(codesOf(outcome)).toEqual(['rheumatoid-arthritis']);
  });
});

describe('reported side effects', () => {
  it('1,672 of 25,813 people are 6.48 % (Anderson 2022, abstract) [occlusion 51]', () => {
    const report = sideEffectReports.find(({ id }) => id === 'reports-2022')!;
    expect(report.denominator).toBe(25_813);
    expect(reportedPercent(report, report.events[0])).toBeCloseTo(6.48, 2);
  });
  it('10 of 168 patients are 5.95 % (Minniti 2020, abstract)', () => {
    const report = sideEffectReports.find(({ id }) => id === 'patients-2020')!;
    expect(reportedPercent(report, report.events[0])).toBeCloseTo(5.95, 2);
  });
  it('what was neither printed nor counted is not known, never zero', () => {
    const report = sideEffectReports[0]!;
    expect(reportedPercent(report, { effect: 'unheard of' })).toBeNull();
  });
});
