/** Measurements, each an append-only row. */
import { randomUUID } from 'node:crypto';
import { asc } from 'drizzle-orm';
import type { DistanceWay } from '#core/assessment/measurements/at-distance.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measureOf } from '#core/assessment/measures/registry.ts';
import { asCorrected, type CorrectionIndex, inForce, readings } from '#core/corrections/correction.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Effusion } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { distanceByVisit } from '../episode/visits.ts';
import { effusionTest, measurement } from '../schema/schema.ts';

export type RecordedMeasurement = Measurement & {
  readonly id: string;
  readonly recordedAt: number;
  readonly recordedBy: string;
  readonly confirmed: boolean;
  /** Read from answers the patient gave at home. */
  readonly answeredAtHome: boolean;
  /** The appointment in which it was taken; null = nobody has begun one. */
  readonly visitId: string | null;
  /** null = in person, or nobody has said. */
  readonly atDistance: DistanceWay | null;
};

export const measurementRows = patientQuery((db) =>
  db
    .select()
    .from(measurement)
    .where(ofPatient(measurement))
    .orderBy(asc(measurement.day), asc(measurement.recordedAt)),
);

type MeasurementRow = Awaited<ReturnType<typeof measurementRows>>[number];

const recordedFrom = (
  rows: readonly MeasurementRow[],
  distances: ReadonlyMap<string, DistanceWay>,
): readonly RecordedMeasurement[] =>
  rows.map((row) => ({
    ...row.value,
    id: row.id,
    recordedAt: row.recordedAt,
    recordedBy: row.recordedBy,
    confirmed: row.confirmed,
    answeredAtHome: row.homeAnswersId !== null,
    visitId: row.visitId,
    atDistance: (row.visitId === null ? null : distances.get(row.visitId)) ?? null,
  }));

/** Nobody is asked about appointments where nothing was taken in one. */
const distancesOf = async (
  access: Access,
  patientId: string,
  rows: readonly MeasurementRow[],
): Promise<ReadonlyMap<string, DistanceWay>> =>
  rows.some(({ visitId }) => visitId !== null) ? distanceByVisit(access, patientId) : new Map();

/** All of them as recorded, oldest first, those entered in error as well. */
export const measurementsOnRecord = async (
  access: Access,
  patientId: string,
): Promise<readonly RecordedMeasurement[]> => {
  const rows = await measurementRows(access, patientId);
  return recordedFrom(rows, await distancesOf(access, patientId, rows));
};

/** As corrected; with answers given at home that were struck out goes what was read from them. */
export const standing = <R extends { readonly id: string; readonly homeAnswersId: string | null }>(
  rows: readonly R[],
  index: CorrectionIndex,
): readonly R[] =>
  asCorrected(rows, index).filter(
    ({ homeAnswersId }) => homeAnswersId === null || index.stateOf(homeAnswersId) === 'stands',
  );

/** Oldest first, as corrected. */
export const measurementsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly RecordedMeasurement[]> => {
  const rows = await measurementRows(access, patientId);
  const kept = standing(rows, await correctionIndexFor(access, patientId));
  return recordedFrom(kept, await distancesOf(access, patientId, kept));
};

/** What a dose may rest on: beside the measurements as corrected those whose correction waits, and every reading. */
export const measurementsInForce = async (access: Access, patientId: string) => {
  const rows = await measurementsOnRecord(access, patientId);
  const index = await correctionIndexFor(access, patientId);
  return { counted: inForce(rows, index), readings: readings(rows, index) };
};

interface Origin {
  readonly homeAnswersId?: string | null;
  readonly visitId?: string | null;
}

export const recordMeasurement = (
  access: Access,
  patientId: string,
  row: Measurement,
  confirmed: boolean,
  /** Answers given at home that it is read from, or the appointment in which it was taken. */
  { homeAnswersId = null, visitId = null }: Origin = {},
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(measurement).values({
      id,
      ...recordedFor(access, patientId),
      day: row.day,
      kind: row.kind,
      value: row,
      figure: measureOf(row.kind).figure(row),
      confirmed,
      homeAnswersId,
      visitId,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'measurement', { subjectId: id, patientId, detail: { kind: row.kind } });
    return id;
  });

export const recordEffusion = (
  access: Access,
  patientId: string,
  joint: Joint,
  grade: Effusion,
  day: Day = access.day,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(effusionTest).values({
      id,
      ...recordedFor(access, patientId),
      joint,
      grade,
      day,
    });
    await auditWrite(tx, access, 'effusion-test', { subjectId: id, patientId, detail: { joint } });
    return id;
  });
