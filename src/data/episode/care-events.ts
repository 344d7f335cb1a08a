/** Things that happened and may blunt a score, open a review or close a method. */
import { randomUUID } from 'node:crypto';
import { asc, eq } from 'drizzle-orm';
import { type Counted, inForce } from '#core/corrections/correction.ts';
import type { CareEvent } from '#core/episode/care-event.ts';
import type { RecordedEvent } from '#core/episode/event-effects.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { type Access, knownBy } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { careEvent, medicineChange } from '../schema/schema.ts';

export const eventRows = patientQuery((db) =>
  db
    .select()
    .from(careEvent)
    .leftJoin(medicineChange, eq(medicineChange.eventId, careEvent.id))
    .where(ofPatient(careEvent))
    .orderBy(asc(careEvent.day), asc(careEvent.recordedAt)),
);

/** All of them as recorded, those entered in error as well. */
export const eventsOnRecord = async (
  access: Access,
  patientId: string,
): Promise<readonly RecordedEvent[]> => {
  const rows = await eventRows(access, patientId);
  const known = knownBy<(typeof rows)[number]>(access, (row) => row.care_event.recordedAt);
  return known(rows).map(({ care_event: row, medicine_change: medicine }) => ({
    id: row.id,
    day: row.day,
    kind: row.kind,
    joint: row.joint as Joint | null,
    lastDay: row.lastDay,
    courseForm: row.courseForm,
    remark: row.remark,
    recordedAt: row.recordedAt,
    medicine: medicine && { act: medicine.act, medicineClass: medicine.medicineClass },
  }));
};

/** What counts now; of an entry and the one it corrects both, until the new plan was seen. */
export const eventsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly Counted<RecordedEvent>[]> =>
  inForce(await eventsOnRecord(access, patientId), await correctionIndexFor(access, patientId));

export type NewEvent = CareEvent & {
  readonly remark: string | null;
  readonly medicine?: RecordedEvent['medicine'];
  readonly courseForm?: RecordedEvent['courseForm'];
};

export const addEvent = (
  access: Access,
  patientId: string,
  { medicine, ...row }: NewEvent,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    const { clinicId, now: recordedAt, actorId: recordedBy } = access;
    await tx.insert(careEvent).values({ id, clinicId, patientId, ...row, recordedAt, recordedBy });
    if (medicine) await tx.insert(medicineChange).values({ eventId: id, clinicId, patientId, ...medicine });
    changed(access, patientId);
    await auditWrite(tx, access, 'event', { subjectId: id, patientId, detail: { kind: row.kind } });
    return id;
  });
