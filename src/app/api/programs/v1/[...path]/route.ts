/** What a clinic keeps, for its other programs: each asks with a token, and reads alone. */
import { programHandler } from '#server/http/program-handler.ts';
import { runtime } from '#server/runtime.ts';

interface Context {
  readonly params: Promise<{ readonly path: readonly string[] }>;
}

export const GET = async (request: Request, { params }: Context) =>
  programHandler(runtime(), request, `/${(await params).path.join('/')}`);
