/**
 * Imports: a file is taken whole, in one write, as one batch, and taken back as one batch. Its rows stand in a table
 * of their own that no rule of the engine reads.
 */
import { randomUUID } from 'node:crypto';
import { and, asc, desc, eq, isNull, sql } from 'drizzle-orm';
import type { ImportedKind, ImportedThing, ImportFormat } from '#core/record/imported.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { insertRows } from '../database/insert-rows.ts';
import { writtenNow } from '../episode/episodes.ts';
import { importBatch, importedRow, importUndo } from '../schema/schema.ts';

export interface NewImport {
  readonly format: ImportFormat;
  readonly source: string;
  readonly fileDigest: string;
  readonly how: Readonly<Record<string, string>>;
  /** Things it holds, and places of the file left out. */
  readonly rows: number;
  readonly leftOut: number;
}

export interface PlacedThing extends ImportedThing {
  readonly place: number;
}

export interface Import extends NewImport {
  readonly id: string;
  readonly recordedAt: number;
  readonly byName: string;
  readonly undone: { readonly at: number; readonly by: string; readonly reason: string } | null;
}

/** Newest first, those taken back too. */
export const importsOf = async (access: Access, patientId: string): Promise<readonly Import[]> => {
  const rows = await access.store.read
    .select()
    .from(importBatch)
    .leftJoin(importUndo, eq(importUndo.batchId, importBatch.id))
    .where(and(eq(importBatch.clinicId, access.clinicId), eq(importBatch.patientId, patientId)))
    .orderBy(desc(importBatch.recordedAt), desc(importBatch.id));
  return rows.map(({ import_batch: batch, import_undo: undo }) => {
    const { id, format, source, fileDigest, how, rows: taken, leftOut, recordedAt, byName } = batch;
    return {
      ...{ id, format, source, fileDigest, how, rows: taken, leftOut, recordedAt, byName },
      undone: undo && { at: undo.recordedAt, by: undo.byName, reason: undo.reason },
    };
  });
};

/** Rows that count: of batches not taken back. The latest days first, none given last. */
export const importedRowsOf = async (
  access: Access,
  patientId: string,
  most: number,
  kind: ImportedKind | null = null,
) => {
  const rows = await access.store.read
    .select({
      id: importedRow.id,
      batchId: importedRow.batchId,
      place: importedRow.place,
      kind: importedRow.kind,
      day: importedRow.day,
      value: importedRow.value,
    })
    .from(importedRow)
    .leftJoin(importUndo, eq(importUndo.batchId, importedRow.batchId))
    .where(
      and(
        eq(importedRow.clinicId, access.clinicId),
        eq(importedRow.patientId, patientId),
        isNull(importUndo.batchId),
        ...(kind === null ? [] : [eq(importedRow.kind, kind)]),
      ),
    )
    .orderBy(sql`${importedRow.day} IS NULL`, desc(importedRow.day), asc(importedRow.place))
    .limit(most);
  return rows;
};

/** Rows written by one statement. */
const mostAtOnce = 100;
/** Rows sealed by one row of the audit. */
const sealedAtOnce = 1000;

/** Something in the file was not as it had been checked; nothing of it was taken. */
export class Changed extends Error {}

/**
 * Takes a file whole or not at all. `things` come as the file is read; their number is what was told of it before,
 * and `isSame` is asked at the end whether it still is the file that was checked.
 */
export const takeImport = (
  access: Access,
  patientId: string,
  batch: NewImport,
  things: AsyncIterable<readonly PlacedThing[]>,
  isSame: () => Promise<boolean>,
): Promise<string> =>
  access.store.write(async (tx) => {
    const head = writtenNow(access, patientId);
    await tx.insert(importBatch).values({ ...head, ...batch });
    const { clinicId, id: batchId } = head;
    let [written, sealed] = [0, 0];
    const seal = async () => {
      await auditWrite(tx, access, 'import', {
        ...{ subjectId: batchId, patientId, detail: { format: batch.format, rows: written - sealed } },
      });
      sealed = written;
    };
    for await (const some of things) {
      for (let from = 0; from < some.length; from += mostAtOnce) {
        const rows = some
          .slice(from, from + mostAtOnce)
          .map((thing) => ({ id: randomUUID(), clinicId, patientId, batchId, ...thing }));
        insertRows(tx, importedRow, rows);
        written += rows.length;
        if (written - sealed >= sealedAtOnce) await seal();
      }
    }
    if (written !== batch.rows || !(await isSame())) throw new Changed('The file changed while it was read.');
    if (written > sealed) await seal();
    return batchId;
  });

export type Undone = 'undone' | 'undone-before' | 'unknown';

/** Marks a batch as taken in error, with all its rows; nothing is deleted. */
export const undoImport = (
  access: Access,
  patientId: string,
  batchId: string,
  reason: string,
): Promise<Undone> =>
  access.store.write(async (tx) => {
    const found = (await importsOf(access, patientId)).find(({ id }) => id === batchId);
    if (!found) return 'unknown';
    if (found.undone) return 'undone-before';
    const { id: _own, ...head } = writtenNow(access, patientId);
    await tx.insert(importUndo).values({ batchId, ...head, reason });
    await auditWrite(tx, access, 'import-undone', { subjectId: batchId, patientId });
    return 'undone';
  });
