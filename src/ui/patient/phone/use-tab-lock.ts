'use client';
/**
 * Which of several open tabs writes: the one that holds the lock. Another tab shows so, and may take it
 * over; the first then stops at once. Where the browser has no locks, every tab writes and the last wins.
 */
import { useCallback, useEffect, useRef, useState } from 'react';

export interface TabLock {
  /** undefined while it is being asked for. */
  readonly isLocked: boolean | undefined;
  readonly takeOver: () => void;
}

export const useTabLock = (name: string): TabLock => {
  const [isLocked, setLocked] = useState<boolean | undefined>(undefined);
  const held = useRef<Set<() => void>>(new Set());
  const isOver = useRef(false);
  const ask = useCallback(
    (how: LockOptions) => {
      const keep = (lock: Lock | null): Promise<void> | undefined => {
        if (isOver.current) return;
        setLocked(lock !== null);
        // Queued: the lock comes here by itself when the other tab is closed.
        if (lock === null) ask({});
        else return new Promise((resolve) => held.current.add(resolve));
      };
      // A lock taken over by another tab ends in an error.
      navigator.locks.request(name, how, keep).catch(() => setLocked(false));
    },
    [name],
  );
  useEffect(() => {
    isOver.current = false;
    if ('locks' in navigator) ask({ ifAvailable: true });
    else setLocked(true);
    return () => {
      isOver.current = true;
      for (const free of held.current) free();
      held.current.clear();
    };
  }, [ask]);
  return { isLocked, takeOver: useCallback(() => ask({ steal: true }), [ask]) };
};
