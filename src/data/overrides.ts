/** How often clinicians of a clinic overruled each rule, so that a rule often overruled is looked at again. */
import { and, eq } from 'drizzle-orm';
import { type Override, overridesByRule } from '#core/engine/override.ts';
import type { Access } from './access.ts';
import { dayAt } from './civil-time.ts';
import { clinicOf } from './people.ts';
import { decision, decisionResponse } from './schema/schema.ts';

export const overrideCounts = async (access: Access): Promise<ReadonlyMap<string, number>> => {
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  const rows = await access.store.read
    .select({
      word: decisionResponse.decision,
      reason: decisionResponse.reason,
      by: decisionResponse.answeredName,
      at: decisionResponse.answeredAt,
      until: decisionResponse.until,
      reasons: decision.reasons,
    })
    .from(decisionResponse)
    .innerJoin(decision, eq(decision.id, decisionResponse.decisionId))
    .where(and(eq(decisionResponse.clinicId, access.clinicId), eq(decisionResponse.kind, 'override')));
  const overrides = rows.flatMap((row): readonly Override[] => {
    if (!row.word || !row.until) return [];
    const { reason, by, until, reasons } = row;
    return [{ decision: row.word, reason, by, day: dayAt(row.at, zone), until, overruled: reasons }];
  });
  return overridesByRule(overrides);
};
