'use client';
/** Runs the outbox in the page: keeps, sends, wakes. One sender at a time over all tabs. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { entriesUnder, entryKey, phoneStore } from '../phone/phone-store.ts';
import {
  type Effect,
  type Entry,
  type EntryKind,
  emptyOutbox,
  type Kept,
  type Outbox,
  type OutboxEvent,
  outboxReducer,
} from './outbox.ts';
import { sendEntry } from './send-entry.ts';

const alone = async <T>(work: () => Promise<T>): Promise<T> =>
  'locks' in navigator ? navigator.locks.request('loadgate-outbox', work) : work();

export interface OutboxHandle {
  readonly state: Outbox;
  /** False when this browser keeps nothing. */
  readonly isLasting: boolean;
  readonly save: (kind: EntryKind, entry: Entry) => void;
  readonly sendNow: () => void;
}

type Dispatch = (event: OutboxEvent) => void;

const run = async (effect: Effect, ownerId: string, clock: () => number, dispatch: Dispatch) => {
  if (effect.type === 'wake') {
    setTimeout(() => dispatch({ type: 'woke', now: clock() }), Math.max(0, effect.at - clock()));
    return;
  }
  if (effect.type === 'send') {
    dispatch(await alone(() => sendEntry(effect.kept, clock)));
    return;
  }
  const store = await phoneStore();
  if (effect.type === 'keep') await store.set(entryKey(ownerId, effect.kept.entryId), effect.kept);
  else await store.remove(entryKey(ownerId, effect.entryId));
};

/** Follows the browser's word on the network, and restores what waits from the last visit. */
const useWaking = (ownerId: string, clock: () => number, dispatch: Dispatch, kept: (is: boolean) => void) =>
  useEffect(() => {
    let isOver = false;
    phoneStore().then(async (store) => {
      const entries = await store.under<Kept>(entriesUnder(ownerId));
      if (isOver) return;
      kept(store.isLasting);
      dispatch({ type: 'restored', entries, now: clock() });
    });
    const online = () => dispatch({ type: 'online', now: clock() });
    const offline = () => dispatch({ type: 'offline', now: clock() });
    const seen = () => document.visibilityState === 'visible' && dispatch({ type: 'woke', now: clock() });
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
  }, [ownerId, clock, dispatch, kept]);

export const useOutbox = (ownerId: string, clock: () => number): OutboxHandle => {
  const held = useRef<Outbox>(emptyOutbox);
  const [state, setState] = useState<Outbox>(emptyOutbox);
  const [isLasting, setLasting] = useState(true);
  const dispatch = useCallback<Dispatch>(
    (event) => {
      const step = outboxReducer(held.current, event);
      held.current = step.state;
      setState(step.state);
      for (const effect of step.effects) void run(effect, ownerId, clock, dispatch);
    },
    [ownerId, clock],
  );
  useWaking(ownerId, clock, dispatch, setLasting);
  const save = useCallback(
    (kind: EntryKind, entry: Entry) => {
      const now = clock();
      const kept: Kept = {
        entryId: entry.entryId,
        ownerId,
        kind,
        entry,
        day: entry.day,
        savedAt: now,
        isUrgent: (entry.redFlags?.length ?? 0) > 0,
        status: 'waiting',
        early: 0,
        clockDoubtful: false,
      };
      dispatch({ type: 'saved', kept, now });
    },
    [ownerId, clock, dispatch],
  );
  const sendNow = useCallback(() => dispatch({ type: 'asked', now: clock() }), [clock, dispatch]);
  return { state, isLasting, save, sendNow };
};
