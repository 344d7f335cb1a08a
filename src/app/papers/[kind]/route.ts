/** A paper as a file, for its own patient and for the clinic. */
import { paperHandler } from '#server/http/paper-handler.ts';
import { runtime } from '#server/runtime.ts';

interface Context {
  readonly params: Promise<{ readonly kind: string }>;
}

export const GET = async (request: Request, { params }: Context) =>
  paperHandler(runtime(), request, (await params).kind);
