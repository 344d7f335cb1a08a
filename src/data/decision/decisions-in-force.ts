/** What stands for each joint of a patient today: the engine's word, a clinician's, or an open pause. */
import { type DecisionInForce, decisionsInForce } from '#core/decision/decisions-in-force.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { candidateDecisions } from './candidate-decisions.ts';
import { responsesOf } from './decision-responses.ts';

/** Days back in which the newest decision of a joint still speaks. */
const countsForDays = 120;

export const decisionsInForceOf = async (
  access: Access,
  patientId: string,
): Promise<ReadonlyMap<Joint, DecisionInForce>> => {
  const since = addDays(access.day, -countsForDays);
  // A pause of any age counts: one that nobody has overruled still stands.
  const candidates = (await candidateDecisions(access, patientId)).filter(
    (row) => row.day >= since || row.decision === 'pause',
  );
  return decisionsInForce(candidates, await responsesOf(access, patientId), access.day);
};
