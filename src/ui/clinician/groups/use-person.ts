'use client';
/** What is pressed for one person of the hour: kept as a draft, sent as an entry, looked at again once it is saved. */
import { useRef, useState } from 'react';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import type { GroupPerson } from '../answers.ts';
import { client } from '../client.ts';
import { useDraft } from '../forms/use-draft.ts';
import { flagsText, type Typed } from './group-answers.ts';
import { entryOf, typedFrom } from './group-entry.ts';

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

/** Without what is taken out. */
const changed = (before: Typed, change: Readonly<Record<string, string | undefined>>): Typed =>
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

export const usePerson = (first: GroupPerson, { hourId, instant }: AtHour) => {
  const [person, setPerson] = useState(first);
  const [typed, setTyped] = useState<Typed>(first.typed ?? { hour: hourId });
  const [isBusy, setBusy] = useState(false);
  const [isDone, setDone] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const isSending = useRef(false);
  const draft = useDraft(person.patientId, 'group-hour', typed, isDone);
  const press = (change: Readonly<Record<string, string | undefined>>) => {
    setDone(false);
    setTyped((before) =>
      changed(before, before.began === undefined ? { began: String(instant()), ...change } : change),
    );
  };
  const send = async (entered: Typed) => {
    if (isSending.current) return;
    isSending.current = true;
    setBusy(true);
    const asked = { hourId, patientId: person.patientId };
    try {
      const entry = entryOf(person, entered, { now: instant() });
      const told = await client.clinician.groupSessions.send.mutate({ ...asked, entry });
      setProblem(problemOf(told));
      if (told.stored === 'stored' || told.stored === 'known') {
        setDone(true);
        setTyped({ hour: hourId });
        setPerson((await client.clinician.groupSessions.person.query(asked)) as GroupPerson);
      }
    } catch (error) {
      setProblem(messageOf(error));
    }
    isSending.current = false;
    setBusy(false);
  };
  return {
    person,
    typed,
    press,
    isBusy,
    problem,
    kept: isDone ? '' : keptWords[draft],
    onSave: () => void send(typed),
    /** Danger waits for no second press: what was done so far is sent with it. */
    onReport: (name: string, flags: readonly RedFlag[]) => {
      const entered = changed(typed, { [name]: flagsText(flags), began: typed.began ?? String(instant()) });
      setTyped(entered);
      void send(entered);
    },
    onCorrect: () => {
      const { session, today } = person;
      if (session) setTyped({ hour: hourId, ...typedFrom(today, session.entry, crypto.randomUUID()) });
    },
    onLeave: () => setTyped({ hour: hourId }),
  };
};
