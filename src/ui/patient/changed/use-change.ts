'use client';
/** What is said of a change, kept on this phone until it is sent; a warning sign that is meant goes at once. */
import { useState } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { changeKey } from '#ui/on-device/phone-store.ts';
import type { Arrival } from '../day-state.ts';
import { type Entry, type EntryKind, messageEntry } from '../outbox/entry-kinds.ts';
import { useSavedValue } from '../phone/use-saved-reducer.ts';
import { phoneDay } from '../view-on-day.ts';
import { type ChangeDraft, isNothing, noteOf, nothingSaid, signEntry, slipNote } from './change-draft.ts';

type ChangeStep = '' | 'confirm' | 'place' | 'began' | 'words';

export interface ChangedScreenProps {
  readonly ownerId: string;
  readonly clinic: TodayView['clinic'];
  /** Asked about first. */
  readonly followedJoints: TodayView['followedJoints'];
  readonly hasCuff: boolean;
  readonly step: string;
  readonly clock: () => number;
  readonly arrivalOf: (entryId: string) => Arrival;
  readonly onStep: (step: ChangeStep) => void;
  /** Whether the phone could keep it. */
  readonly onSave: (kind: EntryKind, entry: Entry) => Promise<boolean>;
  readonly onHome: () => void;
}

/** Told from this page: a sign, and a note. */
interface Told {
  readonly flags: readonly RedFlag[];
  readonly signId: string | null;
  readonly noteId: string | null;
}

export const useChange = ({ ownerId, clock, onSave, onStep }: ChangedScreenProps) => {
  const [told, setTold] = useState<Told>({ flags: [], signId: null, noteId: null });
  const saved = useSavedValue<ChangeDraft>({ ownerId, key: changeKey(ownerId) }, (draft) =>
    Array.isArray(draft.ticked),
  );
  const draft = saved.state ?? nothingSaid;
  const say = (more: Partial<ChangeDraft>) => {
    const next = { ...draft, ...more };
    if (isNothing(next)) saved.drop();
    else saved.begin(next);
  };
  const sending = () => ({ entryId: crypto.randomUUID(), day: phoneDay(clock()) });
  /** Meant, it goes to the clinic at once: nothing else is waited for. */
  const confirm = (isSlip: boolean) => {
    const at = sending();
    say({ ticked: [] });
    if (isSlip) {
      void onSave('message', messageEntry(at, slipNote(draft.ticked)));
      return onStep('place');
    }
    void onSave('sign', signEntry(at, draft.ticked));
    setTold({ ...told, flags: draft.ticked, signId: at.entryId });
  };
  const send = async () => {
    const at = sending();
    if (await onSave('message', messageEntry(at, noteOf(draft)))) saved.drop();
    setTold({ ...told, noteId: at.entryId });
  };
  return { told, draft, isReady: saved.state !== undefined, say, confirm, send };
};

type ChangeHandle = ReturnType<typeof useChange>;
export type ChangePage = ChangedScreenProps & { readonly change: ChangeHandle };
