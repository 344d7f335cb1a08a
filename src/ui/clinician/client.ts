/** Procedures called from the clinic's forms. Types only: none of the server's code comes along. */
import { createTRPCClient, httpBatchLink } from '@trpc/client';
import type { AppRouter } from '#api/root.ts';

/** The server takes four calls in one go; calls of the same moment beyond that go in a request of their own. */
export const client = createTRPCClient<AppRouter>({
  links: [httpBatchLink({ url: '/api/trpc', maxItems: 4 })],
});
