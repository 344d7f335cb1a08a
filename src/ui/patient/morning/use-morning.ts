'use client';
/** The morning check of this phone, with what was said the morning before. */
import { useCallback, useEffect, useState } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import type { OutboxHandle } from '../outbox/use-outbox.ts';
import { lastMorningKey, morningDraftKey, phoneStore } from '../phone/phone-store.ts';
import { useKeptReducer } from '../phone/use-kept-reducer.ts';
import {
  beginMorning,
  type LastMorning,
  lastMorningOf,
  type MorningDraft,
  type MorningEvent,
  morningEntryOf,
  morningReducer,
} from './morning.ts';

const isReadable = (draft: MorningDraft): boolean => draft.shape === 1;

export interface MorningHandle {
  readonly draft: MorningDraft | null | undefined;
  readonly last: LastMorning;
  readonly send: (event: MorningEvent) => void;
  /** Goes on with a check of today that was left, or begins one. */
  readonly begin: () => MorningDraft;
}

export const useMorning = (
  view: TodayView,
  ownerId: string,
  clock: () => number,
  save: OutboxHandle['save'],
): MorningHandle => {
  const kept = useKeptReducer<MorningDraft, MorningEvent>(
    morningDraftKey(ownerId),
    morningReducer,
    isReadable,
  );
  const { state: draft, dispatch, begin: put, release } = kept;
  const [last, setLast] = useState<LastMorning>({});
  useEffect(() => {
    phoneStore()
      .then((store) => store.get<LastMorning>(lastMorningKey(ownerId)))
      .then((value) => setLast(value ?? {}));
  }, [ownerId]);
  useEffect(() => {
    if (!draft || draft.endedAt === null) return;
    save('morning', morningEntryOf(draft, clock()));
    void phoneStore().then((store) => store.set(lastMorningKey(ownerId), lastMorningOf(draft)));
    release();
  }, [draft, save, release, clock, ownerId]);
  const begin = useCallback(() => {
    if (draft && draft.endedAt === null && draft.day === view.day) return draft;
    const begun = beginMorning({
      entryId: crypto.randomUUID(),
      ownerId,
      day: view.day,
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      asksStiffness: view.asksStiffness,
      asksSwelling: view.asksSwelling,
      joints: view.followedJoints,
    });
    put(begun);
    return begun;
  }, [draft, view, ownerId, put]);
  return { draft, last, send: dispatch, begin };
};
