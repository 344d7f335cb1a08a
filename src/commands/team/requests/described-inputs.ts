/** What every procedure takes, as its own schemas say it. */
import { z } from 'zod';
import { appRouter } from '#api/root.ts';
import type { Described } from './generated-values.ts';

export interface DescribedProcedure {
  readonly path: string;
  readonly isQuery: boolean;
  readonly inputs: readonly Described[];
}

interface Built {
  readonly _def: { readonly type: string; readonly inputs: readonly z.ZodType[] };
}

/** A schema refers to its own parts by name; here each stands where it is meant. */
const described = (schema: z.ZodType): Described =>
  z.toJSONSchema(schema, { unrepresentable: 'any', io: 'input', reused: 'inline' }) as Described;

export const describedProcedures = (): readonly DescribedProcedure[] =>
  Object.entries(appRouter._def.procedures as unknown as Record<string, Built>).map(([path, { _def }]) => ({
    path,
    isQuery: _def.type === 'query',
    inputs: _def.inputs.map(described),
  }));
