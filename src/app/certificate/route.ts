/** A decision with all that it rests on, sealed by the audit. */
import { certificateHandler } from '#server/http/certificate-handler.ts';
import { runtime } from '#server/runtime.ts';

export const GET = async (request: Request) => certificateHandler(runtime(), request);
