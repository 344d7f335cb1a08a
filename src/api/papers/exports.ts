/** A record in an open format: the patient's own copy, from the own phone without asking anybody, or made at the desk. */
import { z } from 'zod';
import type { Access } from '#data/access.ts';
import { type ExportFile, exportFormats, personFiles } from '#exchange/person-files.ts';
import { languages } from '#messages/languages.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';
import { patientProcedure, recordProcedure, router } from '../trpc.ts';

const asked = z.object({
  format: z.enum(exportFormats),
  language: z.enum(languages.map(({ tag }) => tag)).default('en'),
});

const filesOf = async (
  access: Access,
  patientId: string,
  { format, language }: z.infer<typeof asked>,
): Promise<readonly ExportFile[]> => {
  const files = await personFiles(access, patientId, format, { language, hasMark: true });
  if (files.length === 0) throw new Problem('not-found', refusalText('nothing-planned'));
  return files;
};

export const exportsRouter = router({
  files: recordProcedure
    .input(asked)
    .query(({ ctx: { access, patient }, input }) => filesOf(access, patient.id, input)),
});

export const ownExportsRouter = router({
  files: patientProcedure
    .input(asked)
    .query(({ ctx: { access, patient }, input }) => filesOf(access, patient.id, input)),
});
