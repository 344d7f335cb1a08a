/** The one door for a phone's queue. */
import { entriesHandler } from '#server/http/entries-handler.ts';
import { runtime } from '#server/runtime.ts';

export const POST = (request: Request) => entriesHandler(runtime(), request);
