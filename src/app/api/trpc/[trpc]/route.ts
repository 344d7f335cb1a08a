/** The procedures over HTTP. */

import { trpcHandler } from '#server/http/trpc-handler.ts';
import { runtime } from '#server/runtime.ts';

const handle = (request: Request) => trpcHandler(runtime(), request);

export const GET = handle;
export const POST = handle;
