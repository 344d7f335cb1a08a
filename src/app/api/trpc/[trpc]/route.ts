/** The procedures over HTTP. */
import { runtime } from '#server/runtime.ts';
import { trpcHandler } from '#server/trpc-door.ts';

const handle = (request: Request) => trpcHandler(runtime(), request);

export const GET = handle;
export const POST = handle;
