/** Procedures over HTTP: a change from another origin is refused before anything runs. */

import { fetchRequestHandler } from '@trpc/server/adapters/fetch';
import { appRouter } from '#api/root.ts';
import { refusalText } from '#messages/refusals.ts';
import type { Runtime } from '../runtime.ts';
import { observeCalls } from '../telemetry/telemetry.ts';
import { contextFor } from './context.ts';
import { networkOf } from './network.ts';
import { isCrossSite, isOwnOrigin, limitedBody } from './origin.ts';
import { askedTooOften } from './rate.ts';
import { answered, refusal, tooOften } from './requests.ts';
import { inTurnOf } from './turns.ts';

/** A whole screening sheet is a tenth of it. */
const mostBytes = 256 * 1024;

/** A page of ours sends one call, or two when its draft is saved in the same moment. */
const mostInBatch = 4;

const endpoint = '/api/trpc';

/** The calls one request asks for, counted as the library will read them; null when the path cannot be read. */
const callsIn = (request: Request): number | null => {
  try {
    return decodeURIComponent(new URL(request.url).pathname.slice(endpoint.length)).split(',').length;
  } catch {
    return null;
  }
};

const refusedByHandler = (at: Runtime, request: Request): Response | null => {
  const { headers, method } = request;
  const isChange = method !== 'GET';
  if (isChange ? !isOwnOrigin(headers, at.settings.PUBLIC_ORIGIN) : isCrossSite(headers)) {
    return refusal(403, 'foreign-origin', refusalText('foreign-origin'));
  }
  if (isChange && !/^application\/json\b/.test(headers.get('content-type') ?? '')) {
    return refusal(415, 'refused', 'Send this as JSON.');
  }
  return null;
};

export const trpcHandler = (at: Runtime, request: Request): Promise<Response> =>
  answered('trpc', async (requestId) => {
    const refused = refusedByHandler(at, request);
    if (refused) return refused;
    const calls = callsIn(request);
    if (calls === null) return refusal(400, 'refused', refusalText('request-unread'));
    if (calls > mostInBatch) return refusal(413, 'refused', 'Ask for less at once.');
    const bytes = request.method === 'GET' ? undefined : await limitedBody(request, mostBytes);
    if (bytes === null) return refusal(413, 'too-long', 'That is more than one form can hold.');
    const context = await contextFor(at, request.headers, observeCalls(requestId));
    const network = networkOf(request.headers);
    const sessionId = context.person?.sessionId ?? null;
    const wait = askedTooOften(sessionId, network, Date.now(), calls);
    if (wait > 0) return tooOften(wait, `Too many requests. Wait ${wait} seconds.`);
    const { url, method, headers } = request;
    return fetchRequestHandler({
      endpoint,
      req: new Request(url, { method, headers, body: bytes ? new Uint8Array(bytes) : undefined }),
      router: appRouter,
      createContext: () => ({ ...context, inTurn: inTurnOf(sessionId ?? network) }),
      maxBatchSize: mostInBatch,
    });
  });
