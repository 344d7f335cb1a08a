/** Procedures called from the clinic's forms. Types only: none of the server's code comes along. */
import { createTRPCClient, httpBatchLink } from '@trpc/client';
import type { AppRouter } from '#api/root.ts';

export const client = createTRPCClient<AppRouter>({ links: [httpBatchLink({ url: '/api/trpc' })] });
