/** Of a step only what differs from the record is kept, so that a draft never hides what a colleague puts right. */
import { useMemo } from 'react';
import { changedFrom } from '../forms/changed-from.ts';
import { type DraftState, useDraft } from '../forms/use-draft.ts';
import type { Typed, TypedStep } from './first-visit-state.ts';

interface DraftOf {
  readonly patientId: string;
  readonly step: TypedStep;
  readonly typed: Typed;
  readonly onRecord: Typed;
  readonly isDone: boolean;
}

export const useStepDraft = ({ patientId, step, typed, onRecord, isDone }: DraftOf): DraftState => {
  const changes = useMemo(() => changedFrom(onRecord, typed), [typed, onRecord]);
  return useDraft(patientId, `first-visit-${step}`, changes, isDone);
};
