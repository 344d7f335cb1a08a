/** Counts for a monitoring program on this machine; nobody else gets an answer. */
import { isLocal } from '#server/http/network.ts';
import { telemetry } from '#server/telemetry/telemetry.ts';

export const GET = (request: Request) =>
  isLocal(request.headers)
    ? new Response(telemetry().metrics.text(), {
        headers: { 'Content-Type': 'text/plain; version=0.0.4; charset=utf-8', 'Cache-Control': 'no-store' },
      })
    : new Response('Not found\n', { status: 404 });
export const dynamic = 'force-dynamic';
