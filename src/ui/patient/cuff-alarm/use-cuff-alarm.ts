'use client';
/** Keeps the alarm to the cuff: it runs while one is on, and stops when it is off. */
import { useEffect, useRef } from 'react';
import { chosenSound } from '../preferences/chosen.ts';
import type { ItemDraft, SessionDraft } from '../session/draft.ts';
import { isCuffOn, isTimeUp, longestSeconds, restrictedSeconds } from '../session/restriction.ts';
import { isAlarmRunning, ringNow, startAlarm, stopAlarm } from './cuff-alarm.ts';

/** For the press that says that the cuff is on. */
export const alarmFor = (item: ItemDraft, now: number): void => {
  if (chosenSound() !== 'none') void startAlarm(longestSeconds(item) - restrictedSeconds(item, now));
};

export const useCuffAlarm = (draft: SessionDraft, clock: () => number, isUp: boolean): void => {
  const worn = draft.endedAt === null ? draft.items.find(isCuffOn) : undefined;
  const latest = useRef(worn);
  latest.current = worn;
  const isOn = worn !== undefined;
  useEffect(() => {
    if (!isOn) return;
    // After a reload, or where something else stopped it, it is begun again: at once, or by the next press.
    const begin = () => {
      const item = latest.current;
      if (item && !isAlarmRunning() && !isTimeUp(item, clock())) alarmFor(item, clock());
    };
    begin();
    document.addEventListener('click', begin);
    document.addEventListener('visibilitychange', begin);
    return () => {
      document.removeEventListener('click', begin);
      document.removeEventListener('visibilitychange', begin);
      stopAlarm();
    };
  }, [isOn, clock]);
  useEffect(() => {
    if (isUp) ringNow();
  }, [isUp]);
};
