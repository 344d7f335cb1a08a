/** Says of every stored decision whether it comes out the same, otherwise, or cannot be decided again. */
import type { Answers } from '#core/decision/answers.ts';
import type { Access } from '#data/access.ts';
import { type AccountedFor, decideAllAgain, decisionsStored } from '#data/replay/decide-again.ts';
import { say } from '../say.mjs';

interface Counts {
  same: number;
  different: number;
  notReplayable: number;
}

const inWords = ({ decision, largestStep, today, contact }: Omit<Answers, 'reasons'>): string =>
  [decision, largestStep, today, contact].filter((word) => word !== null).join('/');

const lineOf = ({ id, patientId, joint, day, engineVersion, before, again }: AccountedFor): string => {
  const what = `decision ${id}: patient ${patientId}, ${joint}, ${day}, version ${engineVersion}`;
  if (again.outcome === 'not-replayable') return `${what}: cannot be decided again: ${again.reason}`;
  if (again.outcome === 'same') return `${what}: the same`;
  const rules = again.rules.length > 0 ? again.rules.join(', ') : 'the same rules, with another effect';
  return `${what}: was ${inWords(before)}, is ${inWords(again.after)}; rules that differ: ${rules}`;
};

const four = ({ decision, largestStep, today, contact }: Answers) => ({
  decision,
  largestStep,
  today,
  contact,
});

const rowOf = ({ id, clinicId, patientId, joint, day, engineVersion, before, again }: AccountedFor) => ({
  ...{ decision: id, clinic: clinicId, patient: patientId, joint, day, engineVersion },
  before: four(before),
  ...(again.outcome === 'different' ? { ...again, after: four(again.after) } : again),
});

const count = (counts: Counts, { again }: AccountedFor): void => {
  if (again.outcome === 'same') counts.same += 1;
  else if (again.outcome === 'different') counts.different += 1;
  else counts.notReplayable += 1;
};

/** The code to end with: 1 where one does not come out as it was stored. */
export const accountFor = async (
  { store, clinicId }: Access,
  patientId: string | null,
  isJson: boolean,
): Promise<number> => {
  const whose = { clinicId, patientId: patientId ?? undefined };
  const stored = await decisionsStored(store, whose);
  const counts: Counts = { same: 0, different: 0, notReplayable: 0 };
  let looked = 0;
  for await (const one of decideAllAgain(store, whose)) {
    count(counts, one);
    if (one.again.outcome !== 'same') console.log(isJson ? JSON.stringify(rowOf(one)) : lineOf(one));
    looked += 1;
    if (looked % 10_000 === 0) say(`${looked} of ${stored} decisions decided again`);
  }
  const { same, different, notReplayable } = counts;
  console.log(
    isJson
      ? JSON.stringify({ clinic: clinicId, stored, ...counts })
      : `clinic ${clinicId}: ${stored} decisions stored: ${same} the same, ${different} different, ${notReplayable} cannot be decided again`,
  );
  return different + notReplayable > 0 ? 1 : 0;
};
