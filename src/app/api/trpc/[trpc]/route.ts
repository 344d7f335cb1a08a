/** The procedures over HTTP. */
import { runtime } from '#server/runtime.ts';
import { trpcDoor } from '#server/trpc-door.ts';

const handle = (request: Request) => trpcDoor(runtime(), request);

export const GET = handle;
export const POST = handle;
