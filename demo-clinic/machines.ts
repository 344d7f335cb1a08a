/** The machines of the demo clinic; names, places and steps are invented. */
import type { MachineInput } from '#core/clinic/machine.ts';
import type { Access } from '#data/access.ts';
import { writeMachine } from '#data/clinic/machines.ts';

/** By the id they keep in every load. */
const machines: Readonly<Record<string, MachineInput>> = {
  'demo-leg-press': {
    ...{ name: 'Leg press', kind: 'leg-press', loading: 'stack', place: 'Training room, by the window' },
    ...{ firstKg: 10, stepKg: 5, lastKg: 150, hasHalfStep: true },
  },
  'demo-cable': {
    ...{ name: 'Cable column', kind: 'cable', loading: 'stack', place: 'Training room, back wall' },
    ...{ firstKg: 2.5, stepKg: 2.5, lastKg: 50, hasHalfStep: false },
  },
  'demo-chest-press': {
    ...{ name: 'Chest press', kind: 'chest-press', loading: 'lever', place: 'Training room, back wall' },
    ...{ firstKg: 5, stepKg: 2.5, lastKg: 60, hasHalfStep: false },
  },
};

export const writeMachines = async (access: Access): Promise<void> => {
  for (const [id, row] of Object.entries(machines))
    await writeMachine(access, { row, isRetired: false, replaces: null }, id);
};
