'use client';
/** The steady clock of one session; what it showed stands in this tab, for the page that comes after a reload. */
import { useMemo } from 'react';
import { type Steady, steadyClock } from '#ui/on-device/steady-clock.ts';

const name = 'loadgate-steady';

const savedOf = (sessionId: string): Steady | null => {
  try {
    const [id, last, shift] = (window.sessionStorage.getItem(name) ?? '').split(' ');
    return id === sessionId ? { last: Number(last), shift: Number(shift) } : null;
  } catch {
    return null;
  }
};

const keep = (sessionId: string, { last, shift }: Steady) => {
  try {
    window.sessionStorage.setItem(name, `${sessionId} ${last} ${shift}`);
  } catch {
    // Without it a reload begins again with the clock on the wall.
  }
};

export const useSteadyClock = (wall: () => number, sessionId: string): (() => number) =>
  useMemo(
    () =>
      steadyClock(
        wall,
        () => performance.now(),
        savedOf(sessionId),
        (shown) => keep(sessionId, shown),
      ),
    [wall, sessionId],
  );
