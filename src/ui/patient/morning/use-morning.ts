'use client';
/** The morning check of this phone. What was said the morning before comes with the day. */
import { useCallback, useEffect, useMemo, useRef } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import { asksShort } from '#core/danger/signs-asked.ts';
import type { Carer } from '#core/record/entry-words.ts';
import { asideMorningKey, morningDraftKey } from '#ui/on-device/phone-store.ts';
import type { OutboxHandle, Owner } from '../outbox/use-outbox.ts';
import { readOwn, removeOwn, writeOwn } from '../phone/own-store.ts';
import { useSavedReducer } from '../phone/use-saved-reducer.ts';
import type { AskedPages } from '../use-asked-pages.ts';
import type { MorningEvent } from './morning.ts';
import type { MorningDraft } from './morning-draft.ts';

/** Until the pages with the questions are there nothing is answered. */
const unchanged = (draft: MorningDraft): MorningDraft => draft;

const isReadable = (draft: MorningDraft): boolean => draft.shape === 1;

export interface MorningHandle {
  readonly draft: MorningDraft | null | undefined;
  readonly send: (event: MorningEvent) => void;
  readonly isSaved: boolean;
  /** Goes on with a check of today that was left, or begins one. */
  readonly begin: (
    day: string,
    asksUrine: boolean,
    enteredAs: Carer | null,
    amends?: string | null,
  ) => MorningDraft;
}

/** The half-answered check of the other day, kept on this phone. */
const useAside = (ownerId: string) => {
  const held = useRef<MorningDraft | null>(null);
  useEffect(() => {
    void readOwn<MorningDraft>(ownerId, asideMorningKey(ownerId)).then((value) => {
      held.current = value && isReadable(value) ? value : null;
    });
  }, [ownerId]);
  const keep = useCallback(
    (draft: MorningDraft | null) => {
      held.current = draft;
      const key = asideMorningKey(ownerId);
      void (draft === null ? removeOwn(key) : writeOwn(ownerId, key, draft)).catch(() => undefined);
    },
    [ownerId],
  );
  return useMemo(() => ({ held, keep }), [keep]);
};

/** What the clinic asks about each morning. */
const askedOn = (view: TodayView) => ({
  asksStiffness: view.asksStiffness,
  asksSwelling: view.asksSwelling,
  swellingNotAsked: view.swellingNotAsked ?? [],
  asksFatigue: view.asksFatigue ?? false,
  asksOtherJoint: view.asksOtherJoint ?? false,
  joints: view.followedJoints,
});

export const useMorning = (
  view: TodayView,
  { id: ownerId }: Owner,
  isLocked: boolean,
  clock: () => number,
  save: OutboxHandle['save'],
  asked: AskedPages | null,
): MorningHandle => {
  const saved = useSavedReducer<MorningDraft, MorningEvent>(
    { ownerId, key: morningDraftKey(ownerId), isLocked },
    asked?.morningReducer ?? unchanged,
    isReadable,
  );
  const { state: draft, dispatch, begin: put, isSaved, release } = saved;
  const aside = useAside(ownerId);
  useEffect(() => {
    if (!asked || !draft || draft.endedAt === null) return;
    const [entry, leaves] = asked.morningSent(draft, view.painLookups, clock());
    void save('morning', entry, leaves).then((isStored) => isStored && release());
  }, [asked, draft, save, release, clock, view.painLookups]);
  const begin = useCallback<MorningHandle['begin']>(
    (day, asksUrine, enteredAs, amends = null) => {
      // Nothing can be begun before they are there: the buttons wait for them.
      if (!asked) throw new Error('A morning check is begun before its pages are there.');
      const taken = asked.takenUp(day, draft, aside.held.current);
      if (taken.running !== null && taken.running === draft) return draft;
      aside.keep(taken.aside);
      const begun =
        taken.running ??
        asked.beginMorning({
          entryId: crypto.randomUUID(),
          ownerId,
          day,
          isLate: day < view.day,
          asksUrine,
          enteredAs,
          amends,
          // Of this morning alone: for another day nothing of yesterday is known here.
          asYesterday: day === view.day ? (view.morning.asYesterday ?? null) : null,
          signForm: asksShort(view) ? 'short' : 'list',
          zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
          ...askedOn(view),
        });
      put(begun);
      return begun;
    },
    [asked, draft, view, ownerId, put, aside],
  );
  return { draft, send: dispatch, begin, isSaved };
};
