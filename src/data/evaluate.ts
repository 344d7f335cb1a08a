/**
 * Looks at a patient's record after something arrived: facts per joint, the engine's answers, the
 * doses that follow. Runs inside the transaction of what arrived, so that no entry stands without
 * its decision.
 */
import { defaultsOf } from '#core/clinic-choice.ts';
import { engineChoices } from '#core/engine/choices.ts';
import { decide } from '#core/engine/decide.ts';
import { factsFor } from '#core/engine/facts-from-record.ts';
import type { Access } from './access.ts';
import { choicesOf } from './choices.ts';
import { type NewDecision, storeDecision } from './decisions.ts';
import { recordOf } from './record.ts';

export interface Cause {
  readonly cause: NewDecision['cause'];
  readonly sessionId: string | null;
  readonly morningId: string | null;
}

/** Changes whenever a rule, a threshold or the way facts are gathered changes. */
export const engineVersion = '1';

export const evaluateRecord = async (access: Access, patientId: string, cause: Cause): Promise<void> => {
  const record = await recordOf(access, patientId);
  if (!record) return;
  const own = await choicesOf(access);
  const defaults = defaultsOf(engineChoices);
  const choices = Object.fromEntries(Object.keys(defaults).map((id) => [id, own[id] ?? defaults[id]!]));
  for (const joint of record.followedJoints) {
    const facts = factsFor(record, joint, { instant: access.now, day: access.day }, choices);
    await storeDecision(access, patientId, {
      ...cause,
      joint,
      facts,
      choices,
      engineVersion,
      answers: decide(facts, choices),
    });
  }
};
