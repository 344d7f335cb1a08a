'use client';
/** A reducer whose state is written to this phone at each step, so that a reload goes on where it stood. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { phoneStore } from './phone-store.ts';

export interface KeptState<S, E> {
  /** undefined while the phone is being read; null when nothing is running. */
  readonly state: S | null | undefined;
  readonly dispatch: (event: E) => void;
  readonly begin: (state: S) => void;
  /** Forgets the copy on the phone; the page may still show the state. */
  readonly release: () => void;
  readonly drop: () => void;
}

export const useKeptReducer = <S, E>(
  key: string,
  reducer: (state: S, event: E) => S,
  isReadable: (value: S) => boolean,
): KeptState<S, E> => {
  const [state, setState] = useState<S | null | undefined>(undefined);
  const held = useRef<S | null>(null);
  const readable = useRef(isReadable);
  useEffect(() => {
    let isOver = false;
    phoneStore().then(async (store) => {
      const value = await store.get<S>(key);
      if (isOver) return;
      held.current = value !== undefined && readable.current(value) ? value : null;
      setState(held.current);
    });
    return () => {
      isOver = true;
    };
  }, [key]);
  const put = useCallback(
    (next: S) => {
      held.current = next;
      setState(next);
      void phoneStore().then((store) => store.set(key, next));
    },
    [key],
  );
  const dispatch = useCallback(
    (event: E) => {
      if (held.current !== null) put(reducer(held.current, event));
    },
    [reducer, put],
  );
  const release = useCallback(() => void phoneStore().then((store) => store.remove(key)), [key]);
  const drop = useCallback(() => {
    held.current = null;
    setState(null);
    release();
  }, [release]);
  return { state, dispatch, begin: put, release, drop };
};
