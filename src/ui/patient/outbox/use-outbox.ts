'use client';
/** Runs the outbox in the page: seals, keeps, sends, wakes. One sender at a time over all tabs. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { canEncrypt, encryptEntry } from '#ui/on-device/encrypt-entry.ts';
import { entriesUnder, entryKey, phoneStore } from '#ui/on-device/phone-store.ts';
import type { Entry, EntryKind } from './entry-kinds.ts';
import {
  type Effect,
  emptyOutbox,
  type Outbox,
  type OutboxEvent,
  outboxReducer,
  type Saved,
} from './outbox.ts';
import { sendEntry } from './send-entry.ts';

const alone = async <T>(work: () => Promise<T>): Promise<T> =>
  'locks' in navigator ? navigator.locks.request('loadgate-outbox', work) : work();

/** Whose entries these are, and the key of the clinic they are encrypted to. */
export interface Owner {
  readonly id: string;
  readonly clinicKey: string;
}

export interface OutboxHandle {
  readonly state: Outbox;
  /** False when this browser keeps nothing, or had no room left for an entry. */
  readonly isLasting: boolean;
  /** Whether the entry stands in the phone's store: only then may the draft go. */
  readonly save: (kind: EntryKind, entry: Entry, leaves?: Saved['leaves']) => Promise<boolean>;
  readonly sendNow: () => void;
}

type Dispatch = (event: OutboxEvent) => void;

interface OutboxContext {
  readonly ownerId: string;
  readonly clock: () => number;
  readonly dispatch: Dispatch;
  readonly onNoRoom: () => void;
}

/** Another tab may have sent it meanwhile; its word in the store is then as good as the clinic's. */
const sendUnlessKnown = async (saved: Saved, { ownerId, clock }: OutboxContext): Promise<OutboxEvent> => {
  const stored = await (await phoneStore()).get<Saved>(entryKey(ownerId, saved.entryId));
  if (stored?.status !== 'stored') return sendEntry(saved, clock);
  const { entryId, clockDoubtful } = stored;
  return { type: 'answered', entryId, stored: 'known', clockDoubtful, now: clock() };
};

const run = async (effect: Effect, at: OutboxContext) => {
  const { clock, dispatch, ownerId } = at;
  if (effect.type === 'wake') {
    setTimeout(() => dispatch({ type: 'woke', now: clock() }), Math.max(0, effect.at - clock()));
    return;
  }
  if (effect.type === 'send') {
    dispatch(await alone(() => sendUnlessKnown(effect.saved, at)));
    return;
  }
  const store = await phoneStore();
  if (effect.type === 'forget') await store.remove(entryKey(ownerId, effect.entryId));
  else await store.set(entryKey(ownerId, effect.saved.entryId), effect.saved).catch(at.onNoRoom);
};

/** Follows the browser's word on the network, and restores what waits from the last visit. */
const useWaking = (ownerId: string, clock: () => number, dispatch: Dispatch, saved: (is: boolean) => void) =>
  useEffect(() => {
    let isOver = false;
    const restore = async () => {
      const store = await phoneStore();
      const entries = await store.under<Saved>(entriesUnder(ownerId));
      if (isOver) return;
      saved(store.isLasting);
      dispatch({ type: 'restored', entries, now: clock() });
    };
    void restore();
    // Without this the browser may clear the store when the phone runs out of room.
    void navigator.storage?.persist?.().catch(() => false);
    const online = () => dispatch({ type: 'online', now: clock() });
    const offline = () => dispatch({ type: 'offline', now: clock() });
    const seen = () => {
      if (document.visibilityState !== 'visible') return;
      // What another tab saved is sent from here as well, should that tab be gone.
      void restore();
      dispatch({ type: 'woke', now: clock() });
    };
    if (!navigator.onLine) offline();
    window.addEventListener('online', online);
    window.addEventListener('offline', offline);
    document.addEventListener('visibilitychange', seen);
    return () => {
      isOver = true;
      window.removeEventListener('online', online);
      window.removeEventListener('offline', offline);
      document.removeEventListener('visibilitychange', seen);
    };
  }, [ownerId, clock, dispatch, saved]);

const savedOf = async (
  owner: Owner,
  {
    kind,
    entry,
    leaves,
    savedAt,
  }: { kind: EntryKind; entry: Entry; leaves: Saved['leaves']; savedAt: number },
): Promise<Saved> => {
  const isSealing = canEncrypt();
  return {
    entryId: entry.entryId,
    ownerId: owner.id,
    kind,
    entry: isSealing ? null : entry,
    encrypted: isSealing ? await encryptEntry(owner.clinicKey, owner.id, entry) : null,
    day: entry.day,
    savedAt,
    ...('amends' in entry && entry.amends ? { amends: entry.amends } : {}),
    ...('homeQuestionsId' in entry ? { homeQuestionsId: entry.homeQuestionsId } : {}),
    isUrgent: (entry.redFlags?.length ?? 0) > 0,
    ...(leaves?.length ? { leaves } : {}),
    status: 'waiting',
    early: 0,
    clockDoubtful: false,
  };
};

export const useOutbox = (owner: Owner, clock: () => number): OutboxHandle => {
  const ownerId = owner.id;
  const held = useRef<Outbox>(emptyOutbox);
  const [state, setState] = useState<Outbox>(emptyOutbox);
  const [isLasting, setLasting] = useState(true);
  const dispatch = useCallback(
    function translate(event: OutboxEvent) {
      const step = outboxReducer(held.current, event);
      held.current = step.state;
      setState(step.state);
      const onNoRoom = () => setLasting(false);
      for (const effect of step.effects) void run(effect, { ownerId, clock, dispatch: translate, onNoRoom });
    },
    [ownerId, clock],
  );
  useWaking(ownerId, clock, dispatch, setLasting);
  const save = useCallback(
    async (kind: EntryKind, entry: Entry, leaves?: Saved['leaves']) => {
      const now = clock();
      const saved = await savedOf(owner, { kind, entry, leaves, savedAt: now });
      const store = await phoneStore();
      const isSaved = await store.set(entryKey(ownerId, saved.entryId), saved).then(
        () => true,
        () => false,
      );
      if (!isSaved) setLasting(false);
      dispatch({ type: 'saved', saved, now });
      return isSaved;
    },
    [owner, ownerId, clock, dispatch],
  );
  const sendNow = useCallback(() => dispatch({ type: 'asked', now: clock() }), [clock, dispatch]);
  return { state, isLasting, save, sendNow };
};
