/** 200 when what is typed will be kept; 503 with the reason when not. */
import { readiness } from '#server/telemetry/readiness.ts';

export const GET = async () => {
  const problem = await readiness();
  return new Response(`${problem ?? 'ready'}\n`, {
    status: problem ? 503 : 200,
    headers: { 'Content-Type': 'text/plain', 'Cache-Control': 'no-store' },
  });
};
export const dynamic = 'force-dynamic';
