'use client';
/** Sends what waits on this tablet: when the page opens, when there is signal again, and now and then. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { lookAtHour } from '#ui/on-device/hour-kept.ts';
import { phoneStore } from '#ui/on-device/phone-store.ts';
import { type SealedAnswer, type Sent, sendAnswers, waitingAnswers, whoSignsIn } from './answers-kept.ts';

const againMs = 15_000;
const wall = () => Date.now();

export interface Sending {
  readonly waiting: readonly SealedAnswer[];
  /** Keys of answers the clinic has by now, of those this page sent. */
  readonly arrived: ReadonlySet<string>;
  /** The same of those it put aside. */
  readonly aside: ReadonlySet<string>;
  /** Names of who has to sign in here, so that what is left is sent. */
  readonly toSignIn: readonly string[];
  readonly send: (isAgain?: boolean) => void;
}

const sendHere = async (isAgain: boolean) => {
  const store = await phoneStore();
  const isOpen = (await lookAtHour(store, { wall })) !== null;
  const told = await sendAnswers(store, { fetch: (...asked) => fetch(...asked), wall, isOpen, isAgain });
  return { told, waiting: await waitingAnswers(store) };
};

const withSent = (
  before: ReadonlySet<string>,
  told: readonly Sent[],
  outcome: Sent['as'],
): ReadonlySet<string> => {
  const now = told.filter(({ as }) => as === outcome).map(({ key }) => key);
  return now.length === 0 ? before : new Set([...before, ...now]);
};

export const useSendingAnswers = (): Sending => {
  const [waiting, setWaiting] = useState<readonly SealedAnswer[]>([]);
  const [arrived, setArrived] = useState<ReadonlySet<string>>(new Set());
  const [aside, setAside] = useState<ReadonlySet<string>>(new Set());
  const [toSignIn, setToSignIn] = useState<readonly string[]>([]);
  const running = useRef<Promise<void>>(Promise.resolve());
  const send = useCallback((isAgain = false) => {
    const turn = async () => {
      const { told, waiting: left } = await sendHere(isAgain);
      setWaiting(left);
      setArrived((before) => withSent(before, told, 'arrived'));
      setAside((before) => withSent(before, told, 'aside'));
      if (told.length > 0) setToSignIn(whoSignsIn(left, told));
    };
    // One after the other: what is pressed while one runs goes with the next.
    running.current = running.current.then(turn).catch(() => undefined);
  }, []);
  useEffect(() => {
    send(true);
    const again = () => send();
    const timer = setInterval(again, againMs);
    window.addEventListener('online', again);
    return () => {
      clearInterval(timer);
      window.removeEventListener('online', again);
    };
  }, [send]);
  return { waiting, arrived, aside, toSignIn, send };
};
