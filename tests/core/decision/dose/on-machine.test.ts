/** Steps, cuts and the way back on a machine. Worked by hand; the cap is the step of 10 % a load may take. */
import { describe, expect, it } from 'vitest';
import type { ClinicMachine } from '#core/clinic/machine.ts';
import { shareOf } from '#core/decision/dose/volume.ts';
import { machineReason } from '#core/plan/machine-gone.ts';
import { withinLimits } from '#core/plan/within-limits.ts';
import { changesForClinician } from '#core/prescribing/changes-in-words.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { goneFromMachine, loadsFor } from '#core/prescribing/loads-at-place.ts';
import { addDays } from '#core/time/day.ts';
import { daysAgo, propose, today } from '../propose.ts';
import { kneeDose, record, version } from '../small-record.ts';

const press: ClinicMachine = {
  id: 'press-1',
  version: 1,
  isRetired: false,
  name: 'Leg press',
  kind: 'leg-press',
  loading: 'stack',
  place: 'Gym',
  firstKg: 10,
  stepKg: 5,
  lastKg: 100,
  hasHalfStep: false,
};
const onPress: LowLoadDose = {
  ...kneeDose,
  exerciseId: 'leg-press-machine-one-leg',
  machine: { id: 'press-1', name: 'Leg press' },
  oneRepMaxKg: 200,
};

/** At the top of its band and with the most sets, so that only the load is left to step. */
const atTop = (loadKg: number): LowLoadDose => ({
  ...onPress,
  loadKg,
  sets: 4,
  repetitions: { low: 20, high: 20 },
});

const stepFrom = (loadKg: number, machine: ClinicMachine, sets = 4) => {
  const history = [version({ dose: { ...atTop(loadKg), sets }, signedAt: daysAgo(40) })];
  const plain = record();
  const [current] = history;
  return propose({
    decision: 'progress',
    history,
    more: {
      record: record({
        machines: [machine],
        prescriptions: history,
        sessions: plain.sessions.map((one) => ({
          ...one,
          sets: one.sets.map((set) => ({ ...set, itemId: 'knee', prescriptionId: current!.id })),
        })),
      }),
    },
  });
};

describe('the next load of a machine', () => {
  it('is taken under and at the cap of 10 %, from the loads of the machine and not from those at home', () => {
    expect(stepFrom(55, press)).toMatchObject({ kind: 'step', dose: { loadKg: 60 } });
    expect(stepFrom(50, press)).toMatchObject({ kind: 'step', dose: { loadKg: 55 }, withheld: null });
  });

  it('over the cap is not stepped to, and why is said', () => {
    const proposal = stepFrom(45, press);
    expect(proposal).toMatchObject({
      kind: 'same',
      dose: { loadKg: 45 },
      withheld: 'machine-step',
      effect: 'repeat',
    });
    expect(changesForClinician(proposal).join(' ')).toMatch(/next load of the machine is a larger step than/);
  });

  it('over the cap leaves one more set, as at home', () => {
    expect(stepFrom(45, press, 3)).toMatchObject({ kind: 'step', dose: { loadKg: 45, sets: 4 } });
  });

  it('is half a step where that can be added, and then within the cap', () => {
    expect(stepFrom(45, { ...press, hasHalfStep: true })).toMatchObject({
      kind: 'step',
      dose: { loadKg: 47.5 },
    });
  });

  it('is none on a machine that is retired', () => {
    const proposal = stepFrom(50, { ...press, isRetired: true });
    expect(proposal).toMatchObject({
      kind: 'same',
      dose: { loadKg: 50 },
      worklist: ['nothing-left-to-step'],
    });
  });

  it('at home goes on as before where it is over the cap: by name, waiting for a signature', () => {
    const atHome = { ...kneeDose, sets: 4, loadKg: 8, repetitions: { low: 20, high: 20 } };
    const history = [version({ dose: atHome, signedAt: daysAgo(40) })];
    expect(propose({ decision: 'progress', history, owned: [8, 9] })).toMatchObject({
      kind: 'step',
      effect: 'awaits-signature',
      named: ['over-ten-percent', 'repetitions-start-again'],
    });
  });
});

describe('a dose on a machine', () => {
  it('is lowered to a limit along the loads of the machine', () => {
    const limits = [
      {
        joint: 'left-knee',
        kind: 'load-limit',
        limitKg: 33,
        from: addDays(today, -3),
        to: null,
        author: 'surgeon',
      } as const,
    ];
    const dose = atTop(50);
    const loads = { ownedLoadsKg: [8, 32], machines: [press] };
    const found = withinLimits({ dose, badDay: { ...dose, sets: 1 } }, limits, loads, today);
    expect(found.dose).toBe(null);
    expect(found.easierSession).toMatchObject({ loadKg: 30, machine: { id: 'press-1' } });
  });

  it('is no share of one on another machine or at home', () => {
    const other = { ...onPress, machine: { id: 'press-2', name: 'Other' } };
    expect(shareOf(onPress, { ...onPress, loadKg: 20 })).toBe(0.5);
    expect(shareOf(onPress, other)).toBe(null);
    expect(shareOf(onPress, kneeDose)).toBe(null);
  });

  it('finds its loads on the machine, and none once it is retired or unknown', () => {
    const loads = { ownedLoadsKg: [1, 2], machines: [{ ...press, lastKg: 20 }] };
    expect(loadsFor(loads, onPress)).toEqual([10, 15, 20]);
    expect(loadsFor(loads, kneeDose)).toEqual([1, 2]);
    expect(loadsFor({ ...loads, machines: [] }, onPress)).toEqual([]);
  });

  it('finds none on a machine of another kind than its exercise is done on', () => {
    const machines = [{ ...press, kind: 'knee-extension' } as const];
    expect(loadsFor({ ownedLoadsKg: [], machines }, onPress)).toEqual([]);
    const extension = { ...onPress, exerciseId: 'knee-extension-machine' };
    expect(loadsFor({ ownedLoadsKg: [], machines }, extension)).toHaveLength(19);
  });

  it('is known to be gone where its machine is retired, or its load can no longer be set', () => {
    const gone = (machine: ClinicMachine) =>
      goneFromMachine({ ownedLoadsKg: [], machines: [machine] }, onPress);
    expect(gone(press)).toBe(null);
    expect(gone({ ...press, isRetired: true })).toBe('retired');
    expect(gone({ ...press, firstKg: 15 })).toBe('no-such-load');
    expect(goneFromMachine({ ownedLoadsKg: [] }, kneeDose)).toBe(null);
  });

  it('rests where only its easier session can no longer be set', () => {
    const reasonOf = (easierKg: number) =>
      machineReason(
        { ownedLoadsKg: [easierKg], machines: [press] },
        { dose: onPress, badDay: { ...onPress, loadKg: easierKg } },
      );
    expect(reasonOf(10)).toBe(null);
    const gone = {
      version: 1,
      since: 0,
      code: 'machine-load-gone',
      today: 'rest-this-joint',
      machine: 'Leg press',
    };
    expect(reasonOf(9)).toEqual(gone);
  });
});
