/** Whether each stored decision is what the record says, gathered anew as it was known then. */
import { isDeepStrictEqual } from 'node:util';
import { isSame } from '#core/decision/replay.ts';
import type { Access } from '#data/access.ts';
import { type ReplayableDecision, replayableDecisions } from '#data/decision/replayable-decisions.ts';
import { peopleOf } from '#data/patients/people.ts';
import { type GatheredLook, gatherAnew } from '#data/replay/gather-anew.ts';
import { say } from '../say.mjs';

/** Before any record of the product. */
const first = '1970-01-01';

const factsThatDiffer = (stored: object, again: object): readonly string[] =>
  Object.entries(again)
    .filter(([name, value]) => !isDeepStrictEqual(value, (stored as Record<string, unknown>)[name]))
    .map(([name]) => name);

/** What is otherwise; null where facts and answers are as they were stored. */
const otherwise = (stored: ReplayableDecision, looks: ReadonlyMap<number, GatheredLook>) => {
  const joints = looks.get(stored.evaluatedAt)?.joints ?? [];
  const again = joints.find(({ joint }) => joint === stored.joint);
  if (!again) return { facts: [], after: null };
  const facts = factsThatDiffer(stored.facts, again.facts);
  const { decision, largestStep, today, contact } = again.answers;
  return facts.length === 0 && isSame(stored, again.answers)
    ? null
    : { facts, after: { decision, largestStep, today, contact } };
};

type Otherwise = NonNullable<ReturnType<typeof otherwise>>;

const lineOf = (stored: ReplayableDecision, patientId: string, { facts, after }: Otherwise): string => {
  const what = `decision ${stored.id}: patient ${patientId}, ${stored.joint}, ${stored.day}`;
  if (!after) return `${what}: the record of that instant has no such joint`;
  return `${what}: was ${stored.decision}, is ${after.decision}; facts that differ: ${facts.join(', ') || 'none'}`;
};

const rowOf = (stored: ReplayableDecision, patientId: string, found: Otherwise) => ({
  ...{ decision: stored.id, patient: patientId, joint: stored.joint, day: stored.day },
  ...{ outcome: found.after ? 'different' : 'not-found', was: stored.decision, ...found },
});

/** The code to end with: 1 where one is otherwise. */
export const accountAnew = async (
  access: Access,
  patientId: string | null,
  isJson: boolean,
): Promise<number> => {
  const ids = patientId === null ? (await peopleOf(access)).map(({ id }) => id) : [patientId];
  const counts = { stored: 0, same: 0, different: 0 };
  for (const [place, id] of ids.entries()) {
    const looks = new Map((await gatherAnew(access, id, first)).map((one) => [one.look.instant, one]));
    for (const stored of await replayableDecisions(access, id, first)) {
      const found = otherwise(stored, looks);
      counts.stored += 1;
      counts[found ? 'different' : 'same'] += 1;
      if (found) console.log(isJson ? JSON.stringify(rowOf(stored, id, found)) : lineOf(stored, id, found));
    }
    if ((place + 1) % 50 === 0) say(`${place + 1} of ${ids.length} patients gathered anew`);
  }
  const { stored, same, different } = counts;
  console.log(
    isJson
      ? JSON.stringify({ clinic: access.clinicId, ...counts })
      : `clinic ${access.clinicId}: facts of ${stored} decisions gathered anew: ${same} the same, ${different} different`,
  );
  return different > 0 ? 1 : 0;
};
