/** Past days taken in from a file of another system: read through, taken whole, taken back. */
import { z } from 'zod';
import { type ImportedMorning, importFormats } from '#core/record/imported.ts';
import { type MorningOnDay, usualFromImported } from '#core/record/usual-from-imported.ts';
import type { Access } from '#data/access.ts';
import { noteRead } from '#data/audit/audit.ts';
import { importedRowsOf, importsOf, undoImport } from '#data/exchange/imports.ts';
import { clinicOf, type Patient } from '#data/patients/people.ts';
import { csvKinds, dayForms, encodings } from '#exchange/import/csv/how.ts';
import {
  type Asked,
  type Prepared,
  prepareImport,
  takePrepared,
  whyNotTaken,
} from '#exchange/import/prepare.ts';
import { questionIds } from '#exchange/import/questions.ts';
import { CannotRead, type Fault } from '#exchange/import/source.ts';
import { Problem } from '../../errors.ts';
import { requireNoted } from '../../require-noted.ts';
import { recordProcedure, router } from '../../trpc.ts';

/** Base64 of a file that a page sends; longer ones are taken by the command. */
const mostBase64 = 200_000;

const fileInput = z.object({
  name: z.string().trim().min(1).max(120),
  base64: z.base64().max(mostBase64),
  format: z.enum(importFormats),
  kind: z.enum(csvKinds),
  separator: z.enum(['comma', 'semicolon', 'tab']),
  encoding: z.enum(encodings),
  days: z.enum(dayForms),
  decimal: z.enum(['point', 'comma']),
  map: z.string().max(1000),
  isLines: z.boolean(),
  confirmed: z.array(z.enum(questionIds)).max(questionIds.length),
  leavesOutFaulty: z.boolean(),
});
type FileInput = z.infer<typeof fileInput>;

const askedIn = (input: FileInput): Asked => {
  const { format, kind, separator, encoding, days, decimal, map, isLines } = input;
  return format === 'fhir' ? { format, isLines } : { format, kind, separator, encoding, days, decimal, map };
};

/** As many as a page shows; a file with more wants mending and not a list. */
const mostFaults = 100;

interface Looked {
  readonly prepared: Prepared;
  readonly faults: readonly Fault[];
}

const look = async (access: Access, patient: Patient, input: FileInput): Promise<Looked> => {
  const bytes = Buffer.from(input.base64, 'base64');
  const clinic = (await clinicOf(access.store, access.clinicId))!;
  const faults: Fault[] = [];
  const onFault = (fault: Fault) => {
    if (faults.length < mostFaults) faults.push(fault);
  };
  const file = {
    name: input.name,
    async *bytes() {
      yield new Uint8Array(bytes);
    },
  };
  try {
    const prepared = await prepareImport(
      file,
      askedIn(input),
      { patient, clinic, today: access.day },
      { onFault },
    );
    return { prepared, faults };
  } catch (error) {
    if (error instanceof CannotRead) throw new Problem('refused', error.message);
    throw error;
  }
};

const whyNot = async (access: Access, patient: Patient, prepared: Prepared, input: FileInput) =>
  whyNotTaken(prepared, input, await importsOf(access, patient.id));

/** The newest rows that a page shows, and mornings enough for the last weeks of every joint. */
const mostShown = 200;
const mostMornings = 2000;

const listOf = async (access: Access, patientId: string) => {
  const mornings = await importedRowsOf(access, patientId, mostMornings, 'morning');
  const onDays = mornings.flatMap(({ day, value }): readonly MorningOnDay[] =>
    day === null ? [] : [{ day, value: value as ImportedMorning }],
  );
  return {
    imports: await importsOf(access, patientId),
    rows: await importedRowsOf(access, patientId, mostShown),
    usual: usualFromImported(onDays),
  };
};

export const importsRouter = router({
  list: recordProcedure.query(({ ctx }) => listOf(ctx.access, ctx.patient.id)),

  check: recordProcedure.input(fileInput).mutation(async ({ ctx, input, path }) => {
    // Reads the record and writes nothing, so it is an opening of the record like a query.
    requireNoted(ctx.access);
    noteRead(ctx.access, { subject: path, patientId: ctx.patient.id });
    const { prepared, faults } = await look(ctx.access, ctx.patient, input);
    const why = await whyNot(ctx.access, ctx.patient, prepared, input);
    const { mapping, report } = prepared;
    return {
      mapped: (mapping?.mapped ?? []).map(({ column, heading, isGuessed }) => ({
        ...{ name: column.name, heading, isGuessed },
      })),
      ...{ notTaken: mapping?.notTaken ?? [], report, faults, why },
    };
  }),

  take: recordProcedure.input(fileInput).mutation(async ({ ctx, input }) => {
    const { prepared } = await look(ctx.access, ctx.patient, input);
    // Asked within the write: of two that send the same file at once, one finds it taken.
    return ctx.access.store.write(async () => {
      const why = await whyNot(ctx.access, ctx.patient, prepared, input);
      if (why.length > 0) throw new Problem('refused', why.join(' '));
      return { id: await takePrepared(ctx.access, ctx.patient.id, prepared, input) };
    });
  }),

  undo: recordProcedure
    .input(z.object({ importId: z.string().min(1).max(64), reason: z.string().trim().min(1).max(200) }))
    .mutation(async ({ ctx, input }) => {
      const undone = await undoImport(ctx.access, ctx.patient.id, input.importId, input.reason);
      if (undone === 'unknown') throw new Problem('not-found', 'This import is not of this record.');
      if (undone === 'undone-before')
        throw new Problem('conflict', 'A colleague has taken it back already. Load the page again.');
    }),
});
