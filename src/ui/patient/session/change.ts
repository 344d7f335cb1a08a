/** Small changes to a draft, shared by the reducers. */
import { emptySet, type ItemDraft, type SessionDraft, type SetDraft } from './draft.ts';
import { openSteps } from './open-steps.ts';
import { partsOf } from './step-names.ts';
import { afterSteps, nextStep, showsOffer, stepsOf } from './steps.ts';

export const withItem = (
  draft: SessionDraft,
  index: number,
  change: (item: ItemDraft) => ItemDraft,
): SessionDraft => ({
  ...draft,
  items: draft.items.map((item, at) => (at === index ? change(item) : item)),
});

export const withSet = (
  draft: SessionDraft,
  at: { readonly item: number; readonly set: number },
  change: Partial<SetDraft>,
): SessionDraft =>
  withItem(draft, at.item, (item) => {
    const sets = Array.from(
      { length: Math.max(item.sets.length, at.set) },
      (_, n) => item.sets[n] ?? emptySet,
    );
    return { ...item, sets: sets.map((set, n) => (n === at.set - 1 ? { ...set, ...change } : set)) };
  });

/** A set that ends here; one that was counted before is not counted again. */
export const stopped = (
  { items }: SessionDraft,
  at: { readonly item: number; readonly set: number },
): Pick<SetDraft, 'isStopped' | 'asksCount'> => {
  const repetitions = items[at.item]?.sets[at.set - 1]?.repetitions ?? null;
  return { isStopped: true, asksCount: repetitions === null };
};

/** The step itself, or where its exercise was ended by the answers, what comes after that exercise. */
const stillThere = (draft: SessionDraft, step: string): string => {
  const steps = stepsOf(draft);
  if (steps.includes(step)) return step;
  const { item } = partsOf(step);
  const after: readonly string[] = afterSteps(draft);
  return steps.find((one) => partsOf(one).item > item || after.includes(one)) ?? 'check';
};

/** What was asked again is answered: what it changes is told, then the session goes on where it stood. */
const goneBack = (before: SessionDraft, after: SessionDraft, backTo: string): SessionDraft => {
  const next = nextStep(before, after);
  if (partsOf(next).name === 'before') return { ...after, step: next };
  const isTold = partsOf(before.step).name === 'offer' || !showsOffer(after);
  return isTold ? { ...after, backTo: null, step: stillThere(after, backTo) } : { ...after, step: 'offer' };
};

/** A changed answer may open questions of its own, which come first. */
const backToCheck = (draft: SessionDraft): SessionDraft => {
  const [open] = openSteps(draft);
  return open === undefined ? { ...draft, isChanging: false, step: 'check' } : { ...draft, step: open };
};

/** On to the next step, or back to the check page when the step was opened from there. */
export const forward = (before: SessionDraft, after: SessionDraft = before): SessionDraft =>
  after.isChanging
    ? backToCheck(after)
    : after.backTo
      ? goneBack(before, after, after.backTo)
      : { ...after, step: nextStep(before, after) };
