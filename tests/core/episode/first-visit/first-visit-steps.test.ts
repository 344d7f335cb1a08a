/** Where a first visit stands: read from the record, in the order of the appointment. */
import { describe, expect, it } from 'vitest';
import {
  type FirstVisitFacts,
  firstVisitConsents,
  firstVisitStates,
  firstVisitSteps,
  goesOnAt,
  methodsWaiting,
  stepAfter,
  stepAsked,
  stepBefore,
} from '#core/episode/first-visit/first-visit-steps.ts';
import { limbs, sides } from '#core/exercises/joints.ts';
import { type Eligibility, type Method, methods } from '#core/prescribing/methods.ts';
import type { MethodReason } from '#core/screening/screening.ts';

const reason = (code: string, eligibility: Eligibility, text: string): MethodReason => ({
  code,
  from: 'screening',
  eligibility,
  text,
  clearedBy: null,
  support: 'clinic',
});

const outcomes = (eligibilityOf: (method: Method) => Eligibility, reasons: readonly MethodReason[] = []) =>
  methods.flatMap((method) =>
    limbs.flatMap((limb) =>
      sides.map((side) => ({ method, limb, side, eligibility: eligibilityOf(method), reasons })),
    ),
  );
const allOpen = outcomes(() => 'open');

const done: FirstVisitFacts = {
  consents: { treatment: 'given', 'record-keeping': 'given', 'remote-monitoring': 'given' },
  isReasonKnown: true,
  followedJoints: ['right-knee', 'left-hip'],
  jointsWithBaseline: ['left-hip', 'right-knee'],
  questions: { answered: 16, all: 16 },
  isPressureMeasured: true,
  isHomeAsked: true,
  outcomes: allOpen,
  signed: 1,
  isWeekSet: true,
  isInvited: true,
};
const statesOf = (over: Partial<FirstVisitFacts>) =>
  Object.fromEntries(firstVisitStates({ ...done, ...over }).map(({ step, state }) => [step, state]));

describe('a first visit', () => {
  it('has nothing left where every step stands on record', () => {
    expect(new Set(Object.values(statesOf({})))).toEqual(new Set(['done']));
    expect(goesOnAt(firstVisitStates(done))).toBeNull();
  });

  it.each([
    ['consents', { consents: { ...done.consents, 'record-keeping': 'not-asked' } }],
    ['reason', { isReasonKnown: false }],
    ['reason', { followedJoints: [] }],
    ['reason', { jointsWithBaseline: ['right-knee'] }],
    ['screening', { questions: { answered: 15, all: 16 } }],
    ['measurements', { isPressureMeasured: false }],
    ['home', { isHomeAsked: false }],
    ['exercise', { signed: 0 }],
    ['week', { isWeekSet: false }],
    ['invitation', { isInvited: false }],
  ] as const)('is open at %s, and at no other step, while %o', (step, over) => {
    const states = statesOf(over);
    expect(states[step]).toBe('open');
    const others = Object.entries(states).filter(([name]) => name !== step && name !== 'week');
    expect(others.every(([, state]) => state === 'done')).toBe(true);
  });

  it('goes on at the first step that is not done', () => {
    const facts = { ...done, isPressureMeasured: false, signed: 0 };
    expect(goesOnAt(firstVisitStates(facts))).toBe('measurements');
  });

  it('opens at the step that is asked for, whatever is open before it', () => {
    const states = firstVisitStates({ ...done, isHomeAsked: false });
    expect(stepAsked(states, 'week')).toBe('week');
    expect(stepAsked(states, 'nothing')).toBe('home');
    expect(stepAsked(states, undefined)).toBe('home');
    expect(stepAsked(firstVisitStates(done), undefined)).toBe('consents');
  });

  it('takes a refused consent as an answer that was given', () => {
    for (const kind of firstVisitConsents)
      for (const act of ['refused', 'withdrawn'] as const)
        expect(statesOf({ consents: { ...done.consents, [kind]: act } }).consents).toBe('done');
  });

  it('refuses the exercise only where no method is open on any limb, with each reason once', () => {
    const clot = reason('past-clot', 'closed', 'Clot.');
    const care = reason('high', 'open-with-precautions', 'High pressure.');
    const closed = outcomes(() => 'closed', [clot, care]);
    const [exercise] = firstVisitStates({ ...done, signed: 0, outcomes: closed }).filter(
      ({ step }) => step === 'exercise',
    );
    expect(exercise).toEqual({ step: 'exercise', state: 'refused', because: ['Clot.'] });
    const oneOpen = closed.map((row, place) =>
      place === 0 ? { ...row, eligibility: 'open' as const } : row,
    );
    expect(statesOf({ signed: 0, outcomes: oneOpen }).exercise).toBe('open');
    const lowLoad = outcomes(
      (method) => (method === 'low-load' ? 'open-with-precautions' : 'closed'),
      [clot],
    );
    expect(statesOf({ signed: 0, outcomes: lowLoad }).exercise).toBe('open');
  });

  it('tells what waits for a question or a measurement from what a finding closes', () => {
    const unmeasured = reason('pressure-not-measured', 'closed-until-cleared', 'Measure it.');
    const finding = reason('past-clot', 'closed', 'Clot.');
    expect(methodsWaiting(outcomes(() => 'closed', [unmeasured]))).toEqual(methods);
    expect(methodsWaiting(outcomes(() => 'closed', [unmeasured, finding]))).toEqual([]);
    expect(methodsWaiting(allOpen)).toEqual([]);
  });

  it('keeps what is signed as done, whatever closes it later', () => {
    expect(statesOf({ outcomes: outcomes(() => 'closed') }).exercise).toBe('done');
  });

  it('refuses the week until an exercise is signed, and says so', () => {
    const [week] = firstVisitStates({ ...done, signed: 0 }).filter(({ step }) => step === 'week');
    expect(week).toEqual({ step: 'week', state: 'refused', because: ['No exercise is signed yet.'] });
  });

  it('goes forth and back one step at a time, and not past its ends', () => {
    for (const [place, step] of firstVisitSteps.entries()) {
      expect(stepAfter(step)).toBe(firstVisitSteps[place + 1] ?? step);
      expect(stepBefore(step)).toBe(firstVisitSteps[place - 1] ?? null);
    }
  });
});
