'use client';
/** The running session of this phone: begun, kept at each step, sent when it ends. */
import { useCallback, useEffect } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import type { OutboxHandle } from '../outbox/use-outbox.ts';
import { draftKey } from '../phone/phone-store.ts';
import { useKeptReducer } from '../phone/use-kept-reducer.ts';
import { beginSession } from './begin.ts';
import type { SessionDraft } from './draft.ts';
import { sessionEntryOf } from './entry.ts';
import type { SessionEvent } from './events.ts';
import { sessionReducer } from './session-reducer.ts';

const isReadable = (draft: SessionDraft): boolean => draft.shape === 1;

export interface SessionHandle {
  readonly draft: SessionDraft | null | undefined;
  readonly send: (event: SessionEvent) => void;
  readonly begin: (isLighter: boolean) => SessionDraft;
  readonly drop: () => void;
}

export const useSession = (
  view: TodayView,
  ownerId: string,
  clock: () => number,
  save: OutboxHandle['save'],
): SessionHandle => {
  const kept = useKeptReducer<SessionDraft, SessionEvent>(draftKey(ownerId), sessionReducer, isReadable);
  const { state: draft, dispatch, begin: put, release, drop } = kept;
  useEffect(() => {
    // Also after a crash between the end and the keeping: the entry has one id, so it is kept once.
    if (!draft || draft.endedAt === null) return;
    save('session', sessionEntryOf(draft, clock()));
    release();
  }, [draft, save, release, clock]);
  const begin = useCallback(
    (isLighter: boolean) => {
      const begun = beginSession({
        view,
        ownerId,
        entryId: crypto.randomUUID(),
        zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
        now: Math.round(clock()),
        isLighter,
      });
      put(begun);
      return begun;
    },
    [view, ownerId, clock, put],
  );
  return { draft, send: dispatch, begin, drop };
};
