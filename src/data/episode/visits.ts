/** Appointments: where they happen, who is present, and where to ring back. */
import { asc, sql } from 'drizzle-orm';
import type { DistanceWay } from '#core/assessment/measurements/at-distance.ts';
import { asCorrected } from '#core/corrections/correction.ts';
import { isRemote, type VisitPlace } from '#core/episode/remote-visit.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { visit } from '../schema/schema.ts';
import { writtenNow } from './episodes.ts';

export interface Visit {
  readonly place: VisitPlace;
  readonly whereabouts: string | null;
  readonly callBackPhone: string | null;
  readonly present: readonly string[];
}

export type RecordedVisit = Visit & {
  readonly id: string;
  readonly day: Day;
  readonly recordedAt: number;
  readonly heldBy: string;
  readonly heldName: string;
};

const visitRows = patientQuery((db) =>
  db.select().from(visit).where(ofPatient(visit)).orderBy(asc(visit.recordedAt), asc(sql`rowid`)),
);

/** Oldest first, those entered in error as well. */
export const visitsOnRecord = async (access: Access, patientId: string): Promise<readonly RecordedVisit[]> =>
  (await visitRows(access, patientId)).map(
    ({ clinicId: _clinic, patientId: _patient, recordedBy: _by, byName: _name, ...row }) => row,
  );

/** As corrected, by when each was begun, newest first. */
export const visitsOf = async (access: Access, patientId: string): Promise<readonly RecordedVisit[]> => {
  const index = await correctionIndexFor(access, patientId);
  return asCorrected(await visitsOnRecord(access, patientId), index)
    .map((row) => ({ ...row, recordedAt: index.saidAt(row) }))
    .toReversed()
    .toSorted((one, other) => other.recordedAt - one.recordedAt);
};

/** The caller's own appointment with the patient today: the newest one begun. */
export const visitNow = async (access: Access, patientId: string): Promise<RecordedVisit | null> =>
  (await visitsOf(access, patientId)).find(
    ({ heldBy, day }) => heldBy === access.actorId && day === access.day,
  ) ?? null;

/** In which appointment something was measured: what is of an earlier day was not taken in the one of now. */
export const visitOfMeasuring = async (
  access: Access,
  patientId: string,
  day: Day,
): Promise<string | null> => (day === access.day ? ((await visitNow(access, patientId))?.id ?? null) : null);

/** The appointments at a distance, each by every id it was entered under. */
export const distanceByVisit = async (
  access: Access,
  patientId: string,
): Promise<ReadonlyMap<string, DistanceWay>> => {
  const { standsAs } = await correctionIndexFor(access, patientId);
  const places = new Map((await visitsOnRecord(access, patientId)).map(({ id, place }) => [id, place]));
  return new Map(
    [...places.keys()].flatMap((id) => {
      const place = places.get(standsAs(id) ?? '');
      return place && isRemote(place) ? [[id, place] as const] : [];
    }),
  );
};

/** `instead`: the entry it takes the place of; whose appointment it is stays. */
export const beginVisit = (
  access: Access,
  patientId: string,
  row: Visit,
  instead: Pick<RecordedVisit, 'day' | 'heldBy' | 'heldName'> | null = null,
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    const { day, heldBy, heldName } = instead ?? {
      ...{ day: access.day, heldBy: access.actorId, heldName: access.actorName },
    };
    await tx.insert(visit).values({ ...now, day, heldBy, heldName, ...row });
    await auditWrite(tx, access, 'visit', {
      subjectId: now.id,
      patientId,
      detail: { place: row.place, present: row.present.length },
    });
    return now.id;
  });
