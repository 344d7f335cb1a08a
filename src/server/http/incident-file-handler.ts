/** The clinic's incidents as a file of RFC 4180, read from the procedure as whoever asks. */
import { createCaller } from '#api/root.ts';
import type { Runtime } from '../runtime.ts';
import { csvFile } from './csv-file.ts';
import { fileHandler } from './file-handler.ts';

/** Reads all that the clinic ever wrote down. */
const callsOfOne = 10;

export const incidentFileHandler = (at: Runtime, request: Request): Promise<Response> =>
  fileHandler(at, request, {
    route: 'incident-file',
    calls: callsOfOne,
    isKnown: true,
    make: async (context, { access }) =>
      csvFile(await createCaller(context).clinician.incidents.file(), `incidents-${access.day}`),
  });
