'use client';
/** What is pressed for one person of the hour: kept as a draft, sent as an entry, looked at again once it is saved. */
import { useEffect, useRef, useState } from 'react';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import type { GroupPerson } from '../answers.ts';
import { client } from '../client.ts';
import { listText } from '../forms/sent/sent-form.ts';
import { useDraft } from '../forms/use-draft.ts';
import { personNow, typedFrom } from './correcting.ts';
import { stageOf, type Typed, toldIn } from './group-answers.ts';
import { entryOf } from './group-entry.ts';

interface Told {
  readonly stored: string;
  readonly clockDoubtful: boolean;
}

const problemOf = ({ stored, clockDoubtful }: Told): string | null => {
  if (stored === 'conflict') return say('sent.conflict');
  if (stored !== 'stored' && stored !== 'known') return say('sent.unknown');
  return clockDoubtful ? say('sent.doubtful') : null;
};

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

const keptWords = {
  none: '',
  waiting: say('draft.waiting'),
  saved: say('draft.saved'),
  'not-saved': say('draft.not-saved'),
} as const;

export type Change = Readonly<Record<string, string | undefined>>;

/** Without what is taken out. */
const changed = (before: Typed, change: Change): Typed =>
  Object.fromEntries(
    Object.entries({ ...before, ...change }).flatMap(([name, text]) =>
      text === undefined ? [] : [[name, text]],
    ),
  );

export interface AtHour {
  readonly hourId: string;
  /** Clinical instant now. */
  readonly instant: () => number;
}

/** Without an answer of the clinic's nobody knows whether it arrived: it is sent again as it was, and kept once. */
export const hasNoAnswer = (error: unknown): boolean => !(error as { data?: unknown }).data;

const againMs = 15_000;

/** Sends again while something waits, and asks before the page is left with it. */
const useSendingAgain = (isWaiting: boolean, send: () => void) => {
  const again = useRef(send);
  again.current = send;
  useEffect(() => {
    if (!isWaiting) return;
    const resend = () => again.current();
    const stay = (event: BeforeUnloadEvent) => event.preventDefault();
    const timer = setInterval(resend, againMs);
    window.addEventListener('online', resend);
    window.addEventListener('beforeunload', stay);
    return () => {
      clearInterval(timer);
      window.removeEventListener('online', resend);
      window.removeEventListener('beforeunload', stay);
    };
  }, [isWaiting]);
};

const dropDraft = (patientId: string): void => {
  client.clinician.drafts.drop.mutate({ patientId, form: 'group-hour' }).catch(() => undefined);
};

const useSending = (at: AtHour, patientId: string, onStored: () => Promise<void>) => {
  const [isBusy, setBusy] = useState(false);
  const [isWaiting, setWaiting] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const isSending = useRef(false);
  const send = async (person: GroupPerson, entered: Typed) => {
    if (isSending.current) return;
    isSending.current = true;
    setBusy(true);
    try {
      const entry = entryOf(person, entered, { now: at.instant() });
      const asked = { hourId: at.hourId, patientId, entry };
      const told = await client.clinician.groupSessions.send.mutate(asked);
      setProblem(problemOf(told));
      setWaiting(false);
      if (told.stored === 'stored' || told.stored === 'known') await onStored();
    } catch (error) {
      const isLost = hasNoAnswer(error);
      setWaiting(isLost);
      setProblem(isLost ? null : messageOf(error));
    }
    isSending.current = false;
    setBusy(false);
  };
  return { isBusy, isWaiting, problem, send, change: () => setWaiting(false) };
};

/** What is changed after it was to be sent ends anew; a session on record keeps its times. */
export const pressed = (before: Typed, change: Change, now: string): Typed => {
  const ended = before.amends === undefined ? undefined : before.ended;
  return changed(before, { began: before.began ?? now, ended, ...change });
};

export const usePerson = (first: GroupPerson, at: AtHour) => {
  const { hourId, instant } = at;
  const { patientId } = first;
  const [shown, setPerson] = useState(first);
  const [typed, setTyped] = useState<Typed>(first.typed ?? { hour: hourId });
  const person = personNow(shown, typed);
  const [isDone, setDone] = useState(false);
  const draft = useDraft(patientId, 'group-hour', typed, isDone);
  const sending = useSending(at, patientId, async () => {
    const fresh = await client.clinician.groupSessions.person.query({ hourId, patientId });
    setDone(true);
    setTyped({ hour: hourId });
    setPerson(fresh as GroupPerson);
  });
  const press = (change: Change) => {
    setDone(false);
    setTyped((before) => pressed(before, change, String(instant())));
  };
  /** The end is that of the first sending, so that what is sent again is the same. */
  const sendAs = (change: Change) => {
    const now = String(instant());
    const { began = now, ended = now } = typed;
    const entered = changed(typed, { began, ended, ...change });
    setTyped(entered);
    void sending.send(person, entered);
  };
  useSendingAgain(sending.isWaiting, () => void sending.send(person, typed));
  return {
    person,
    typed,
    press,
    ...sending,
    stage: sending.isWaiting && toldIn(typed).length === 0 ? ('waiting' as const) : stageOf(person, typed),
    kept: isDone ? '' : keptWords[draft],
    onSave: () => sendAs({}),
    /** Danger waits for no second press: what was done so far is sent with it. */
    onReport: (name: string, flags: readonly RedFlag[]) => sendAs({ [name]: listText(flags) }),
    onCorrect: () => {
      const { session } = person;
      if (session) setTyped({ hour: hourId, ...typedFrom(session.entry, crypto.randomUUID()) });
    },
    onLeave: () => {
      setDone(true);
      setTyped({ hour: hourId });
      dropDraft(patientId);
    },
  };
};
