/** Machines of the clinic: the entry that counts of each, and those it stands in the place of. */
import { randomUUID } from 'node:crypto';
import { asc } from 'drizzle-orm';
import type { ClinicMachine, MachineInput } from '#core/clinic/machine.ts';
import { type Access, knownBy } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { clinicChanged } from '../changed.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { clinicMachine } from '../schema/schema.ts';

/** One after the other, so that the last of a machine counts. */
export const machineRows = prepared((db) =>
  db
    .select({
      id: clinicMachine.machineId,
      version: clinicMachine.version,
      name: clinicMachine.name,
      kind: clinicMachine.kind,
      loading: clinicMachine.loading,
      place: clinicMachine.place,
      firstKg: clinicMachine.firstKg,
      stepKg: clinicMachine.stepKg,
      lastKg: clinicMachine.lastKg,
      hasHalfStep: clinicMachine.hasHalfStep,
      isRetired: clinicMachine.isRetired,
      writtenAt: clinicMachine.recordedAt,
      writtenBy: clinicMachine.byName,
    })
    .from(clinicMachine)
    .where(ofClinic(clinicMachine))
    .orderBy(asc(clinicMachine.name), asc(clinicMachine.version)),
);

export interface MachineEntry extends ClinicMachine {
  readonly writtenAt: number;
  readonly writtenBy: string;
}

/** Oldest version first. */
export const machineEntries = (
  access: Pick<Access, 'store' | 'clinicId'>,
): Promise<readonly MachineEntry[]> => machineRows(access.store.read, { clinicId: access.clinicId });

/** The entry that counts of each, or counted then, retired ones among them, by name. */
export const machinesOf = async (
  access: Pick<Access, 'store' | 'clinicId' | 'knownAt'>,
): Promise<readonly MachineEntry[]> => {
  const newest = new Map<string, MachineEntry>();
  const known = knownBy<MachineEntry>(access, ({ writtenAt }) => writtenAt)(await machineEntries(access));
  for (const entry of known) {
    if (entry.version > (newest.get(entry.id)?.version ?? 0)) newest.set(entry.id, entry);
  }
  return [...newest.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
};

interface Written {
  readonly row: MachineInput;
  readonly isRetired: boolean;
  /** Stands in the place of this one; null = a new machine. */
  readonly replaces: ClinicMachine | null;
}

/** Doses of every patient of the clinic rest on what stands on its machines. */
export const writeMachine = (
  access: Access,
  { row, isRetired, replaces }: Written,
  id = randomUUID() as string,
): Promise<string> =>
  access.store.write(async (tx) => {
    const machineId = replaces?.id ?? id;
    const version = (replaces?.version ?? 0) + 1;
    const { name, kind, loading, place, firstKg, stepKg, lastKg, hasHalfStep } = row;
    await tx.insert(clinicMachine).values({
      ...{ id, machineId, version, clinicId: access.clinicId },
      ...{ name, kind, loading, place, firstKg, stepKg, lastKg, hasHalfStep, isRetired },
      recordedAt: access.now,
      recordedBy: access.actorId,
      byName: access.actorName,
    });
    await auditWrite(tx, access, 'clinic-machine', { subjectId: machineId, detail: { version } });
    clinicChanged(access);
    return machineId;
  });
