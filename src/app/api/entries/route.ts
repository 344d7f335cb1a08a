/** The one door for a phone's queue: an entry in, the same procedure as every other caller. */
import { TRPCError } from '@trpc/server';
import { Problem } from '#api/errors.ts';
import { createCaller } from '#api/root.ts';
import { contextFor } from '#server/context.ts';
import { isOwnOrigin, jsonBody } from '#server/origin.ts';
import { runtime } from '#server/runtime.ts';

const statusOf: Readonly<Record<string, number>> = {
  UNAUTHORIZED: 401,
  FORBIDDEN: 403,
  NOT_FOUND: 404,
  BAD_REQUEST: 400,
};

export const POST = async (request: Request) => {
  const at = runtime();
  if (!isOwnOrigin(request.headers, at.settings.PUBLIC_ORIGIN)) {
    return Response.json(
      { problem: 'foreign-origin', message: 'This did not come from our own page.' },
      { status: 403 },
    );
  }
  const body = await jsonBody(request, 64 * 1024);
  if (!body) {
    return Response.json({ problem: 'refused', message: 'This entry could not be read.' }, { status: 400 });
  }
  try {
    const caller = createCaller(await contextFor(at, request.headers));
    return Response.json(await caller.patient.entries.send(body.value as never));
  } catch (error) {
    if (error instanceof Problem) {
      const { problem, message, refusals } = error;
      return Response.json({ problem, message, refusals }, { status: statusOf[error.code] ?? 400 });
    }
    if (error instanceof TRPCError && error.code === 'BAD_REQUEST') {
      return Response.json({ problem: 'refused', message: 'This entry could not be read.' }, { status: 400 });
    }
    return Response.json(
      { problem: 'failed', message: 'Something went wrong on our side. The entry is kept on this phone.' },
      { status: 500 },
    );
  }
};
