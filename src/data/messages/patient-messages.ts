/** Messages from a patient to the clinic. They are read by people, and by nothing else. */
import { and, count, desc, eq, gte, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { patientMessage } from '../schema/schema.ts';

export interface PatientMessage {
  readonly id: string;
  readonly text: string;
  readonly recordedAt: number;
  readonly byName: string;
}

const newest = patientQuery((db) =>
  db
    .select()
    .from(patientMessage)
    .where(ofPatient(patientMessage))
    .orderBy(desc(patientMessage.recordedAt), desc(patientMessage.id))
    .limit(sql.placeholder('limit')),
);

/** Newest first. */
export const patientMessagesOf = async (
  access: Access,
  patientId: string,
  limit = 50,
): Promise<readonly PatientMessage[]> =>
  (await newest(access, patientId, { limit })).map(({ id, text, recordedAt, byName }) => ({
    id,
    text,
    recordedAt,
    byName,
  }));

/** How many a patient has sent since an instant. */
export const messagesSince = async (access: Access, patientId: string, since: number): Promise<number> => {
  const [row] = await access.store.read
    .select({ n: count() })
    .from(patientMessage)
    .where(
      and(
        eq(patientMessage.clinicId, access.clinicId),
        eq(patientMessage.patientId, patientId),
        gte(patientMessage.recordedAt, since),
      ),
    );
  return row?.n ?? 0;
};

const known = patientQuery((db) =>
  db
    .select({ text: patientMessage.text })
    .from(patientMessage)
    .where(and(ofPatient(patientMessage), eq(patientMessage.id, sql.placeholder('id')))),
);

/** Whether a message with this id is here: the same, or one that says something else. */
export const knownMessage = async (
  access: Access,
  patientId: string,
  { id, text }: { readonly id: string; readonly text: string },
): Promise<'known' | 'conflict' | null> => {
  const [row] = await known(access, patientId, { id });
  return row ? (row.text === text.trim() ? 'known' : 'conflict') : null;
};

/** Under the id a phone gave it, or one of its own. */
export const sendPatientMessage = (
  access: Access,
  patientId: string,
  text: string,
  id?: string,
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = { ...writtenNow(access, patientId), ...(id === undefined ? {} : { id }) };
    await tx.insert(patientMessage).values({ ...now, text: text.trim() });
    changed(access, patientId);
    await auditWrite(tx, access, 'patient-message', { subjectId: now.id, patientId });
    return now.id;
  });
