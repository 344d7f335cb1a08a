'use client';
/** On the page of an hour of today: seals its roster on this tablet, for a room without signal. */
import { type FormEvent, useState } from 'react';
import { minutesAfterHour } from '#core/clinic/group-hour.ts';
import { say } from '#messages/en/staff/groups/sealed.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { keepHour, mostTries } from '#ui/on-device/hour-kept.ts';
import { phoneStore } from '#ui/on-device/phone-store.ts';
import { pinDigits, pinProblem } from '#ui/on-device/pin-seal.ts';
import type { GroupPerson } from '../../answers.ts';
import { client } from '../../client.ts';
import { hasNoAnswer } from '../use-person.ts';
import { forgetAside, waitingAnswers } from './answers-kept.ts';
import { holdHourPage, hourAddress } from './hold-page.ts';
import { nameOf, type SealedRoster, type TakenAlong, withoutWaiting } from './roster.ts';
import { areToldApart, type Marks, marked, type Named, ofOneName } from './told-apart.ts';

export interface TakeAlongProps {
  readonly hourId: string;
  readonly people: readonly GroupPerson[];
  readonly clinicKey: string;
  /** Clinical instant now. */
  readonly instant: () => number;
}

interface Taken {
  readonly count: number;
  readonly leftOut: number;
  /** Names of who was begun on the hour's page. */
  readonly begun: readonly string[];
  /** Names of whose answers wait on this tablet. */
  readonly waits: readonly string[];
  readonly isHeld: boolean;
}

/** Also who stays behind is in the room, and has to be told apart. */
const inTheRoom = ({ people, begun }: TakenAlong) => [...people, ...begun];

/** null = nobody is left to take along; what was sealed before stays then. */
const take = async (
  { clinicKey, instant }: TakeAlongProps,
  taken: TakenAlong,
  { pin, marks }: { readonly pin: string; readonly marks: Marks },
): Promise<Taken | null> => {
  const now = instant();
  const { begun, ...hour } = taken;
  const named = <P extends Named>(some: readonly P[]) => marked(some, marks, inTheRoom(taken));
  const store = await phoneStore();
  const { people, left } = withoutWaiting(named(taken.people), await waitingAnswers(store));
  if (people.length === 0) return null;
  const roster: SealedRoster = { ...hour, people, clinicKey, sealedAt: now };
  const isHeld = await holdHourPage().catch(() => false);
  await keepHour(store, { wall: () => Date.now() }, roster, { pin, goneAt: taken.goneAt, now });
  await forgetAside(store);
  const names = { begun: named(begun).map(nameOf), waits: left.map(nameOf) };
  return { count: people.length, leftOut: taken.leftOut, ...names, isHeld };
};

const failureOf = (error: unknown): string =>
  say('take.failed', {
    why: hasNoAnswer(error) ? say('take.no-answer') : error instanceof Error ? error.message : String(error),
  });

const pinError = (pin: string): string | undefined => {
  const problem = pinProblem(pin);
  return problem === null ? undefined : say(`take.pin.${problem}`, pinDigits);
};

const useTaking = (props: TakeAlongProps) => {
  const [pin, setPin] = useState('');
  const [marks, setMarks] = useState<Marks>({});
  const [alike, setAlike] = useState<readonly string[]>([]);
  const [errors, setErrors] = useState<Errors>({});
  const [isBusy, setBusy] = useState(false);
  const [done, setDone] = useState<Taken | null>(null);
  const seal = async (): Promise<Errors> => {
    const wrong = pinError(pin);
    if (wrong) return { pin: wrong };
    if (!(await phoneStore()).holdsKeys) return { other: say('take.failed', { why: say('take.no-room') }) };
    const taken = await client.clinician.groupSessions.takeAlong.query({ hourId: props.hourId });
    setAlike(ofOneName(inTheRoom(taken)).map(({ patientId }) => patientId));
    if (!areToldApart(inTheRoom(taken), marks)) return { marks: say('take.tell.missing') };
    const sealed = await take(props, taken, { pin, marks });
    setDone(sealed);
    if (!sealed) return { other: say('take.failed', { why: say('take.nobody') }) };
    setPin('');
    return {};
  };
  const send = async (event: FormEvent) => {
    event.preventDefault();
    if (isBusy) return;
    setBusy(true);
    setErrors(await seal().catch((error: unknown) => ({ other: failureOf(error) })));
    setBusy(false);
  };
  return { pin, setPin, marks, setMarks, alike, errors, isBusy, done, send };
};

interface Errors {
  readonly pin?: string;
  readonly marks?: string;
  readonly other?: string;
}

export const Done = ({ count, leftOut, begun, waits, isHeld }: Taken) => (
  <Notice tone={isHeld ? 'plain' : 'care'} title={say('taken', { count })} isAnnounced>
    {leftOut > 0 ? <p>{say('taken.left-out', { count: leftOut })}</p> : null}
    {begun.map((name) => (
      <p key={name}>{say('taken.begun', { name })}</p>
    ))}
    {waits.map((name) => (
      <p key={name}>{say('taken.waits', { name })}</p>
    ))}
    {isHeld ? (
      <p>
        <a href={hourAddress}>{say('taken.open')}</a>. {say('taken.where', { address: hourAddress })}
      </p>
    ) : (
      <p>{say('take.not-held')}</p>
    )}
  </Notice>
);

/** The page of the hour has full names, the sealed one has not: the word is typed here. */
const TellApart = ({ people, alike, marks, error, onMarks }: TellProps) =>
  people
    .filter(({ patientId }) => alike.includes(patientId))
    .map(({ patientId, name }, place) => (
      <TextField
        key={patientId}
        name={`mark-${patientId}`}
        label={say('take.tell', { name })}
        hint={place === 0 ? say('take.tell.hint') : undefined}
        error={error}
        maxLength={30}
        value={marks[patientId] ?? ''}
        onChange={(event) => onMarks({ ...marks, [patientId]: event.target.value })}
      />
    ));

interface TellProps {
  readonly people: readonly GroupPerson[];
  readonly alike: readonly string[];
  readonly marks: Marks;
  readonly error: string | undefined;
  readonly onMarks: (marks: Marks) => void;
}

export const TakeAlong = (props: TakeAlongProps) => {
  const { pin, setPin, marks, setMarks, alike, errors, isBusy, done, send } = useTaking(props);
  return (
    <Disclosure summary={say('take.title')} isScreenOnly>
      <p className="small">{say('take.what', { after: minutesAfterHour, tries: mostTries })}</p>
      {done ? <Done {...done} /> : null}
      {errors.other ? <Notice tone="care" title={errors.other} isAnnounced /> : null}
      <ScriptedForm className="stack-close" isQuiet onSubmit={(event) => void send(event)}>
        <TellApart
          people={props.people}
          alike={alike}
          marks={marks}
          error={errors.marks}
          onMarks={setMarks}
        />
        <TextField
          name="take-pin"
          label={say('take.pin')}
          hint={say('take.pin.hint', pinDigits)}
          error={errors.pin}
          type="password"
          inputMode="numeric"
          autoComplete="off"
          value={pin}
          onChange={(event) => setPin(event.target.value)}
        />
        <SendButton>{say(isBusy ? 'take.busy' : 'take')}</SendButton>
      </ScriptedForm>
    </Disclosure>
  );
};
