/**
 * Two records of one person, one of them shown. Nothing is copied, so whoever judges the person asks here
 * for the other record as well; until a clinician has chosen whose plan stays, nothing new is signed.
 */
import { and, asc, eq, type SQL, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { ofClinic, ofPatient, patientQuery } from '../database/prepared.ts';
import { patientIdentity, patientMerge } from '../schema/schema.ts';

interface Merge {
  /** Record that is marked merged. */
  readonly patientId: string;
  /** Record that is shown. */
  readonly intoId: string;
  readonly reason: string;
  readonly byName: string;
  readonly recordedAt: number;
  /** Record whose prescriptions stay in force; null until a clinician has chosen. */
  readonly keptId: string | null;
}

type Row = typeof patientMerge.$inferSelect;

/** What holds of rows in the order they were recorded. */
const inForce = (rows: readonly Row[]): readonly Merge[] => {
  const merges = new Map<string, Merge>();
  for (const { patientId, intoId, act, keptId, reason, byName, recordedAt } of rows) {
    const known = merges.get(patientId);
    if (act === 'merged') merges.set(patientId, { patientId, intoId, reason, byName, recordedAt, keptId });
    else if (act === 'undone') merges.delete(patientId);
    else if (known) merges.set(patientId, { ...known, keptId });
  }
  return [...merges.values()];
};

const oldestFirst = [asc(patientMerge.patientId), asc(patientMerge.version)];

export const mergeRows = patientQuery((db) =>
  db
    .select()
    .from(patientMerge)
    .where(ofPatient(patientMerge))
    .orderBy(...oldestFirst),
);

export const mergeRowsInto = patientQuery((db) =>
  db
    .select()
    .from(patientMerge)
    .where(and(ofClinic(patientMerge), eq(patientMerge.intoId, sql.placeholder('patientId'))))
    .orderBy(...oldestFirst),
);

export interface Merges {
  /** Set where this record is not the one shown. */
  readonly mergedInto: Merge | null;
  /** Every merge of the person, this record among them. */
  readonly merges: readonly Merge[];
  /** True until a clinician has chosen whose prescriptions stay in force. */
  readonly isPlanOpen: boolean;
}

export const mergesOf = async (access: Access, patientId: string): Promise<Merges> => {
  const mergedInto = inForce(await mergeRows(access, patientId))[0] ?? null;
  const merges = inForce(await mergeRowsInto(access, mergedInto?.intoId ?? patientId));
  return { mergedInto, merges, isPlanOpen: merges.some(({ keptId }) => keptId === null) };
};

/** Ids of the person's other records; empty for almost everybody. */
export const mergedWith = async (access: Access, patientId: string): Promise<readonly string[]> => {
  const { merges } = await mergesOf(access, patientId);
  const ids = merges.flatMap((merge) => [merge.patientId, merge.intoId]);
  return [...new Set(ids)].filter((id) => id !== patientId);
};

export type SigningStopped = 'plan-not-chosen' | 'plan-elsewhere';

/** Why nothing new is signed on this record; null where it may be. */
export const signingStopped = async (access: Access, patientId: string): Promise<SigningStopped | null> => {
  const { merges, isPlanOpen } = await mergesOf(access, patientId);
  if (isPlanOpen) return 'plan-not-chosen';
  return merges.some(({ keptId }) => keptId !== patientId) ? 'plan-elsewhere' : null;
};

/** For a query over identities: leaves out records that are marked merged. */
export const isShown = (): SQL =>
  sql`coalesce((SELECT m.act FROM ${patientMerge} AS m WHERE m.patient_id = ${patientIdentity.patientId} ORDER BY m.version DESC LIMIT 1), 'undone') = 'undone'`;

/** The record shown for each record of the clinic that is marked merged. */
export const shownInstead = async (access: Access): Promise<ReadonlyMap<string, string>> => {
  const rows = await access.store.read
    .select()
    .from(patientMerge)
    .where(eq(patientMerge.clinicId, access.clinicId))
    .orderBy(asc(patientMerge.patientId), asc(patientMerge.version));
  return new Map(inForce(rows).map(({ patientId, intoId }) => [patientId, intoId]));
};
