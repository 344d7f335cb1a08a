/** Around every request to a route: an id, a line in the log, and an answer without internals when it fails. */
import { randomUUID } from 'node:crypto';
import { faultOf, telemetry } from '../telemetry/telemetry.ts';

export const refusal = (
  status: number,
  problem: string,
  message: string,
  headers: HeadersInit = {},
): Response =>
  Response.json({ problem, message }, { status, headers: { 'Cache-Control': 'no-store', ...headers } });

const failed = 'Something went wrong on our side. What you entered is still there; try again.';

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
    return refusal(500, 'failed', failed);
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
