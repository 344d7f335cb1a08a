'use client';
/** A reducer whose state is written to this phone at each step, so that a reload goes on where it stood. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { readOwn, removeOwn, writeOwn } from './own-store.ts';

export interface SavedState<S, E> {
  /** undefined while the phone is being read; null when nothing is running. */
  readonly state: S | null | undefined;
  readonly dispatch: (event: E) => void;
  readonly begin: (state: S) => void;
  /** False once the phone had no room for the newest state: a reload would go back behind it. */
  readonly isSaved: boolean;
  /** Forgets the copy on the phone; the page may still show the state. */
  readonly release: () => void;
  readonly drop: () => void;
}

/** Whether the newest answer stands on the phone yet: read by whoever drives the page by script. */
const mark = (draft: 'writing' | 'written'): void => {
  document.documentElement.dataset.draft = draft;
};

/** Writes one after the other and always the latest: sealing takes its time, and an older state must not land on a newer. */
const writer = (ownerId: string, key: string, translate: (isSaved: boolean) => void) => {
  let last: Promise<void> = Promise.resolve();
  let newest = 0;
  const queue = (work: () => Promise<void>, isStale: () => boolean) => {
    // A phone without room keeps the state in this page, and the page says so.
    last = last
      .then(() => (isStale() ? undefined : work()))
      .then(
        () => {
          translate(true);
          if (!isStale()) mark('written');
        },
        () => translate(false),
      );
  };
  return (value: unknown) => {
    newest += 1;
    const mine = newest;
    mark('writing');
    queue(
      () => (value === null ? removeOwn(key) : writeOwn(ownerId, key, value)),
      () => mine !== newest,
    );
  };
};

/** `isHeld` false: another tab runs it, so it is neither read nor written here. */
export const useSavedReducer = <S, E>(
  { ownerId, key, isLocked }: { readonly ownerId: string; readonly key: string; readonly isLocked: boolean },
  reducer: (state: S, event: E) => S,
  isReadable: (value: S) => boolean,
): SavedState<S, E> => {
  const [state, setState] = useState<S | null | undefined>(undefined);
  const held = useRef<S | null>(null);
  const readable = useRef(isReadable);
  const [isSaved, setSaved] = useState(true);
  const [write] = useState(() => writer(ownerId, key, setSaved));
  useEffect(() => {
    let isOver = false;
    if (!isLocked) {
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
  }, [ownerId, key, isLocked]);
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
  return { state, dispatch, begin: put, isSaved, release, drop };
};

const newest = <S>(_: S, next: S): S => next;

/** The same for a value that is typed or chosen and of which the newest counts. */
export const useSavedValue = <S>(
  place: { readonly ownerId: string; readonly key: string },
  isReadable: (value: S) => boolean,
): SavedState<S, S> => useSavedReducer<S, S>({ ...place, isLocked: true }, newest, isReadable);
