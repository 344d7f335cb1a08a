/** Signing in: the library's endpoints behind our own door. */
import { answered } from '#server/http/requests.ts';
import { runtime } from '#server/runtime.ts';
import { signInHandler } from '#server/sign-in/sign-in-handler.ts';

const handle = (request: Request) => answered('auth', () => signInHandler(runtime(), request));

export const GET = handle;
export const POST = handle;
