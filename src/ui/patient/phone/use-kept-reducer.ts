'use client';
/** A reducer whose state is written to this phone at each step, so that a reload goes on where it stood. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { readOwn, removeOwn, writeOwn } from './own-store.ts';

export interface KeptState<S, E> {
  /** undefined while the phone is being read; null when nothing is running. */
  readonly state: S | null | undefined;
  readonly dispatch: (event: E) => void;
  readonly begin: (state: S) => void;
  /** Forgets the copy on the phone; the page may still show the state. */
  readonly release: () => void;
  readonly drop: () => void;
}

/** Writes one after the other and always the latest: sealing takes its time, and an older state must not land on a newer. */
const writer = (ownerId: string, key: string) => {
  let last: Promise<void> = Promise.resolve();
  let newest = 0;
  const queue = (work: () => Promise<void>, isStale: () => boolean) => {
    // A phone without room keeps the state in this page; the outbox says so when the entry is kept.
    last = last.then(() => (isStale() ? undefined : work())).catch(() => undefined);
  };
  return (value: unknown) => {
    newest += 1;
    const mine = newest;
    queue(
      () => (value === null ? removeOwn(key) : writeOwn(ownerId, key, value)),
      () => mine !== newest,
    );
  };
};

/** `isHeld` false: another tab runs it, so it is neither read nor written here. */
export const useKeptReducer = <S, E>(
  { ownerId, key, isHeld }: { readonly ownerId: string; readonly key: string; readonly isHeld: boolean },
  reducer: (state: S, event: E) => S,
  isReadable: (value: S) => boolean,
): KeptState<S, E> => {
  const [state, setState] = useState<S | null | undefined>(undefined);
  const held = useRef<S | null>(null);
  const readable = useRef(isReadable);
  const [write] = useState(() => writer(ownerId, key));
  useEffect(() => {
    let isOver = false;
    if (!isHeld) {
      held.current = null;
      setState(undefined);
      return;
    }
    readOwn<S>(ownerId, key).then((value) => {
      if (isOver) return;
      held.current = value !== undefined && readable.current(value) ? value : null;
      setState(held.current);
    });
    return () => {
      isOver = true;
    };
  }, [ownerId, key, isHeld]);
  const put = useCallback(
    (next: S) => {
      held.current = next;
      setState(next);
      write(next);
    },
    [write],
  );
  const dispatch = useCallback(
    (event: E) => {
      if (held.current !== null) put(reducer(held.current, event));
    },
    [reducer, put],
  );
  const release = useCallback(() => write(null), [write]);
  const drop = useCallback(() => {
    held.current = null;
    setState(null);
    release();
  }, [release]);
  return { state, dispatch, begin: put, release, drop };
};
