'use client';
/** What is pressed in the sealed hour: kept under the hour's own key, and sealed to the clinic at each press. */
import { useRef, useState } from 'react';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { keepDrafts } from '#ui/on-device/hour-kept.ts';
import { type PhoneStore, phoneStore } from '#ui/on-device/phone-store.ts';
import { listText } from '../../forms/sent/sent-form.ts';
import { type Typed, toldIn } from '../group-answers.ts';
import { entryOf } from '../group-entry.ts';
import { type Change, pressed } from '../use-person.ts';
import { type Answered, keepAnswer, takeBackAnswer } from './answers-kept.ts';
import { type PersonState, personOf, type SealedRoster, type States } from './roster.ts';

export interface OpenHour {
  readonly roster: SealedRoster;
  readonly key: CryptoKey;
  readonly drafts: States;
  /** Keys of answers the clinic had when it was opened. */
  readonly arrived: readonly string[];
  /** Keys of answers it had put aside by then. */
  readonly aside: readonly string[];
  readonly clockLacks: number;
  /** Clinical instant, never set back. */
  readonly instant: () => number;
}

type Person = SealedRoster['people'][number];

interface Step {
  readonly person: Person;
  readonly typed: Typed;
  readonly isFinished: boolean;
}

const afterStep = ({ typed, isFinished }: Step): PersonState =>
  isFinished ? { state: 'finished', flags: toldIn(typed) } : { state: 'begun', typed };

const keepStep = async (store: PhoneStore, hour: OpenHour, step: Step, states: States): Promise<void> => {
  const { roster, key, clockLacks, instant } = hour;
  const { person, typed, isFinished } = step;
  const { hourId, takenBy, takerName, sealedAt, clinicKey } = roster;
  const state: Answered['state'] = isFinished ? 'finished' : 'begun';
  const answered = {
    ...{ hourId, takenBy, takerName, sealedAt, clinicKey, clockLacks },
    ...{ patientId: person.patientId, state },
  };
  // Sealed to the clinic before what was pressed is let go.
  await keepAnswer(store, answered, entryOf(personOf(person), typed, { now: instant() }));
  await keepDrafts(store, key, states);
};

const withState = (states: States, patientId: string, state: PersonState | undefined): States =>
  Object.fromEntries([
    ...Object.entries(states).filter(([id]) => id !== patientId),
    ...(state === undefined ? [] : [[patientId, state] as const]),
  ]);

interface Writing {
  readonly patientId: string;
  /** undefined = nothing was pressed for this person. */
  readonly state: PersonState | undefined;
  /** What is shown where it could not be kept. */
  readonly otherwise: PersonState | undefined;
  readonly keep: (store: PhoneStore, states: States) => Promise<void>;
  readonly onKept?: () => void;
}

/** What is finished is shown so once it is kept; everything else at once. One is written after the other. */
const useKeptStates = (first: States) => {
  const [states, setStates] = useState<States>(first);
  const [isKept, setKept] = useState(true);
  const held = useRef(states);
  const writing = useRef<Promise<void>>(Promise.resolve());
  const show = (isWritten: boolean) => {
    setKept(isWritten);
    setStates(held.current);
  };
  const write = ({ patientId, state, otherwise, keep, onKept }: Writing) => {
    const next = withState(held.current, patientId, state);
    held.current = next;
    writing.current = writing.current
      .then(async () => keep(await phoneStore(), next))
      .then(
        () => {
          show(true);
          onKept?.();
        },
        // It is shown as it was pressed, and said not to be kept.
        () => {
          held.current = withState(held.current, patientId, otherwise);
          show(false);
        },
      );
    if (state?.state !== 'finished') setStates(next);
  };
  return { states, isKept, held, write };
};

export const useSealedPeople = (hour: OpenHour, onFinished: () => void) => {
  const { states, isKept, held, write } = useKeptStates(hour.drafts);
  const step = (one: Step) =>
    write({
      patientId: one.person.patientId,
      state: afterStep(one),
      otherwise: { state: 'begun', typed: one.typed },
      keep: (store, next) => keepStep(store, hour, one, next),
      onKept: one.isFinished ? onFinished : undefined,
    });
  const takeBack = ({ patientId, entryId }: Person) =>
    write({
      patientId,
      state: undefined,
      otherwise: held.current[patientId],
      keep: async (store, next) => {
        await takeBackAnswer(store, { ...hour.roster, entryId });
        await keepDrafts(store, hour.key, next);
      },
    });
  const typedOf = ({ patientId }: Person): Typed => {
    const found = held.current[patientId];
    return found?.state === 'begun' ? found.typed : { hour: hour.roster.hourId };
  };
  const after = (person: Person, change: Change) => pressed(typedOf(person), change, String(hour.instant()));
  return {
    states,
    isKept,
    typedOf,
    takeBack,
    press: (person: Person, change: Change) =>
      step({ person, typed: after(person, change), isFinished: false }),
    finish: (person: Person) =>
      step({ person, typed: after(person, { ended: String(hour.instant()) }), isFinished: true }),
    /** Danger waits for no second press: what was done so far is sealed with it. */
    report: (person: Person, name: string, flags: readonly RedFlag[]) =>
      step({
        person,
        typed: after(person, { [name]: listText(flags), ended: String(hour.instant()) }),
        isFinished: true,
      }),
  };
};
