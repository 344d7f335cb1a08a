/** How often clinicians of a clinic overruled each rule, so that a rule often overruled is looked at again. */
import { and, eq, isNotNull } from 'drizzle-orm';
import { overridesByRule } from '#core/decision/override.ts';
import type { Access } from '../access.ts';
import { decision, decisionResponse } from '../schema/schema.ts';

export const overrideCounts = async (access: Access): Promise<ReadonlyMap<string, number>> => {
  const rows = await access.store.read
    .select({ reasons: decision.reasons })
    .from(decisionResponse)
    .innerJoin(decision, eq(decision.id, decisionResponse.decisionId))
    .where(
      and(
        eq(decisionResponse.clinicId, access.clinicId),
        eq(decisionResponse.kind, 'override'),
        isNotNull(decisionResponse.decision),
        isNotNull(decisionResponse.until),
      ),
    );
  return overridesByRule(rows.map(({ reasons }) => reasons));
};
