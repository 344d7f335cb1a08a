/** When the rest after a set is over: nothing after the last set, and before the first. */
import { type ItemDraft, setOf } from './draft.ts';

export const restEndsAt = (item: ItemDraft, set: number): number | null => {
  const { finishedAt } = setOf(item, set);
  return set < 1 || set >= item.dose.sets || finishedAt === null
    ? null
    : finishedAt + item.dose.restSeconds * 1000;
};
