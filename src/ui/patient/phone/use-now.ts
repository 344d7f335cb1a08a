'use client';
/** The time now, refreshed each second and whenever the page is seen again after sleep. */
import { useEffect, useState } from 'react';
import { chosenSound } from '../preferences/chosen.ts';
import { playNotes } from './notes.ts';

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
    let isOver = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      lock = await navigator.wakeLock.request('screen').catch(() => null);
      // Granted after the session had ended: it goes at once.
      if (isOver) void lock?.release();
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [isWanted]);
};

/** A buzz, and a sound where it was chosen, when something falls due. What is due is always shown as well. */
export const useBuzz = (isDue: boolean) => {
  useEffect(() => {
    const sound = isDue ? chosenSound() : 'none';
    if (sound !== 'none' && 'vibrate' in navigator) navigator.vibrate([400, 200, 400]);
    if (sound === 'tone') playNotes([660, 880]);
  }, [isDue]);
};
