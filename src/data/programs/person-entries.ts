/** Entries of one person for another program: as they were sent, with what became of them and when. */
import type { Access } from '../access.ts';
import { correctionIndexFor, markRows } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { distanceByVisit } from '../episode/visits.ts';
import {
  decision,
  measurement,
  morning,
  morningJoint,
  sessionJoint,
  setLog,
  trainingSession,
} from '../schema/schema.ts';

const sessions = patientQuery((db) => db.select().from(trainingSession).where(ofPatient(trainingSession)));
const sessionJoints = patientQuery((db) => db.select().from(sessionJoint).where(ofPatient(sessionJoint)));
const sets = patientQuery((db) => db.select().from(setLog).where(ofPatient(setLog)));
const mornings = patientQuery((db) => db.select().from(morning).where(ofPatient(morning)));
const morningJoints = patientQuery((db) => db.select().from(morningJoint).where(ofPatient(morningJoint)));
const measurements = patientQuery((db) => db.select().from(measurement).where(ofPatient(measurement)));
const decisions = patientQuery((db) => db.select().from(decision).where(ofPatient(decision)));

type Sent = {
  readonly id: string;
  readonly entryId: string;
  readonly amends: string | null;
  readonly arrivedAt: number;
};

/** With the entry that replaced each, and the instant at which it or what replaced it arrived. */
const withFate = <R extends Sent>(rows: readonly R[]) => {
  const replaced = new Map(rows.flatMap((row) => (row.amends === null ? [] : [[row.amends, row] as const])));
  return rows.map((row) => {
    const by = replaced.get(row.entryId);
    return { ...row, replacedById: by?.id ?? null, changedAt: Math.max(row.arrivedAt, by?.arrivedAt ?? 0) };
  });
};

const grouped = <R>(rows: readonly R[], keyOf: (row: R) => string): ReadonlyMap<string, readonly R[]> => {
  const groups = new Map<string, R[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group) group.push(row);
    else groups.set(keyOf(row), [row]);
  }
  return groups;
};

export const sessionEntriesOf = async (access: Access, patientId: string) => {
  const joints = grouped(await sessionJoints(access, patientId), ({ sessionId }) => sessionId);
  const logs = grouped(await sets(access, patientId), ({ sessionId }) => sessionId);
  return withFate(await sessions(access, patientId)).map((row) => ({
    ...row,
    joints: joints.get(row.id) ?? [],
    sets: [...(logs.get(row.id) ?? [])].sort((one, other) => one.setNumber - other.setNumber),
  }));
};

export const morningEntriesOf = async (access: Access, patientId: string) => {
  const joints = grouped(await morningJoints(access, patientId), ({ morningId }) => morningId);
  return withFate(await mornings(access, patientId)).map((row) => ({
    ...row,
    joints: joints.get(row.id) ?? [],
  }));
};

type Mark = Awaited<ReturnType<typeof markRows>>[number];

/** When an entry, or what took its place, was last corrected; 0 = never. */
const lastCorrectedAt = (id: string | null, marks: ReadonlyMap<string, Mark>): number => {
  const mark = id === null ? undefined : marks.get(id);
  return mark ? Math.max(mark.correctedAt, lastCorrectedAt(mark.replacedById, marks)) : 0;
};

/** A correction that waits to be looked at takes nothing away yet: until then both entries count. */
export const measurementEntriesOf = async (access: Access, patientId: string) => {
  const index = await correctionIndexFor(access, patientId);
  const marks = new Map((await markRows(access, patientId)).map((mark) => [mark.subjectId, mark]));
  const distances = await distanceByVisit(access, patientId);
  return (await measurements(access, patientId)).map((row) => {
    const mark = index.stateOf(row.id) === 'left-out' ? marks.get(row.id) : undefined;
    return {
      ...row,
      atDistance: (row.visitId === null ? null : distances.get(row.visitId)) ?? null,
      enteredInErrorAt: mark?.correctedAt ?? null,
      replacedById: mark?.replacedById ?? null,
      changedAt: Math.max(
        ...[row.recordedAt, mark?.correctedAt ?? 0, mark?.seenAt ?? 0],
        // Whether it was taken at a distance is what its appointment says.
        lastCorrectedAt(row.visitId, marks),
      ),
    };
  });
};

export const decisionEntriesOf = async (access: Access, patientId: string) =>
  (await decisions(access, patientId)).map((row) => ({ ...row, changedAt: row.evaluatedAt }));
