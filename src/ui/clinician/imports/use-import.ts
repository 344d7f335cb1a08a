/** A file being taken in, step by step. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { QuestionId } from '#exchange/import/questions.ts';
import { change } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import type { LookedThrough } from '../answers.ts';
import { inputOf, missingIn, nothingTyped, type Typed } from './import-input.ts';

/** The form as it stands: what is typed, what was found in the file, and what was answered. */
export const useImport = (patientId: string) => {
  const router = useRouter();
  const asking = useAsking('file');
  const [typed, setTyped] = useState(nothingTyped);
  const [looked, setLooked] = useState<LookedThrough | null>(null);
  const [confirmed, setConfirmed] = useState<readonly QuestionId[]>([]);
  const [leavesOutFaulty, setLeavesOut] = useState(false);
  const [isTaken, setTaken] = useState(false);
  const input = (now: Typed) => inputOf(patientId, now, { confirmed, leavesOutFaulty });
  /** What was found, and what was answered to it, holds for the file as it was said to be. */
  const type = (next: Typed) => {
    setTyped(next);
    setLooked(null);
    setConfirmed([]);
    setLeavesOut(false);
    setTaken(false);
  };
  const look = (now: Typed) => {
    const missing = missingIn(now);
    if (missing.length > 0) return asking.t(missing);
    void asking.ask(() => change<LookedThrough>('clinician.imports.check', input(now)), setLooked);
  };
  const onTaken = () => {
    type(nothingTyped);
    setTaken(true);
    router.refresh();
  };
  const take = () => void asking.ask(() => change('clinician.imports.take', input(typed)), onTaken);
  const confirm = (id: QuestionId, isRight: boolean) =>
    setConfirmed(isRight ? [...confirmed, id] : confirmed.filter((one) => one !== id));
  return {
    asking,
    typed,
    type,
    look,
    looked,
    confirmed,
    confirm,
    leavesOutFaulty,
    setLeavesOut,
    isTaken,
    take,
  };
};
