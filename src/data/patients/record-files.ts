/** A patient's record as a file: every row the clinic keeps about the person, with a note of whom it was given to. */
import { createHash } from 'node:crypto';
import { and, desc, eq } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { appendAudit } from '../audit/audit.ts';
import { writtenNow } from '../episode/episodes.ts';
import * as schema from '../schema/schema.ts';
import { clinicOf } from './people.ts';
import { leftOut, type RecordTables, recordTablesOf } from './record-tables.ts';

/** Sentences that rows name by a key, each in every language by its tag. */
type Sentences = Readonly<Record<string, Readonly<Record<string, string>>>>;

interface RecordDocument {
  readonly format: 'loadgate-record';
  readonly version: 1;
  /** Epoch milliseconds, as all instants of the rows. */
  readonly madeAt: number;
  readonly clinic: { readonly id: string; readonly name: string; readonly zone: string };
  readonly patientId: string;
  readonly tables: RecordTables;
  readonly sentences: Sentences;
  readonly leftOut: Readonly<Record<string, string>>;
}

/** The layer that knows the words says what the rows hold by key only. */
type SentencesOf = (tables: RecordTables) => Sentences;

/** Everything the clinic keeps about the person, in one value. */
export const recordDocumentOf = async (
  access: Access,
  patientId: string,
  sentencesOf: SentencesOf,
): Promise<RecordDocument> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  const tables: RecordTables = await recordTablesOf(access, patientId);
  return {
    format: 'loadgate-record',
    version: 1,
    madeAt: access.now,
    clinic: { id: access.clinicId, name: clinic?.name ?? '', zone: clinic?.zone ?? 'UTC' },
    patientId,
    tables,
    sentences: sentencesOf(tables),
    leftOut,
  };
};

export interface HandedOn {
  readonly id: string;
  readonly at: number;
  readonly by: string;
  readonly handedTo: string;
}

/** The file's text, with a note of it in the record and in the audit before anybody has it. */
export const giveRecordFile = (
  access: Access,
  patientId: string,
  handedTo: string,
  sentencesOf: SentencesOf,
): Promise<{ readonly text: string; readonly digest: string }> =>
  access.store.write(async (tx) => {
    const document = await recordDocumentOf(access, patientId, sentencesOf);
    const text = `${JSON.stringify(document, null, 1)}\n`;
    const digest = createHash('sha256').update(text).digest('hex');
    const rows = Object.values(document.tables).reduce((sum, table) => sum + table.length, 0);
    const now = writtenNow(access, patientId);
    await tx.insert(schema.recordFile).values({ ...now, handedTo, rows, digest });
    const detail = { rows, digest };
    await appendAudit(tx, access, {
      act: 'read',
      subject: 'record-file',
      subjectId: now.id,
      patientId,
      detail,
    });
    return { text, digest };
  });

/** Newest first. */
export const handedOn = async (access: Access, patientId: string): Promise<readonly HandedOn[]> => {
  const { recordFile } = schema;
  return access.store.read
    .select({
      id: recordFile.id,
      at: recordFile.recordedAt,
      by: recordFile.byName,
      handedTo: recordFile.handedTo,
    })
    .from(recordFile)
    .where(and(eq(recordFile.clinicId, access.clinicId), eq(recordFile.patientId, patientId)))
    .orderBy(desc(recordFile.recordedAt));
};
