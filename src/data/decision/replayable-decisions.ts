/** Stored decisions with all that each was taken on: most of what is stored, and only asked for to take them again. */
import { and, asc, eq } from 'drizzle-orm';
import { type Facts, wholeFacts } from '#core/decision/facts/facts.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { patientQuery } from '../database/prepared.ts';
import { decision, decisionSettings } from '../schema/schema.ts';
import { type Decision, decisionsFrom, ofJoint, told } from './decisions.ts';
import { ofItsSettings } from './settings-stored.ts';

/** With all that is needed to take it again. */
export interface ReplayableDecision extends Decision {
  readonly facts: Facts;
  readonly settings: SettingValues;
}

const replayable = { ...told, facts: decision.facts, settings: decisionSettings.settings };

const replayableSince = patientQuery((db) =>
  db
    .select(replayable)
    .from(decision)
    .innerJoin(decisionSettings, ofItsSettings())
    .where(decisionsFrom)
    .orderBy(asc(decision.evaluatedAt)),
);

/** The same with the facts and the clinic's choices each was taken on, which are most of what is stored. */
export const replayableDecisions = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly ReplayableDecision[]> =>
  (await replayableSince(access, patientId, { since })).map((row) => ({
    ...ofJoint(row),
    facts: wholeFacts(row.facts),
  }));

/** One decision with all that is needed to take it again; null where the patient has none of this id. */
export const decisionById = async (
  access: Access,
  patientId: string,
  id: string,
): Promise<ReplayableDecision | null> => {
  const [row] = await access.store.read
    .select(replayable)
    .from(decision)
    .innerJoin(decisionSettings, ofItsSettings())
    .where(
      and(eq(decision.clinicId, access.clinicId), eq(decision.patientId, patientId), eq(decision.id, id)),
    );
  return row ? { ...ofJoint(row), facts: wholeFacts(row.facts) } : null;
};
