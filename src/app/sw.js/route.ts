/** The patient's service worker, with the files of this build. */
import path from 'node:path';
import { assetsOfPatientPages, buildId } from '#server/http/worker-assets.ts';
import { workerScript } from '#server/http/worker-script.ts';

export const dynamic = 'force-dynamic';

export const GET = () => {
  const build = path.join(process.cwd(), '.next');
  const assets = assetsOfPatientPages(build);
  // A worker with an empty list would promise a page it cannot open.
  if (assets.length === 0) return new Response('No build stands here.', { status: 404 });
  return new Response(workerScript(buildId(build), assets), {
    headers: {
      'Content-Type': 'text/javascript; charset=utf-8',
      'Cache-Control': 'no-cache',
      'Content-Security-Policy': "default-src 'none'; connect-src 'self'",
    },
  });
};
