/** When each patient of a clinic was last screened, in two queries; the same as `newestScreening` says of one. */
import { eq } from 'drizzle-orm';
import { type Day, earlierDay } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { correctionIndexOfClinic } from '../corrections/correction-index.ts';
import { screening } from '../schema/schema.ts';
import { newestOfReadings } from '../screening/screenings.ts';
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
