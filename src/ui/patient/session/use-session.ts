'use client';
/** The running session of this phone: begun, kept at each step, sent when it ends. */
import { useCallback, useEffect } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import type { Carer } from '#core/record/entry-words.ts';
import { cuffOnKey, draftKey, phoneStore } from '#ui/on-device/phone-store.ts';
import type { OutboxHandle, Owner } from '../outbox/use-outbox.ts';
import { useSavedReducer } from '../phone/use-saved-reducer.ts';
import type { AskedPages } from '../use-asked-pages.ts';
import { phoneDay } from '../view-on-day.ts';
import type { SessionDraft } from './draft.ts';
import type { SessionEvent } from './events.ts';
import { isCuffOn } from './restriction.ts';
import type { Timed } from './session-reducer.ts';

/** Until the pages with the questions are there nothing is answered. */
const unchanged = (draft: SessionDraft): SessionDraft => draft;

const isReadable = (draft: SessionDraft): boolean => draft.shape === 1;

/** Read from the phone, or the phone picked up again: a session that was left long ago asks what is true now. */
const useLookedAt = (isRead: boolean, send: (event: SessionEvent) => void) =>
  useEffect(() => {
    const seen = () => {
      if (isRead && document.visibilityState === 'visible') send({ type: 'resumed' });
    };
    seen();
    document.addEventListener('visibilitychange', seen);
    return () => document.removeEventListener('visibilitychange', seen);
  }, [isRead, send]);

/** What leads away from its clock asks for this: signing out, also on another page. */
export const useCuffMark = (ownerId: string, draft: SessionDraft | null | undefined) => {
  const isOn = draft?.endedAt === null && draft.items.some(isCuffOn);
  const isRead = draft !== undefined;
  useEffect(() => {
    if (!isRead) return;
    const mark = async () => {
      const store = await phoneStore();
      await (isOn ? store.set(cuffOnKey(ownerId), true) : store.remove(cuffOnKey(ownerId)));
    };
    void mark().catch(() => undefined);
  }, [ownerId, isOn, isRead]);
};

export interface SessionHandle {
  readonly draft: SessionDraft | null | undefined;
  readonly send: (event: SessionEvent) => void;
  readonly begin: (isEasierSession: boolean, enteredAs: Carer | null) => SessionDraft;
  readonly isSaved: boolean;
  readonly drop: () => void;
}

export const useSession = (
  view: TodayView,
  { id: ownerId }: Owner,
  isLocked: boolean,
  clock: () => number,
  save: OutboxHandle['save'],
  asked: AskedPages | null,
): SessionHandle => {
  const saved = useSavedReducer<SessionDraft, Timed>(
    { ownerId, key: draftKey(ownerId), isLocked },
    asked?.timedReducer ?? unchanged,
    isReadable,
  );
  const { state: draft, dispatch, begin: put, isSaved, release, drop } = saved;
  useEffect(() => {
    // Also after a crash between the end and the keeping: the entry has one id, so it is kept once.
    if (!asked || !draft || draft.endedAt === null) return;
    // The draft goes once the entry stands in the store: a crash between the two, or no room, loses neither.
    void save('session', asked.sessionEntryOf(draft, clock())).then((isStored) => isStored && release());
  }, [asked, draft, save, release, clock]);
  const begin = useCallback(
    (isEasierSession: boolean, enteredAs: Carer | null) => {
      // Nothing can be begun before they are there: the buttons wait for them.
      if (!asked) throw new Error('A session is begun before its pages are there.');
      const begun = asked.beginSession({
        view,
        ownerId,
        entryId: crypto.randomUUID(),
        zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
        now: Math.round(clock()),
        clockLacksMs: Math.round(clock() - Date.now() - view.clockOffset),
        isEasierSession,
        enteredAs,
      });
      put(begun);
      return begun;
    },
    [asked, view, ownerId, clock, put],
  );
  const send = useCallback(
    (event: SessionEvent) => {
      const now = Math.round(clock());
      // By the clock and not by the page: a kept page may be of the day the session was begun.
      dispatch({ event, now, day: phoneDay(now) });
    },
    [dispatch, clock],
  );
  useLookedAt(asked !== null && draft !== undefined, send);
  return { draft, send, begin, isSaved, drop };
};
