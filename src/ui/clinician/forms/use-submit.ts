'use client';
/** Sending a form: one at a time, refusals kept beside the fields, nothing typed lost. */
import { useEffect, useState } from 'react';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { type Refused, refusedBy } from './submit-problems.ts';

/** An emptied field is still wrong; the same answer comes back where nothing changes, so that nothing is drawn anew. */
export const withoutProblem = (refused: Refused, field: string, text: string): Refused => {
  const problems = refused.problems.filter((problem) => problem.field !== field);
  return text.trim() === '' || problems.length === refused.problems.length
    ? refused
    : { ...refused, problems };
};

const calm: Refused = { problems: [], questions: [] };

export interface Submit {
  readonly problems: readonly Problem[];
  readonly questions: readonly string[];
  readonly isBusy: boolean;
  /** The passphrase is asked for again before this is taken; the form shows `FreshSignIn` and sends once more. */
  readonly needsProof: boolean;
  /** The message beside one field. */
  readonly errorOf: (field: string) => string | undefined;
  /** Sends unless something typed could not be read; true when it was taken. */
  readonly send: (unreadable: readonly Problem[], call: () => Promise<void>) => Promise<boolean>;
  readonly forget: () => void;
  /** What was wrong with a field goes once something else stands in it. */
  readonly answered: (field: string, text: string) => void;
}

/**
 * `fields` are those the form was made from, where it was; `before` is what was wrong with it when the browser
 * sent it itself.
 */
export const useSubmit = (
  prefix: string,
  fallback: string,
  fields: readonly Field[] = [],
  before: Refused | null = null,
): Submit => {
  const [refused, setRefused] = useState<Refused>(before ?? calm);
  const [isBusy, setBusy] = useState(false);
  useEffect(() => {
    const title = document.title.replace(/^Error: /, '');
    document.title = refused.problems.length > 0 ? say('error', { title }) : title;
  }, [refused]);
  const send = async (unreadable: readonly Problem[], call: () => Promise<void>) => {
    if (isBusy) return false;
    if (unreadable.length > 0) {
      setRefused({
        problems: unreadable.map(({ field, text }) => ({ field: `${prefix}${field}`, text })),
        questions: [],
      });
      return false;
    }
    setBusy(true);
    try {
      await call();
      setRefused(calm);
      return true;
    } catch (error) {
      setRefused(refusedBy(error, prefix, fallback, fields));
      return false;
    } finally {
      setBusy(false);
    }
  };
  return {
    ...refused,
    needsProof: refused.needsProof ?? false,
    isBusy,
    errorOf: (field) => refused.problems.find((problem) => problem.field === `${prefix}${field}`)?.text,
    send,
    forget: () => setRefused(calm),
    answered: (field, text) => setRefused((before) => withoutProblem(before, `${prefix}${field}`, text)),
  };
};
