/** A dose on a machine of the clinic. Figures worked by hand; thresholds are those of the low-load dose. */
import { describe, expect, it } from 'vitest';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { ClinicMachine } from '#core/clinic/machine.ts';
import { changesFromInForce } from '#core/prescribing/changes-from-in-force.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { LowLoadRequest } from '#core/prescribing/dose-request.ts';
import { exerciseChoice } from '#core/prescribing/exercise-choice.ts';
import type { PrescribingContext } from '#core/prescribing/prescribing-context.ts';
import { proposePrescription } from '#core/prescribing/propose.ts';
import { requestOfDose } from '#core/prescribing/request-of-dose.ts';
import { context, known, limit } from '../choice/known-patient.ts';

const machine = (over: Partial<ClinicMachine> = {}): ClinicMachine => ({
  id: 'press-1',
  version: 1,
  isRetired: false,
  name: 'Leg press by the window',
  kind: 'leg-press',
  loading: 'stack',
  place: 'Gym',
  firstKg: 10,
  stepKg: 5,
  lastKg: 100,
  hasHalfStep: false,
  ...over,
});

/** The clinic's equation makes 73.4 kg of 60 kg for 10; half of it, the top of the band, is 36.7 kg. */
const test = {
  kind: 'repetitions-to-failure',
  day: '2026-03-02',
  exerciseId: 'leg-press-machine',
  side: 'both',
  loadKg: 60,
  repetitions: 10,
} as unknown as Measurement;

const at = (
  machines: readonly ClinicMachine[],
  over: Partial<PrescribingContext> = {},
): PrescribingContext => ({
  ...context,
  measurements: [...context.measurements, test],
  machines,
  ...over,
});

const press: LowLoadRequest = { method: 'low-load', exerciseId: 'leg-press-machine', side: 'both' };
const ask = (of: PrescribingContext, over: Partial<LowLoadRequest> = {}) =>
  proposePrescription(of, { ...press, ...over });
const reasonOf = (outcome: ReturnType<typeof ask>) => (outcome.ok ? null : outcome.refused[0]);
const doseOf = (outcome: ReturnType<typeof ask>): LowLoadDose => {
  if (!outcome.ok) throw new Error(outcome.refused[0]?.reason);
  return outcome.result.dose as LowLoadDose;
};

describe('the place of a dose', () => {
  it('is the machine, named in dose, easier session and working, and its loads are what is rounded to', () => {
    const outcome = ask(at([machine()]), { percent: 40 });
    const dose = doseOf(outcome);
    const place = { id: 'press-1', name: 'Leg press by the window' };
    expect(dose.machine).toEqual(place);
    expect(dose.loadKg % 5).toBe(0);
    expect(context.ownedLoadsKg).not.toContain(dose.loadKg);
    expect(outcome.ok && outcome.result.badDay).toMatchObject({ machine: place });
    expect(outcome.ok && outcome.result.working[0]?.text).toBe(
      'Place: at the clinic, Leg press by the window.',
    );
    expect(outcome.ok && outcome.result.notes.map(({ code }) => code)).toContain('at-the-clinic');
  });

  it('needs no load at home', () => {
    expect(ask(at([machine()], { ownedLoadsKg: [] })).ok).toBe(true);
  });

  it('is asked for where the clinic has two machines of the kind, and taken as chosen', () => {
    const two = [machine(), machine({ id: 'press-2', name: 'Leg press at the wall' })];
    expect(reasonOf(ask(at(two)))).toMatchObject({
      field: 'input.machineId',
      code: 'missing',
      reason: 'Choose the machine: Leg press by the window, Leg press at the wall.',
    });
    const chosen = ask(at(two), { machineId: 'press-2' });
    expect(doseOf(chosen).machine?.id).toBe('press-2');
    expect(chosen.ok && chosen.result.notes.map(({ code }) => code)).toContain('test-of-which-machine');
  });

  it('is refused where no machine of the kind is in use, or another one is named', () => {
    expect(reasonOf(ask(at([])))?.reason).toMatch(/An administrator adds it under Machines/);
    expect(reasonOf(ask(at([machine({ isRetired: true })])))?.code).toBe('missing');
    expect(reasonOf(ask(at([machine({ kind: 'cable' })])))?.code).toBe('missing');
    const gone = [machine(), machine({ id: 'old', isRetired: true })];
    expect(reasonOf(ask(at(gone), { machineId: 'old' }))?.reason).toMatch(/no longer in use/);
  });

  it('is no machine for an exercise that has none', () => {
    const knee = { exerciseId: 'knee-extension-seated', side: 'right', machineId: 'press-1' } as const;
    expect(reasonOf(ask(at([machine()]), knee))?.reason).toMatch(/without a machine: leave the machine out/);
  });

  it('is asked for again as it is in force', () => {
    const dose = doseOf(ask(at([machine()])));
    expect(requestOfDose(at([machine()]), dose)).toMatchObject({ machineId: 'press-1' });
  });
});

describe('a load typed for a machine', () => {
  it('is one of its loads, or is refused with the nearest', () => {
    expect(doseOf(ask(at([machine()]), { loadKg: 30 })).loadKg).toBe(30);
    expect(reasonOf(ask(at([machine()]), { loadKg: 32.5 }))?.reason).toBe(
      '32.5 kg cannot be set on Leg press by the window. Type one of its loads, the nearest: 30 kg and 35 kg.',
    );
    expect(doseOf(ask(at([machine({ hasHalfStep: true })]), { loadKg: 32.5 })).loadKg).toBe(32.5);
  });

  it('is held to a limit, at it and not over it, and refused where nothing lies within', () => {
    const under = (limitKg: number) =>
      at([machine()], { limits: [limit({ kind: 'load-limit', joint: 'right-knee', limitKg })] });
    expect(ask(under(30), { loadKg: 30 }).ok).toBe(true);
    expect(ask(under(29.9), { loadKg: 30 }).ok).toBe(false);
    expect(reasonOf(ask(under(9.9)))?.reason).toMatch(
      /No load of Leg press by the window lies within the limit/,
    );
  });

  it('over the band leans on no load in force of another machine', () => {
    const heavy = { ...doseOf(ask(at([machine()]), { loadKg: 35 })), loadKg: 45 };
    const two = [machine(), machine({ id: 'press-2' })];
    expect(ask(at(two, { inForce: [heavy] }), { loadKg: 45, machineId: 'press-1' }).ok).toBe(true);
    expect(ask(at(two, { inForce: [heavy] }), { loadKg: 45, machineId: 'press-2' }).ok).toBe(false);
  });
});

describe('beside a dose on another machine', () => {
  it('no load is compared in percent, and the place is said to have changed', () => {
    const from = doseOf(ask(at([machine()]), { loadKg: 30 }));
    const to = { ...from, loadKg: 40, machine: { id: 'press-2', name: 'Leg press at the wall' } };
    const said = changesFromInForce(from, to).map(({ text }) => text);
    expect(said).toContain('Load: 30 kg → 40 kg (size of the step not known).');
    expect(said).toContain('Where: Leg press by the window → Leg press at the wall, which may ask more.');
  });
});

describe('among the exercises', () => {
  const found = (isAtHome: boolean) =>
    exerciseChoice(known({ context: at([machine()]) }), { words: '', isAtHome }).find(
      ({ exerciseId }) => exerciseId === 'leg-press-machine',
    );

  it('one on a machine may be chosen, and is never among what can be done at home', () => {
    expect(found(false)?.possible).toEqual([{ method: 'low-load', side: 'both' }]);
    expect(found(true)?.possible).toEqual([]);
    expect(found(true)?.notPossible[0]?.reasons).toEqual(['Done on a machine of the clinic, not at home.']);
  });
});
