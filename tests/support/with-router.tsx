/**
 * A page whose buttons ask the framework for its router, which is not there outside a request. Given as the
 * framework gives it: a module put in its place would hold only where nothing else has read it before.
 */
import { AppRouterContext } from 'next/dist/shared/lib/app-router-context.shared-runtime.js';
import type { ContextType, ReactElement, ReactNode } from 'react';

const router = { refresh: () => undefined } as unknown as ContextType<typeof AppRouterContext>;

export const withRouter = (page: ReactNode): ReactElement => (
  <AppRouterContext value={router}>{page}</AppRouterContext>
);
