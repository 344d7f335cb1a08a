/** The clinic's figures as a file of RFC 4180, read from the procedure as whoever asks. */
import { createCaller } from '#api/root.ts';
import type { Runtime } from '../runtime.ts';
import { csvFile } from './csv-file.ts';
import { fileHandler } from './file-handler.ts';

/** Reads the records of everybody. */
const callsOfOne = 20;

export const figuresFileHandler = (at: Runtime, request: Request): Promise<Response> =>
  fileHandler(at, request, {
    route: 'figures-file',
    calls: callsOfOne,
    isKnown: true,
    make: async (context, { access }) =>
      csvFile(await createCaller(context).clinician.learning.file(), `clinic-figures-${access.day}`),
  });
