/** What stands for each joint of a patient today: the engine's word, a clinician's, or an open pause. */
import { addDays } from '#core/day.ts';
import { type Standing, standingAnswers } from '#core/engine/standing.ts';
import type { Joint } from '#core/joints.ts';
import type { Access } from './access.ts';
import { responsesOf } from './decision-responses.ts';
import { speakingDecisions } from './speaking-decisions.ts';

/** Days back in which the newest decision of a joint still speaks. */
const speaksForDays = 120;

export const standingOf = async (
  access: Access,
  patientId: string,
): Promise<ReadonlyMap<Joint, Standing>> => {
  const since = addDays(access.day, -speaksForDays);
  // A pause of any age counts: one that nobody has overruled still stands.
  const speaking = (await speakingDecisions(access, patientId)).filter(
    (row) => row.day >= since || row.decision === 'pause',
  );
  return standingAnswers(speaking, await responsesOf(access, patientId), access.day);
};
