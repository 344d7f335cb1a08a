/** Procedures called from the clinic's forms. Types only: none of the server's code comes along. */
import { createTRPCClient, httpBatchLink, httpLink } from '@trpc/client';
import type { AppRouter } from '#api/root.ts';

/** The server takes four calls in one go; calls of the same moment beyond that go in a request of their own. */
export const client = createTRPCClient<AppRouter>({
  links: [httpBatchLink({ url: '/api/trpc', maxItems: 4 })],
});

/** For the moment in which a page is left: the browser sends it although the page is gone, up to 64 KiB. */
export const clientOnLeaving = createTRPCClient<AppRouter>({
  links: [
    httpLink({
      url: '/api/trpc',
      fetch: (url, options) => fetch(url, { ...(options as RequestInit), keepalive: true }),
    }),
  ],
});
