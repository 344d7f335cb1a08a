/** Protocols after surgery or injury: written, stepped and ended; what binds of them is found by the core. */
import { asc, eq } from 'drizzle-orm';
import { ended, type PhaseStep, type Protocol } from '#core/episode/protocol/protocol.ts';
import type { PhaseRow } from '#core/episode/protocol/protocol-fields.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { daysBetween } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { protocol, protocolPhase, protocolStep } from '../schema/protocols.ts';
import { writtenAfter, writtenNow } from './episodes.ts';

export const protocolRows = patientQuery((db) =>
  db.select().from(protocol).where(ofPatient(protocol)).orderBy(asc(protocol.recordedAt), asc(protocol.id)),
);

export const protocolPhaseRows = patientQuery((db) =>
  db
    .select()
    .from(protocolPhase)
    .where(ofPatient(protocolPhase))
    .orderBy(asc(protocolPhase.recordedAt), asc(protocolPhase.id)),
);

export const protocolStepRows = patientQuery((db) =>
  db
    .select()
    .from(protocolStep)
    .where(ofPatient(protocolStep))
    .orderBy(asc(protocolStep.recordedAt), asc(protocolStep.id)),
);

type ProtocolRow = typeof protocol.$inferSelect;
type RowOfPhase = typeof protocolPhase.$inferSelect;
type RowOfStep = typeof protocolStep.$inferSelect;

/** Protocols from their rows; rows come oldest first. */
const protocolsFrom = (
  rows: readonly ProtocolRow[],
  phases: readonly RowOfPhase[],
  steps: readonly RowOfStep[],
): readonly Protocol[] =>
  rows.map(({ id, joint, procedure, on, author, letter }) => ({
    id,
    joint: joint as Joint,
    procedure,
    on,
    author,
    letter,
    phases: phases
      .filter((phase) => phase.protocolId === id)
      .map(
        ({ id: _id, clinicId: _clinic, patientId: _patient, recordedBy: _by, byName: _name, ...phase }) =>
          phase,
      ),
    steps: steps
      .filter((step) => step.protocolId === id)
      .map(({ place, on: day, recordedAt, byName, seen }) => ({
        place,
        on: day,
        at: recordedAt,
        by: byName,
        seen,
      })),
  }));

export const protocolsOf = async (access: Access, patientId: string): Promise<readonly Protocol[]> => {
  const rows = await protocolRows(access, patientId);
  if (rows.length === 0) return [];
  return protocolsFrom(
    rows,
    await protocolPhaseRows(access, patientId),
    await protocolStepRows(access, patientId),
  );
};

/** Those of every patient of the clinic, in three statements. */
export const protocolsOfClinic = async ({ clinicId, store: { read } }: Access) => {
  const rows = await read
    .select()
    .from(protocol)
    .where(eq(protocol.clinicId, clinicId))
    .orderBy(asc(protocol.recordedAt), asc(protocol.id));
  const phases = await read
    .select()
    .from(protocolPhase)
    .where(eq(protocolPhase.clinicId, clinicId))
    .orderBy(asc(protocolPhase.recordedAt), asc(protocolPhase.id));
  const steps = await read
    .select()
    .from(protocolStep)
    .where(eq(protocolStep.clinicId, clinicId))
    .orderBy(asc(protocolStep.recordedAt), asc(protocolStep.id));
  const all = protocolsFrom(rows, phases, steps);
  const byOwner = new Map<string, Protocol[]>();
  for (const [index, { patientId }] of rows.entries())
    byOwner.set(patientId, [...(byOwner.get(patientId) ?? []), all[index]!]);
  return (patientId: string): readonly Protocol[] => byOwner.get(patientId) ?? [];
};

type NewProtocol = Omit<Protocol, 'id' | 'phases' | 'steps'>;

export const beginProtocol = (access: Access, patientId: string, row: NewProtocol): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(protocol).values({ ...now, ...row });
    changed(access, patientId);
    await auditWrite(tx, access, 'protocol', { subjectId: now.id, patientId, detail: { joint: row.joint } });
    return now.id;
  });

/** Which phase holds is told by the order in which all of it was written. */
const instantsOf = ({ phases, steps }: Protocol): readonly number[] => [
  ...phases.map(({ recordedAt }) => recordedAt),
  ...steps.map(({ at }) => at),
];

/** A first phase whose day has come begins with its writing: nothing is opened by it. */
const beginsAtOnce = ({ steps }: Protocol, { place, from }: PhaseRow, access: Access): boolean =>
  place === 1 && steps.length === 0 && daysBetween(from, access.day) >= 0;

export const stepProtocol = (
  access: Access,
  patientId: string,
  of: Protocol,
  { place, seen }: Pick<PhaseStep, 'place' | 'seen'>,
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenAfter(access, patientId, instantsOf(of));
    await tx.insert(protocolStep).values({ ...now, protocolId: of.id, place, on: access.day, seen });
    changed(access, patientId);
    await auditWrite(tx, access, place === ended ? 'protocol-end' : 'protocol-step', {
      subjectId: of.id,
      patientId,
      detail: { place },
    });
    return now.id;
  });

export const writePhase = (access: Access, patientId: string, of: Protocol, row: PhaseRow): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenAfter(access, patientId, instantsOf(of));
    await tx.insert(protocolPhase).values({
      ...now,
      protocolId: of.id,
      ...row,
      bearKg: row.bearKg ?? null,
      recordedOn: access.day,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'protocol-phase', {
      subjectId: of.id,
      patientId,
      detail: { place: row.place, weightBearing: row.weightBearing },
    });
    if (beginsAtOnce(of, row, access))
      await stepProtocol(access, patientId, of, { place: row.place, seen: 'Began with its writing.' });
    return now.id;
  });

/** Both or neither: what holds may be looser at once, so it holds by a step that says what was seen. */
export const rewritePhaseInForce = (
  access: Access,
  patientId: string,
  of: Protocol,
  row: PhaseRow,
  seen: string,
): Promise<string> =>
  access.store.write(async () => {
    const id = await writePhase(access, patientId, of, row);
    const written = (await protocolsOf(access, patientId)).find((one) => one.id === of.id);
    if (written) await stepProtocol(access, patientId, written, { place: row.place, seen });
    return id;
  });
