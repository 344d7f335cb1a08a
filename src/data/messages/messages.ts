/** Messages from the clinic to a patient. */
import { randomUUID } from 'node:crypto';
import { desc, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { message } from '../schema/schema.ts';

export interface Message {
  readonly id: string;
  readonly text: string;
  readonly sentAt: number;
  readonly sentName: string;
}

const newestMessages = patientQuery((db) =>
  db
    .select({ id: message.id, text: message.text, sentAt: message.sentAt, sentName: message.sentName })
    .from(message)
    .where(ofPatient(message))
    .orderBy(desc(message.sentAt))
    .limit(sql.placeholder('limit')),
);

/** Newest first. */
export const messagesOf = async (
  access: Access,
  patientId: string,
  limit = 50,
): Promise<readonly Message[]> => newestMessages(access, patientId, { limit });

export const sendMessage = (access: Access, patientId: string, text: string): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(message).values({
      id,
      clinicId: access.clinicId,
      patientId,
      text: text.trim(),
      sentAt: access.now,
      sentBy: access.actorId,
      sentName: access.actorName,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'message', { subjectId: id, patientId });
    return id;
  });
