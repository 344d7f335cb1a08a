/** What came in from elsewhere: each file one batch, with its rows, and the batch taken in error. */
import { sql } from 'drizzle-orm';
import type { ImportedValue } from '#core/record/imported.ts';
import { importedKinds, importFormats } from '#core/record/imported.ts';
import { dayShape, kit, words } from '../kit.ts';
import { owned } from '../owned.ts';
import { clinic, patient } from '../people.ts';

/** One file taken into one record, whole. */
export const importBatch = kit.appendOnly(
  'import_batch',
  {
    ...owned(),
    format: kit.word('format', importFormats),
    /** Name of the file, as whoever took it named it. */
    source: kit.text('source'),
    /** Of the bytes of the file, so that the same one is not taken twice. */
    fileDigest: kit.text('file_digest'),
    /** How the file was read: its columns, its marks, and the doubts that were answered. */
    how: kit.json<Readonly<Record<string, string>>>('how'),
    rows: kit.whole('rows'),
    leftOut: kit.whole('left_out'),
  },
  (t) => [
    kit.index('import_batch_by_patient').on(t.patientId, t.recordedAt),
    kit.check('import_batch_format', sql`${t.format} IN (${words(importFormats)})`),
    kit.check('import_batch_rows', sql`${t.rows} > 0 AND ${t.leftOut} >= 0`),
  ],
);

/** A day from elsewhere. Kept apart from what was answered here, so that no rule can take it for an answer. */
export const importedRow = kit.appendOnly(
  'imported_row',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    batchId: kit.id('batch_id').references(() => importBatch.id),
    /** Line of the file, or place of the resource in it. */
    place: kit.whole('place'),
    kind: kit.word('kind', importedKinds),
    /** null = the file gave none. */
    day: kit.dayOrNull('day'),
    value: kit.json<ImportedValue>('value'),
  },
  (t) => [
    kit.index('imported_row_by_patient').on(t.patientId, t.kind, t.day),
    kit.index('imported_row_of_batch').on(t.batchId, t.place),
    kit.check('imported_row_kind', sql`${t.kind} IN (${words(importedKinds)})`),
    kit.check('imported_row_day', sql`${t.day} IS NULL OR ${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

/** A batch taken in error: its rows stay as they were and count for nothing. */
export const importUndo = kit.appendOnly('import_undo', {
  batchId: kit
    .id('batch_id')
    .primaryKey()
    .references(() => importBatch.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  recordedAt: kit.instant('recorded_at'),
  recordedBy: kit.id('recorded_by'),
  byName: kit.text('by_name'),
  reason: kit.text('reason'),
});
