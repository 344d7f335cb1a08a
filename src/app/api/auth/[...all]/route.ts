/** The sign-in library's own endpoints. It checks origins and limits rates itself. */
import { runtime } from '#server/runtime.ts';

const handle = (request: Request) => runtime().auth.handler(request);

export const GET = handle;
export const POST = handle;
