/** What stands on a machine. Loads worked by hand; that machines have such steps is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { apartKg, type MachineInput, machineLoadsKg, machineRefusals } from '#core/clinic/machine.ts';

const legPress: MachineInput = {
  name: 'Leg press',
  kind: 'leg-press',
  loading: 'stack',
  place: 'Gym',
  firstKg: 10,
  stepKg: 5,
  lastKg: 30,
  hasHalfStep: false,
};

describe('the loads of a machine', () => {
  it('are every step from the first to the last', () => {
    expect(machineLoadsKg(legPress)).toEqual([10, 15, 20, 25, 30]);
    expect(machineLoadsKg({ ...legPress, lastKg: 10 })).toEqual([10]);
  });

  it('have half a step between two of them where it can be added, and none over the last', () => {
    expect(machineLoadsKg({ ...legPress, lastKg: 20, hasHalfStep: true })).toEqual([10, 12.5, 15, 17.5, 20]);
    expect(machineLoadsKg({ ...legPress, lastKg: 10, hasHalfStep: true })).toEqual([10]);
    expect([apartKg(legPress), apartKg({ ...legPress, hasHalfStep: true })]).toEqual([5, 2.5]);
  });

  it('are exact where steps do not add up in doubles', () => {
    expect(machineLoadsKg({ ...legPress, firstKg: 1.1, stepKg: 1.1, lastKg: 3.3 })).toEqual([1.1, 2.2, 3.3]);
  });
});

describe('a machine', () => {
  const refused = (over: Partial<MachineInput>) => machineRefusals({ ...legPress, ...over });

  it('is taken where steps lead to the last load, however many up to 200', () => {
    expect(refused({})).toEqual([]);
    expect(refused({ lastKg: 10 })).toEqual([]);
    expect(refused({ firstKg: 1, stepKg: 1, lastKg: 200 })).toEqual([]);
    expect(refused({ firstKg: 1, stepKg: 1, lastKg: 201 })[0]?.reason).toMatch(
      /more than 200 loads: type a larger/,
    );
  });

  it('is refused where the last load lies under the first or between two steps, with what to type', () => {
    expect(refused({ lastKg: 9.9 })[0]?.reason).toMatch(/lighter than the first, 10 kg: type the heaviest/);
    expect(refused({ lastKg: 32 })).toMatchObject([
      {
        field: 'input.lastKg',
        reason: expect.stringMatching(/from 10 kg to 30 kg and then past 32 kg\. Type/),
      },
    ]);
  });
});
