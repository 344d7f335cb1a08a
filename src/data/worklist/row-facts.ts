/** What a row of the worklist shows beside its items: doses to sign, and the message. */
import { and, sql } from 'drizzle-orm';
import { dosesBeside } from '#core/prescribing/beside.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { daysPlanned } from '#core/prescribing/programme/days-planned.ts';
import type { Programme } from '#core/prescribing/programme/planned-sessions.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { inForce, type Prescription, prescriptionsOfEach, unsigned } from '../prescribing/prescriptions.ts';
import { programmesOfEach } from '../prescribing/programmes.ts';
import { patientMessage } from '../schema/schema.ts';

export interface WaitingDose {
  readonly waiting: Prescription;
  /** What it takes the place of; null for an exercise that is new. */
  readonly inForce: Prescription | null;
  /** The same exercise in force otherwise, which stays. */
  readonly beside: readonly Dose[];
  /** Days the planned week gives its line; null = no week was planned. */
  readonly plannedDays: number | null;
}

const dosesFrom = (
  rows: readonly Prescription[],
  programmes: readonly Programme[],
  day: Day,
): readonly WaitingDose[] => {
  const now = inForce(rows);
  return unsigned(rows).map((waiting) => ({
    waiting,
    inForce: now.find(({ itemId }) => itemId === waiting.itemId) ?? null,
    beside: dosesBeside(waiting.dose, waiting.itemId, now),
    plannedDays: daysPlanned(programmes, day, waiting.itemId),
  }));
};

/** Doses that wait for a signature, by patient. */
export const waitingDosesOf = async (
  access: Access,
  ids: readonly string[],
): Promise<ReadonlyMap<string, readonly WaitingDose[]>> => {
  const found = await prescriptionsOfEach(access, ids);
  const programmes = await programmesOfEach(access, ids);
  return new Map(
    [...found].map(([patientId, rows]) => [
      patientId,
      dosesFrom(rows, programmes.get(patientId) ?? [], access.day),
    ]),
  );
};

const newestMessages = prepared((db) =>
  db
    .select({ patientId: patientMessage.patientId, text: patientMessage.text })
    .from(patientMessage)
    .where(
      and(
        ofClinic(patientMessage),
        sql`${patientMessage.patientId} IN (SELECT value FROM json_each(${sql.placeholder('ids')}))`,
      ),
    )
    .orderBy(patientMessage.recordedAt, patientMessage.id),
);

/** The newest message of each of these patients, in one query. */
export const newestMessagesOf = async (
  { store, clinicId }: Access,
  ids: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  const rows = await newestMessages(store.read, { clinicId, ids: JSON.stringify(ids) });
  return new Map(rows.map(({ patientId, text }) => [patientId, text]));
};
