/** Decisions of a file that do not come out again, each by one of the two ways of looking back; none is left out. */
import { isDeepStrictEqual } from 'node:util';
import { isSame } from '#core/decision/replay.ts';
import type { Access } from '#data/access.ts';
import type { Store } from '#data/database/store.ts';
import { replayableDecisions } from '#data/decision/replayable-decisions.ts';
import { peopleOf } from '#data/patients/people.ts';
import { decideAllAgain, decisionsStored } from '#data/replay/decide-again.ts';
import { gatherAnew } from '#data/replay/gather-anew.ts';
import { demoClinic, otherClinic } from '#demo/clinic.ts';
import { accessTo } from './told.ts';

const first = '2020-01-01';

const gatheredOtherwise = async (access: Access, patientId: string): Promise<readonly string[]> => {
  const looks = await gatherAnew(access, patientId, first);
  const stored = await replayableDecisions(access, patientId, first);
  return stored.flatMap((one) => {
    const look = looks.find(({ look: { instant } }) => instant === one.evaluatedAt);
    const again = look?.joints.find(({ joint }) => joint === one.joint);
    const isAlike = again && isSame(one, again.answers) && isDeepStrictEqual(again.facts, one.facts);
    return isAlike ? [] : [`gathered anew: ${one.id}`];
  });
};

export const replayedOtherwise = async (store: Store): Promise<readonly string[]> => {
  const found: string[] = [];
  let looked = 0;
  for await (const { id, again } of decideAllAgain(store)) {
    looked += 1;
    if (again.outcome !== 'same') found.push(`decided again: ${id}`);
  }
  if (looked === 0 || looked !== (await decisionsStored(store)))
    found.push(`${looked} decisions accounted for`);
  for (const place of [demoClinic, otherClinic]) {
    const access = accessTo(store, place);
    for (const { id } of await peopleOf(access)) found.push(...(await gatheredOtherwise(access, id)));
  }
  return found;
};
