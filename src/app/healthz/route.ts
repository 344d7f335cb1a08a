/** Answers 200 while the process runs. */
export const GET = () =>
  new Response('ok\n', { headers: { 'Content-Type': 'text/plain', 'Cache-Control': 'no-store' } });
export const dynamic = 'force-dynamic';
