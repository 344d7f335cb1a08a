/** Decisions of the last months with what became of each: what was put in its place, and what the patient told after. */
import { setImmediate } from 'node:timers/promises';
import type { FollowedDecision } from '#core/decision/followed/rule-board.ts';
import { whatFollowed } from '#core/decision/followed/what-followed.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { readTogether, togetherOf } from '../database/read-together.ts';
import { peopleOf } from '../patients/people.ts';
import { recordSince } from '../patients/record.ts';
import { recordQueries } from '../patients/record-queries.ts';
import { responsesOf } from './decision-responses.ts';
import { replayableDecisions } from './replayable-decisions.ts';

/** Days looked back over. */
export const boardDays = 182;

const together = togetherOf(recordQueries);

const ofPerson = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly FollowedDecision[]> => {
  const record = await recordSince(access, patientId, since);
  if (!record) return [];
  // Newest first, so the first of a decision is the one that holds.
  const responses = await responsesOf(access, patientId);
  const made = await replayableDecisions(access, patientId, since);
  return made.map(({ id, joint, day, decision, reasons, facts }) => {
    const answer = responses.find(({ decisionId }) => decisionId === id);
    return {
      patientId,
      decision,
      reasons,
      answered: answer !== undefined,
      instead: answer?.kind === 'override' ? answer.decision : null,
      followed: whatFollowed(record, joint, day, facts.painCeiling, access.day),
    };
  });
};

/** Of everybody of the clinic, a person at a time; in between others are answered. */
export const followedDecisions = async (access: Access): Promise<readonly FollowedDecision[]> => {
  const since = addDays(access.day, -boardDays);
  const all: FollowedDecision[] = [];
  for (const { id } of await peopleOf(access)) {
    all.push(...(await readTogether(access, id, together, () => ofPerson(access, id, since), { since })));
    await setImmediate();
  }
  return all;
};
