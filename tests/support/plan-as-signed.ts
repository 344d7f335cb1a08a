/** The plan of prescriptions with nothing against them. */

import type { Plan } from '#core/plan/plan.ts';
import { planFor } from '#core/plan/plan-for.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { inputs } from '../core/plan/plan-inputs.ts';

export const asSigned = (rows: readonly Prescription[]): Plan =>
  planFor(inputs({ versions: rows.map((row) => ({ ...row, signedAt: row.signedAt ?? 0 })) }));
