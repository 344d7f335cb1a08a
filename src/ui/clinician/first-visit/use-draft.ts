'use client';
/** Keeps what is typed on the server a moment after the last key. A draft that cannot be kept says so. */
import { useEffect, useRef, useState } from 'react';
import { client } from '#ui/clinician/client.ts';
import type { Typed } from './first-visit-state.ts';

const waitMilliseconds = 1200;

export type DraftState = 'none' | 'waiting' | 'saved' | 'not-saved';

export const useDraft = (patientId: string, typed: Typed, isDone: boolean): DraftState => {
  const [state, setState] = useState<DraftState>('none');
  const first = useRef(typed);
  useEffect(() => {
    if (typed === first.current || isDone) return;
    // An answer about older words says nothing about these.
    let isNewest = true;
    setState('waiting');
    const timer = setTimeout(() => {
      client.clinician.drafts.save
        .mutate({ patientId, form: 'first-visit', typed })
        .then(() => isNewest && setState('saved'))
        .catch(() => isNewest && setState('not-saved'));
    }, waitMilliseconds);
    return () => {
      isNewest = false;
      clearTimeout(timer);
    };
  }, [patientId, typed, isDone]);
  return state;
};
