'use client';
/**
 * The time as the server has it: what the phone's clock lacks is measured each time the page is loaded or
 * seen again, and put to it. Without an answer the phone's own clock stands, so that one put right by hand
 * is not put wrong by an old measure.
 */
import { useCallback, useEffect, useRef, useState } from 'react';

/** Servers tell their time in whole seconds, and an answer takes its time. */
const leastMs = 60_000;
/** What is shown is shown by then, measured or not. */
const patienceMs = 3_000;

/** Server minus phone, ms; null where nobody answered. */
const measured = async (): Promise<number | null> => {
  try {
    const began = performance.now();
    const answer = await fetch('/healthz', { method: 'HEAD', cache: 'no-store' });
    const at = Date.parse(answer.headers.get('date') ?? '');
    return Number.isNaN(at) ? null : at + (performance.now() - began) / 2 - Date.now();
  } catch {
    return null;
  }
};

export interface RightClock {
  readonly clock: () => number;
  /** What the phone's clock lacks, ms; 0 where it is right or not known. */
  readonly lacksMs: number;
  /** The first measure is over, or was given up. */
  readonly isMeasured: boolean;
}

/** `clockOffset`: clinical minus system time of the demo, ms. */
export const useRightClock = (clockOffset: number): RightClock => {
  const lacks = useRef(0);
  const [state, setState] = useState({ lacksMs: 0, isMeasured: false });
  useEffect(() => {
    let isOver = false;
    const look = async () => {
      if (document.visibilityState !== 'visible') return;
      const difference = (await measured()) ?? 0;
      if (isOver) return;
      lacks.current = Math.abs(difference) < leastMs ? 0 : Math.round(difference);
      setState({ lacksMs: lacks.current, isMeasured: true });
    };
    void look();
    const timer = setTimeout(() => setState((before) => ({ ...before, isMeasured: true })), patienceMs);
    document.addEventListener('visibilitychange', look);
    return () => {
      isOver = true;
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
  const clock = useCallback(() => Date.now() + clockOffset + lacks.current, [clockOffset]);
  return { clock, ...state };
};
