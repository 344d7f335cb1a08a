'use client';
/** One person of the hour, drawn from what was pressed: the question that comes next, and the plan of today below it. */
import { useState } from 'react';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import type { ClinicClock } from '../when.ts';
import { AfterPart } from './after-part.tsx';
import { BeforePart } from './before-part.tsx';
import { Reporting, Stopped } from './danger-part.tsx';
import { ExercisePart } from './exercise-part.tsx';
import { exercisesNow, type Stage } from './group-answers.ts';
import type { PersonPart } from './person-props.ts';
import { MovedSessions, SentPart } from './sent-part.tsx';
import { SignsPart } from './signs-part.tsx';
import { StageTag } from './stage-tag.tsx';

export interface CardProps extends PersonPart {
  readonly clock: ClinicClock;
  /** Without signal: no way leads to the record, and its page is not here. */
  readonly isWithoutSignal?: boolean;
  /** Sessions are entered today. */
  readonly isOpen: boolean;
  readonly stage: Stage;
  readonly isBusy: boolean;
  /** What the last sending said, where it was not just stored. */
  readonly problem: string | null;
  readonly kept: string;
  readonly onSave: () => void;
  readonly onReport: (name: string, flags: readonly RedFlag[]) => void;
  /** What waits is looked at again instead of sent. */
  readonly change: () => void;
  readonly onCorrect: () => void;
  readonly onLeave: () => void;
}

/** A sign that comes on at the work is told from here. */
const SignNow = (props: CardProps) => {
  const [isAsked, setAsked] = useState(false);
  return isAsked ? (
    <SignsPart
      {...props}
      name="signs-now"
      question={null}
      isShort={false}
      onSlip={() => setAsked(false)}
      onReport={(flags) => props.onReport('signs-now', flags)}
    />
  ) : (
    <Button tone="plain" onClick={() => setAsked(true)}>
      {say('signs.now')}
    </Button>
  );
};

const Work = (props: CardProps) => {
  const { typed, press } = props;
  return (
    <div className="presses">
      <Button tone="plain" onClick={() => press({ finished: 'yes' })}>
        {say('finish')}
      </Button>
      <Button tone="quiet" onClick={() => press({ easier: typed.easier === 'yes' ? undefined : 'yes' })}>
        {say(typed.easier === 'yes' ? 'easier.not' : 'easier')}
      </Button>
    </div>
  );
};

const Plan = (props: CardProps) => {
  const { person, typed, stage } = props;
  const exercises = exercisesNow(person.today, typed);
  return (
    <>
      {exercises.length === 0 ? <p className="soft">{say('no-exercises')}</p> : null}
      <ul className="plain-list stack-close">
        {exercises.map((now) => (
          <ExercisePart
            key={now.exercise.itemId}
            {...props}
            now={now}
            isAtWork={stage === 'work' || stage === 'after'}
          />
        ))}
      </ul>
    </>
  );
};

const Waiting = ({ isBusy, onSave, change }: CardProps) => (
  <Notice tone="care" title={say('stage.waiting')} isAnnounced>
    <p>{say('waits')}</p>
    <div className="presses">
      <Button disabled={isBusy} onClick={onSave}>
        {say(isBusy ? 'save.saving' : 'waits.now')}
      </Button>
      <Button tone="plain" onClick={change}>
        {say('waits.change')}
      </Button>
    </div>
  </Notice>
);

const Asked = (props: CardProps) => {
  const { person, press, stage, onReport } = props;
  switch (stage) {
    case 'reporting':
      return <Reporting {...props} />;
    case 'waiting':
      return <Waiting {...props} />;
    case 'signs':
      return (
        <SignsPart
          {...props}
          name="signs"
          question={person.today.isShortSigns ? 'flags.short' : 'flags.before'}
          isShort={person.today.isShortSigns}
          onReport={(flags) => onReport('signs', flags)}
        />
      );
    case 'before':
      return (
        <>
          <p className="small soft">{say('signs.asked')}</p>
          <BeforePart {...props} />
        </>
      );
    default:
      return (
        <>
          <Button tone="quiet" onClick={() => press({ usual: undefined, finished: undefined })}>
            {say('before.change')}
          </Button>
          <SignNow {...props} />
        </>
      );
  }
};

const Told = ({ told, stage }: Pick<CardProps, 'stage'> & { readonly told: readonly string[] }) =>
  told.length > 0 && stage !== 'sent' ? (
    <details className="disclosure" open={stage === 'signs' || stage === 'stopped'}>
      <summary>{say('told.title')}</summary>
      <ul className="small">
        {told.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </details>
  ) : null;

export const PersonCard = (props: CardProps) => {
  const { person, typed, stage, clock, isOpen, problem, kept, isWithoutSignal = false } = props;
  const { session, today, patientId } = person;
  const isAsked = stage !== 'sent' && stage !== 'stopped' && (isOpen || typed.amends !== undefined);
  return (
    <section
      className="group-person stack-close"
      id={`person-${patientId}`}
      aria-labelledby={`name-${patientId}`}
    >
      <header>
        <h2 id={`name-${patientId}`}>
          {isWithoutSignal ? person.name : <a href={`/patients/${patientId}`}>{person.name}</a>}
        </h2>
        <StageTag stage={stage} />
      </header>
      {problem ? <Notice tone="care" title={problem} isAnnounced /> : null}
      {stage === 'stopped' && today.stop !== null ? (
        <Stopped
          person={person}
          stop={today.stop}
          flags={session?.entry.redFlags ?? []}
          isWithoutSignal={isWithoutSignal}
        />
      ) : null}
      {session && typed.amends === undefined ? (
        <SentPart person={person} session={session} clock={clock} onCorrect={props.onCorrect} />
      ) : null}
      <MovedSessions sessions={person.earlierSessions} patientId={patientId} />
      {today.isSentToday && !session ? <p className="small">{say('sent-today')}</p> : null}
      {isAsked ? <Asked {...props} /> : null}
      <Told told={today.told} stage={stage} />
      {['sent', 'stopped', 'reporting', 'waiting'].includes(stage) ? null : <Plan {...props} />}
      {isAsked && stage === 'work' ? <Work {...props} /> : null}
      {isAsked && stage === 'after' ? (
        <AfterPart {...props} onReport={(flags) => props.onReport('signs-after', flags)} />
      ) : null}
      {typed.amends === undefined ? null : (
        <Button tone="quiet" onClick={props.onLeave}>
          {say('correct.leave')}
        </Button>
      )}
      <p className="small soft" role="status">
        {kept}
      </p>
    </section>
  );
};
