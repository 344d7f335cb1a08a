/** A phone's queue, and that of a tablet of a group hour: one entry in, by the same procedure as every other caller. */
import { TRPCError } from '@trpc/server';
import { Problem } from '#api/errors.ts';
import type { Person } from '#api/person.ts';
import { createCaller } from '#api/root.ts';
import { decrypted, isEncrypted } from '../phone-entries.ts';
import type { Runtime } from '../runtime.ts';
import { observeCalls } from '../telemetry/telemetry.ts';
import { contextFor } from './context.ts';
import { networkOf } from './network.ts';
import { isOwnOrigin, jsonBody } from './origin.ts';
import { askedTooOften } from './rate.ts';
import { answered, refusal, tooOften } from './requests.ts';
import { isOfHour, sendOfHour } from './sealed-hour.ts';

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

/** Two people may share a phone: an entry of one is never taken as the other's. */
const notThisPerson = (headers: Headers, person: Person | null): Response | null => {
  const from = headers.get('x-loadgate-patient');
  return from !== null && person && from !== person.patientId
    ? refusal(403, 'not-yours', 'This entry belongs to somebody else. It stays on the phone.')
    : null;
};

/** An encrypted entry opened; one that came open as it is; null when it cannot be opened. */
const opened = (at: Runtime, person: Person | null, body: unknown): unknown =>
  isEncrypted(body) && person?.patientId
    ? decrypted(at.keys, person.clinicId, person.patientId, body)
    : (body ?? null);

export const entriesHandler = (at: Runtime, request: Request): Promise<Response> =>
  answered('entries', async (requestId) => {
    if (!isOwnOrigin(request.headers, at.settings.PUBLIC_ORIGIN)) {
      return refusal(403, 'foreign-origin', 'This did not come from our own page.');
    }
    const body = await jsonBody(request, mostBytes);
    if (!body) return refusal(400, 'refused', unread);
    const context = await contextFor(at, request.headers, observeCalls(requestId));
    const wrong = notThisPerson(request.headers, context.person);
    if (wrong) return wrong;
    const wait = askedTooOften(context.person?.sessionId ?? null, networkOf(request.headers));
    // The phone keeps the entry and sends it again by itself.
    if (wait > 0) return tooOften(wait, 'Too many at once. The entry is kept on this phone.');
    const caller = createCaller(context);
    try {
      if (isOfHour(body.value))
        return Response.json(await sendOfHour(at, context.person, caller, body.value));
      const plain = opened(at, context.person, body.value);
      if (!plain) return refusal(400, 'unreadable', unread);
      return Response.json(await caller.patient.entries.send(plain as never));
    } catch (error) {
      const answer = refused(error);
      if (answer) return answer;
      // The call itself has logged the fault.
      return refusal(500, 'failed', 'Something went wrong on our side. The entry is kept on this phone.');
    }
  });
