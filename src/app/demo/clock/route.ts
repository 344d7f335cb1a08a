/** In the demo only, from this machine only: moves the clinical clock forward. */
import { isLocal } from '#server/http/network.ts';
import { jsonBody } from '#server/http/origin.ts';
import { runtime } from '#server/runtime.ts';

export const POST = async (request: Request) => {
  const at = runtime();
  if (!at.settings.DEMO || !isLocal(request.headers)) {
    return new Response('Not found\n', { status: 404 });
  }
  const body = await jsonBody(request, 1024);
  const now = (body?.value as { now?: unknown } | undefined)?.now;
  const instant = typeof now === 'string' ? Date.parse(now) : Number.NaN;
  if (Number.isNaN(instant)) {
    return Response.json({ message: 'Send {"now": "<ISO instant with offset>"}.' }, { status: 400 });
  }
  if (!at.clock.moveTo(instant)) {
    return Response.json({ message: 'The clinical clock moves forward only.' }, { status: 409 });
  }
  return Response.json({ now: new Date(at.clock.now()).toISOString() });
};
