/** A file asked for by an address, for whoever is signed in; who may have it is what its procedures say. */
import { TRPCError } from '@trpc/server';
import { getHTTPStatusCodeFromError } from '@trpc/server/http';
import type { ApiContext } from '#api/context.ts';
import { toldOf } from '#api/errors.ts';
import type { Person } from '#api/person.ts';
import type { Access } from '#data/access.ts';
import { refusalText } from '#messages/refusals.ts';
import type { Runtime } from '../runtime.ts';
import { observeCalls } from '../telemetry/telemetry.ts';
import { contextFor } from './context.ts';
import { networkOf } from './network.ts';
import { isCrossSite } from './origin.ts';
import { askedTooOften } from './rate.ts';
import { answered, refusal } from './requests.ts';

interface SignedIn {
  readonly person: Person;
  readonly access: Access;
}

interface AskedFile {
  /** A fixed name for the log. */
  readonly route: string;
  /** A file costs the server as much as so many calls. */
  readonly calls: number;
  /** Whether the address names a file we have. */
  readonly isKnown: boolean;
  readonly make: (context: ApiContext, by: SignedIn) => Promise<Response>;
}

const refusedWith = (error: unknown): Response => {
  if (!(error instanceof TRPCError)) throw error;
  const { message, text } = toldOf(error);
  return refusal(getHTTPStatusCodeFromError(error), 'refused', text ?? message);
};

export const fileHandler = (at: Runtime, request: Request, asked: AskedFile): Promise<Response> =>
  answered(asked.route, async (requestId) => {
    if (isCrossSite(request.headers)) return refusal(403, 'foreign-origin', refusalText('foreign-origin'));
    if (!asked.isKnown) return refusal(404, 'not-found', refusalText('request-unread'));
    const context = await contextFor(at, request.headers, observeCalls(requestId));
    const { person, access } = context;
    const network = networkOf(request.headers);
    const wait = askedTooOften(person?.sessionId ?? null, network, Date.now(), asked.calls);
    if (wait > 0) return refusal(429, 'too-often', `Too many requests. Wait ${wait} seconds.`);
    if (!person || !access) return refusal(401, 'signed-out', refusalText('signed-out'));
    return asked.make(context, { person, access }).catch(refusedWith);
  });
