'use client';
/** Answers under way stay in this tab until they are sent; a reload loses none, closing the tab drops them. */
import { useEffect, useState } from 'react';
import { type GivenById, notGiven } from './visit-answers.ts';

interface UnderWay {
  readonly place: number;
  readonly given: GivenById;
}

const key = (ownerId: string): string => `before-visit ${ownerId}`;
const begun: UnderWay = { place: -1, given: {} };

const saved = (ownerId: string): UnderWay => {
  try {
    const { place, given }: UnderWay = JSON.parse(sessionStorage.getItem(key(ownerId)) ?? 'null') ?? begun;
    // Kept by an earlier version of the page, an answer may lack what is asked by now.
    const whole = Object.entries(given).map(([id, one]) => [id, { ...notGiven, ...one }]);
    return { place, given: Object.fromEntries(whole) };
  } catch {
    return begun;
  }
};

export const useSavedAnswers = (ownerId: string) => {
  const [state, setState] = useState<UnderWay>(begun);
  useEffect(() => setState(saved(ownerId)), [ownerId]);
  const change = (next: UnderWay) => {
    setState(next);
    try {
      sessionStorage.setItem(key(ownerId), JSON.stringify(next));
    } catch {
      // A browser that keeps nothing loses only a reload.
    }
  };
  const drop = () => {
    setState(begun);
    sessionStorage.removeItem(key(ownerId));
  };
  return { state, change, drop };
};
