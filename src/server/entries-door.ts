/** A phone's queue: one entry in, through the same procedure as every other caller. */
import { TRPCError } from '@trpc/server';
import { Problem } from '#api/errors.ts';
import { createCaller } from '#api/root.ts';
import { contextFor } from './context.ts';
import { networkOf } from './network.ts';
import { isOwnOrigin, jsonBody } from './origin.ts';
import { askedTooOften } from './rate.ts';
import { answered, refusal } from './requests.ts';
import type { Runtime } from './runtime.ts';
import { observeCalls } from './watch.ts';

const statusOf: Readonly<Record<string, number>> = {
  UNAUTHORIZED: 401,
  FORBIDDEN: 403,
  NOT_FOUND: 404,
  BAD_REQUEST: 400,
};

const mostBytes = 64 * 1024;
const unread = 'This entry could not be read.';

const refused = (error: unknown): Response | null => {
  if (error instanceof Problem) {
    const { problem, message, refusals } = error;
    return Response.json({ problem, message, refusals }, { status: statusOf[error.code] ?? 400 });
  }
  return error instanceof TRPCError && error.code === 'BAD_REQUEST' ? refusal(400, 'refused', unread) : null;
};

export const entriesDoor = (at: Runtime, request: Request): Promise<Response> =>
  answered('entries', async (requestId) => {
    if (!isOwnOrigin(request.headers, at.settings.PUBLIC_ORIGIN)) {
      return refusal(403, 'foreign-origin', 'This did not come from our own page.');
    }
    const body = await jsonBody(request, mostBytes);
    if (!body) return refusal(400, 'refused', unread);
    const context = await contextFor(at, request.headers, observeCalls(requestId));
    const wait = askedTooOften(context.person?.sessionId ?? null, networkOf(request.headers));
    // The phone keeps the entry and sends it again by itself.
    if (wait > 0) return refusal(429, 'too-often', 'Too many at once. The entry is kept on this phone.');
    try {
      return Response.json(await createCaller(context).patient.entries.send(body.value as never));
    } catch (error) {
      const answer = refused(error);
      if (answer) return answer;
      // The call itself has logged the fault.
      return refusal(500, 'failed', 'Something went wrong on our side. The entry is kept on this phone.');
    }
  });
