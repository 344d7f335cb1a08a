'use client';
/** One question to the server at a time: what is wrong with it, and whether the passphrase is asked for first. */
import { useState } from 'react';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import type { WhatPosted } from '#ui/design-system/posted/posted.tsx';
import { translate } from '#ui/language/words.ts';
import type { Answer } from './call.ts';

export interface Asking {
  readonly problems: readonly Problem[];
  readonly isBusy: boolean;
  /** What to do once the passphrase was given again; null when nothing waits for it. */
  readonly waiting: (() => void) | null;
  readonly errorOf: (field: string) => string | undefined;
  readonly ask: <T>(call: () => Promise<Answer<T>>, then: (data: T) => void) => Promise<void>;
  readonly t: (problems: readonly Problem[]) => void;
  readonly forget: () => void;
}

/** Sends the form once more that the browser sent itself and that waits for the passphrase. */
const sendPosted = () => (document.getElementById('posted') as HTMLFormElement | null)?.requestSubmit();

/**
 * `fallback` is the id of the control a problem without a field of its own leads to; `posted` is what came of the
 * form when the browser sent it itself.
 */
export const useAsking = (fallback: string, posted: WhatPosted | null = null): Asking => {
  const [problems, setProblems] = useState(posted?.problems ?? []);
  const [isBusy, setBusy] = useState(false);
  const [waiting, setWaiting] = useState<(() => void) | null>(() => (posted?.needsProof ? sendPosted : null));
  const forget = () => {
    setProblems([]);
    setWaiting(null);
  };
  const ask: Asking['ask'] = async (call, then) => {
    setBusy(true);
    const answer = await call();
    setBusy(false);
    if (answer.ok) {
      forget();
      then(answer.data);
    } else if (answer.problem === 'fresh-sign-in') {
      setProblems([]);
      // A function in state is called when it is set, so it is wrapped once more.
      setWaiting(() => () => void ask(call, then));
    } else {
      const own = answer.refusals.map(({ field, reason, text = reason }) => ({
        field: field.replace(/^input\./, ''),
        text: translate(text),
      }));
      setProblems(own.length > 0 ? own : [{ field: fallback, text: translate(answer.text) }]);
    }
  };
  const errorOf = (field: string) => problems.find((problem) => problem.field === field)?.text;
  return { problems, isBusy, waiting, errorOf, ask, t: setProblems, forget };
};
