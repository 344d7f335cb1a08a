/** A record in an open format, for its own patient and for the clinic. */
import { exportHandler } from '#server/http/export-handler.ts';
import { runtime } from '#server/runtime.ts';

interface Context {
  readonly params: Promise<{ readonly format: string }>;
}

export const GET = async (request: Request, { params }: Context) =>
  exportHandler(runtime(), request, (await params).format);
