/** The procedures over HTTP. A mutation from another origin is refused before anything runs. */
import { fetchRequestHandler } from '@trpc/server/adapters/fetch';
import { appRouter } from '#api/root.ts';
import { contextFor } from '#server/context.ts';
import { isOwnOrigin } from '#server/origin.ts';
import { runtime } from '#server/runtime.ts';

const handle = (request: Request) =>
  fetchRequestHandler({
    endpoint: '/api/trpc',
    req: request,
    router: appRouter,
    createContext: () => contextFor(runtime(), request.headers),
  });

export const GET = handle;

export const POST = (request: Request) => {
  if (!isOwnOrigin(request.headers, runtime().settings.PUBLIC_ORIGIN)) {
    return Response.json({ message: 'This request did not come from our own page.' }, { status: 403 });
  }
  if (Number(request.headers.get('content-length') ?? '0') > 256 * 1024) {
    return Response.json({ message: 'That is more than one form can hold.' }, { status: 413 });
  }
  return handle(request);
};
