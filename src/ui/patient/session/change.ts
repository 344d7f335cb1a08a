/** Small changes to a draft, shared by the reducers. */
import { emptySet, type ItemDraft, type SessionDraft, type SetDraft } from './draft.ts';
import { nextStep } from './steps.ts';

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

/** On to the next step, or back to the check page when the step was opened from there. */
export const forward = (before: SessionDraft, after: SessionDraft = before): SessionDraft =>
  after.isChanging
    ? { ...after, isChanging: false, step: 'check' }
    : { ...after, step: nextStep(before, after) };
