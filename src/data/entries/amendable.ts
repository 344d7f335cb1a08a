/** Whether the patient may still change an answer that was sent. */
import { and, eq, or, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { clinicOf } from '../patients/people.ts';
import { morning, trainingSession, twoHours } from '../schema/schema.ts';

const tables = { session: trainingSession, morning, 'two-hours': twoHours } as const;
type Kind = keyof typeof tables;

/** The amended entry, whatever amends it, and the amending one where it is here already. */
const rowsOf = (table: (typeof tables)[Kind]) =>
  patientQuery((db) =>
    db
      .select({ entryId: table.entryId, amends: table.amends, arrivedAt: table.arrivedAt })
      .from(table)
      .where(
        and(
          ofPatient(table),
          or(
            eq(table.entryId, sql.placeholder('amends')),
            eq(table.amends, sql.placeholder('amends')),
            eq(table.entryId, sql.placeholder('entryId')),
          ),
        ),
      ),
  );
const queries = {
  session: rowsOf(trainingSession),
  morning: rowsOf(morning),
  'two-hours': rowsOf(twoHours),
} as const;

interface Amending {
  readonly entryId: string;
  readonly amends: string;
}

/**
 * null when it may be taken: it was sent on this civil day of the clinic and nobody has changed it since, or
 * the change itself is here already and is only sent again.
 */
export const whyNotAmended = async (
  access: Access,
  patientId: string,
  kind: Kind,
  { entryId, amends }: Amending,
): Promise<'another-day' | 'not-found' | 'changed-already' | null> => {
  const rows = await queries[kind](access, patientId, { entryId, amends });
  if (rows.some((row) => row.entryId === entryId)) return null;
  const sent = rows.find((row) => row.entryId === amends);
  if (!sent) return 'not-found';
  if (rows.some((row) => row.amends === amends)) return 'changed-already';
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  return dayAt(sent.arrivedAt, zone) === access.day ? null : 'another-day';
};
