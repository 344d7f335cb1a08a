'use client';
/** The time now, refreshed each second and whenever the page is seen again after sleep. */
import { useEffect, useState } from 'react';

export const useNow = (clock: () => number, isRunning = true): number => {
  const [now, setNow] = useState(clock);
  useEffect(() => {
    if (!isRunning) return;
    const tick = () => setNow(clock());
    tick();
    const timer = setInterval(tick, 1000);
    document.addEventListener('visibilitychange', tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
    };
  }, [clock, isRunning]);
  return now;
};

/** Asks the browser to keep the screen lit; where it can't, the clocks still keep true time. */
export const useScreenAwake = (isWanted: boolean) => {
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | null = null;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      lock = await navigator.wakeLock.request('screen').catch(() => null);
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [isWanted]);
};

/** One short buzz when something falls due, on phones that can. */
export const useBuzz = (isDue: boolean) => {
  useEffect(() => {
    if (isDue && 'vibrate' in navigator) navigator.vibrate([400, 200, 400]);
  }, [isDue]);
};
