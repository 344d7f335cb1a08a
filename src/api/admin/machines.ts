/** The clinic's machines: entered, corrected by a later entry, retired and brought back. Nothing is deleted. */
import { z } from 'zod';
import { type MachineInput, machineFields, machineRefusals } from '#core/clinic/machine.ts';
import type { Access } from '#data/access.ts';
import { type MachineEntry, machineEntries, machinesOf, writeMachine } from '#data/clinic/machines.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { madeId, nothing } from '../outputs.ts';
import { administratorProcedure, router } from '../trpc.ts';

const readMachine = (value: unknown): MachineInput => checked(machineFields, value, machineRefusals);

const meanwhile = 'Somebody changed this machine meanwhile. Reload the page; what you typed is not saved.';

/** Signed doses name the machine, and each is of an exercise on one kind. */
const requireSameKind = ({ kind }: MachineInput, replaces: MachineEntry): void => {
  if (kind !== replaces.kind)
    throw new Problem(
      'refused',
      'The kind of a machine stays as it was entered, since doses may name it. Retire it and add a new one.',
    );
};

const machineWith = async (access: Access, machineId: string, seen: number): Promise<MachineEntry> => {
  const found = (await machinesOf(access)).find(({ id }) => id === machineId);
  if (!found) throw new Problem('not-found', 'There is no such machine in your clinic.');
  if (found.version !== seen) throw new Problem('conflict', meanwhile);
  return found;
};

/** `seen`: the version that the page showed. */
const one = z.object({ machineId: z.string().min(1).max(64), seen: z.number().int().min(1) });

const retiring = (isRetired: boolean) =>
  administratorProcedure
    .input(one)
    .output(nothing)
    .mutation(({ ctx: { access }, input }) =>
      access.store.write(async () => {
        const replaces = await machineWith(access, input.machineId, input.seen);
        if (replaces.isRetired === isRetired)
          throw new Problem('conflict', isRetired ? 'It is retired already.' : 'It is in use already.');
        await writeMachine(access, { row: replaces, isRetired, replaces });
      }),
    );

export const machinesRouter = router({
  /** Each with the entries it was written by, oldest first. */
  list: administratorProcedure.query(async ({ ctx: { access } }) => {
    const entries = await machineEntries(access);
    return (await machinesOf(access)).map((machine) => ({
      ...machine,
      earlier: entries.filter(({ id, version }) => id === machine.id && version < machine.version),
    }));
  }),

  add: administratorProcedure
    .input(z.object({ machine: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) =>
      writeMachine(ctx.access, { row: readMachine(input.machine), isRetired: false, replaces: null }),
    ),

  correct: administratorProcedure
    .input(one.extend({ machine: z.unknown() }))
    .output(nothing)
    .mutation(({ ctx: { access }, input }) => {
      const row = readMachine(input.machine);
      return access.store.write(async () => {
        const replaces = await machineWith(access, input.machineId, input.seen);
        requireSameKind(row, replaces);
        await writeMachine(access, { row, isRetired: replaces.isRetired, replaces });
      });
    }),

  retire: retiring(true),
  bringBack: retiring(false),
});
