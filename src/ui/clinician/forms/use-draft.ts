'use client';
/**
 * Keeps what is typed on the server a moment after the last key, or as the page is left. A draft that cannot be
 * kept says so.
 */
import { useEffect, useRef, useState } from 'react';
import { client, clientOnLeaving } from '#ui/clinician/client.ts';
import type { Typed } from './typed.ts';

const waitMilliseconds = 1200;

export type DraftState = 'none' | 'waiting' | 'saved' | 'not-saved';

type Form = Parameters<typeof client.clinician.drafts.save.mutate>[0]['form'];

/** Of one form; `isDone`: what was typed is on record, and nothing is kept of it any more. */
export const useDraft = (patientId: string, form: Form, typed: Typed, isDone: boolean): DraftState => {
  const [state, setState] = useState<DraftState>('none');
  const first = useRef(typed);
  const unsent = useRef<() => void>(() => undefined);
  useEffect(() => {
    if (typed === first.current || isDone) {
      unsent.current = () => undefined;
      return;
    }
    // An answer about older words says nothing about these.
    let isNewest = true;
    setState('waiting');
    let isSent = false;
    const draft = { patientId, form, typed };
    const timer = setTimeout(() => {
      isSent = true;
      client.clinician.drafts.save
        .mutate(draft)
        .then(() => isNewest && setState('saved'))
        .catch(() => isNewest && setState('not-saved'));
    }, waitMilliseconds);
    const leave = () => {
      if (isSent) return;
      isSent = true;
      clientOnLeaving.clinician.drafts.save.mutate(draft).catch(() => undefined);
    };
    unsent.current = leave;
    window.addEventListener('pagehide', leave);
    return () => {
      isNewest = false;
      clearTimeout(timer);
      window.removeEventListener('pagehide', leave);
    };
  }, [patientId, form, typed, isDone]);
  // Another page of the clinic's takes this one's place without the browser leaving it.
  useEffect(() => () => unsent.current(), []);
  return state;
};
