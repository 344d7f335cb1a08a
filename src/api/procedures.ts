/** Every procedure with the people who may call it, read from the router itself. */

import type { ProcedureMeta } from './context.ts';
import { appRouter } from './root.ts';

export interface ProcedureLine extends ProcedureMeta {
  readonly path: string;
  readonly kind: 'query' | 'mutation' | 'subscription';
}

interface Built {
  readonly _def: { readonly type: ProcedureLine['kind']; readonly meta?: ProcedureMeta };
}

export const procedureLines = (): readonly ProcedureLine[] =>
  Object.entries(appRouter._def.procedures as unknown as Record<string, Built>)
    .map(([path, built]) => ({
      path,
      kind: built._def.type,
      roles: built._def.meta?.roles ?? [],
      guard: built._def.meta?.guard ?? 'none',
    }))
    .sort((a, b) => a.path.localeCompare(b.path));
