/** When each patient of a clinic was last screened, in two queries; the same as `newestScreening` says of one. */
import { and, eq, inArray } from 'drizzle-orm';
import type { CorrectionIndex } from '#core/corrections/correction.ts';
import { treatmentKinds } from '#core/episode/care-event.ts';
import { type Day, earlierDay } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { correctionIndexOfClinic } from '../corrections/correction-index.ts';
import { careEvent, screening } from '../schema/schema.ts';
import { newestOfReadings, type RecordedScreening, strictestOf } from '../screening/screenings.ts';
import { byPatient } from './worklist-newest.ts';

export interface LastAsked {
  readonly day: Day;
  readonly recordedAt: number;
}

/** While a correction waits, the earlier of both; none where one reading leaves none. */
const earliest = (all: readonly (LastAsked | null)[]): LastAsked | null =>
  all.reduce((one, other) =>
    one && other
      ? {
          day: earlierDay(one.day, other.day),
          recordedAt: Math.min(one.recordedAt, other.recordedAt),
        }
      : null,
  );

/** By patient id; those never screened are left out. */
export const lastAskedOfClinic = async (access: Access): Promise<ReadonlyMap<string, LastAsked>> => {
  const index = await correctionIndexOfClinic(access);
  const rows = await access.store.read
    .select({
      id: screening.id,
      patientId: screening.patientId,
      version: screening.version,
      day: screening.day,
      recordedAt: screening.recordedAt,
    })
    .from(screening)
    .where(eq(screening.clinicId, access.clinicId));
  return new Map(
    [...byPatient(rows)].flatMap(([patientId, own]) => {
      const last = earliest(newestOfReadings(own, index));
      return last ? [[patientId, { day: last.day, recordedAt: last.recordedAt }] as const] : [];
    }),
  );
};

/**
 * With its answers, by patient id, where treatment has changed: some of its kinds ask single questions again.
 * The answers of everybody else are not read.
 */
export const screeningsBesideTreatment = async (
  access: Access,
  index: CorrectionIndex,
): Promise<ReadonlyMap<string, RecordedScreening>> => {
  const { read } = access.store;
  const treated = read
    .select({ patientId: careEvent.patientId })
    .from(careEvent)
    .where(and(eq(careEvent.clinicId, access.clinicId), inArray(careEvent.kind, [...treatmentKinds])));
  const rows = await read
    .select()
    .from(screening)
    .where(and(eq(screening.clinicId, access.clinicId), inArray(screening.patientId, treated)));
  return new Map(
    [...byPatient(rows)].flatMap(([patientId, own]) => {
      const newest = strictestOf(newestOfReadings(own, index));
      return newest ? [[patientId, newest] as const] : [];
    }),
  );
};
