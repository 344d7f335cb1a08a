'use client';
/** Answers kept on this phone until they are sent, so that a reload loses none. */
import { useState } from 'react';
import type { QuestionsDue, TodayView } from '#api/patient/today-view.ts';
import type { OwnAnswer } from '#core/assessment/questionnaires/questionnaire.ts';
import type { Carer } from '#core/record/entry-words.ts';
import { homeQuestionsKey } from '#ui/on-device/phone-store.ts';
import type { Arrival } from '../day-state.ts';
import type { Entry, EntryKind } from '../outbox/entry-kinds.ts';
import { useSavedValue } from '../phone/use-saved-reducer.ts';
import { phoneDay } from '../view-on-day.ts';
import { answered, begun, type HomeDraft, homeAnswersEntry, isOf, stepAfter } from './home-draft.ts';

export interface HomeQuestionsProps {
  readonly ownerId: string;
  readonly due: QuestionsDue;
  readonly clinic: TodayView['clinic'];
  readonly enteredAs: Carer | null;
  readonly step: string;
  readonly clock: () => number;
  readonly arrivalOf: (entryId: string) => Arrival;
  readonly onStep: (step: string) => void;
  /** Whether the phone could keep it. */
  readonly onSave: (kind: EntryKind, entry: Entry) => Promise<boolean>;
  readonly onHome: () => void;
}

export const useHomeAnswers = (props: HomeQuestionsProps) => {
  const { ownerId, due, clock, enteredAs, onSave, onStep } = props;
  const [sentId, setSentId] = useState<string | null>(null);
  const saved = useSavedValue<HomeDraft>({ ownerId, key: homeQuestionsKey(ownerId) }, (kept) =>
    Array.isArray(kept.slots),
  );
  const draft = saved.state && isOf(saved.state, due) ? saved.state : begun(due);
  const say = (place: number, answer: OwnAnswer): HomeDraft => {
    const next = answered(draft, place, answer);
    saved.begin(next);
    return next;
  };
  const send = async () => {
    const entryId = crypto.randomUUID();
    const entry = homeAnswersEntry({ entryId, day: phoneDay(clock()), enteredAs }, draft);
    setSentId(entryId);
    if (await onSave('home-answers', entry)) saved.drop();
  };
  return {
    draft,
    sentId,
    isReady: saved.state !== undefined,
    /** Kept as it is typed. */
    type: say,
    /** Goes on to what follows. */
    answer: (place: number, answer: OwnAnswer) => onStep(stepAfter(say(place, answer), place)),
    send,
  };
};

export type HomeAnswersHandle = ReturnType<typeof useHomeAnswers>;
