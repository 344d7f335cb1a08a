/** The clinic's incidents as a file. */
import { incidentFileHandler } from '#server/http/incident-file-handler.ts';
import { runtime } from '#server/runtime.ts';

export const GET = async (request: Request) => incidentFileHandler(runtime(), request);
