/** Around every request to a route: an id, a line in the log, and an answer without internals when it fails. */
import { randomUUID } from 'node:crypto';
import { refusalText } from '#messages/refusals.ts';
import type { Text } from '#messages/text.ts';
import { faultOf, telemetry } from '../telemetry/telemetry.ts';

/** A patient is told in every language, staff and programs in English. */
export const refusal = (
  status: number,
  problem: string,
  said: Text | string,
  headers: HeadersInit = {},
): Response => {
  const told = typeof said === 'string' ? { message: said } : { message: said.en, text: said };
  return Response.json(
    { problem, ...told },
    { status, headers: { 'Cache-Control': 'no-store', ...headers } },
  );
};

/** Whoever comes too often is told in how many seconds to come again, in words and for a program. */
export const tooOften = (seconds: number, said: Text | string): Response =>
  refusal(429, 'too-often', said, { 'Retry-After': String(seconds) });

/** `route` is a fixed name; an address would carry what was asked for. */
export const answered = async (
  route: string,
  body: (requestId: string) => Promise<Response>,
): Promise<Response> => {
  // Made here: an id sent along could carry anything into the log.
  const requestId = randomUUID();
  const began = performance.now();
  let fault: unknown = null;
  const response = await body(requestId).catch((error: unknown) => {
    fault = error;
    return refusal(500, 'failed', refusalText('server-failed'));
  });
  const milliseconds = performance.now() - began;
  const { log, metrics } = telemetry();
  metrics.request(route, response.status, milliseconds);
  const line = { requestId, route, status: response.status, ms: Math.round(milliseconds) };
  if (fault) log.error({ ...line, fault: faultOf(fault) }, 'request');
  else log.info(line, 'request');
  const headers = new Headers(response.headers);
  headers.set('X-Request-Id', requestId);
  return new Response(response.body, { status: response.status, headers });
};
