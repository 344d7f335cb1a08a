/** What a decision changes for the patient in one exercise, as data: the words are found when it is read. */
import type { DoseProposal } from '../decision/dose/proposal.ts';
import type { DoseChange } from '../decision/dose/volume.ts';

export type TellableChange = Pick<DoseChange, 'variable' | 'from' | 'to'>;

export type DoseChangeForPatient =
  | { readonly exerciseId: string; readonly kind: 'stop' | 'same' | 'awaits-signature' }
  | { readonly exerciseId: string; readonly kind: 'changed'; readonly changes: readonly TellableChange[] };

/** `exerciseId` is the exercise as the patient knows it, before any change. */
export const doseChangeForPatient = (
  proposal: Pick<DoseProposal, 'kind' | 'effect' | 'changes'>,
  exerciseId: string,
): DoseChangeForPatient => {
  if (proposal.kind === 'stop') return { exerciseId, kind: 'stop' };
  if (proposal.changes.length === 0) return { exerciseId, kind: 'same' };
  if (proposal.effect === 'awaits-signature') return { exerciseId, kind: 'awaits-signature' };
  const changes = proposal.changes.map(({ variable, from, to }) => ({ variable, from, to }));
  return { exerciseId, kind: 'changed', changes };
};
