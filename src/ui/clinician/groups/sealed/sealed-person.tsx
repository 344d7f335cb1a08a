'use client';
/** One person of the sealed hour: asked as on the hour's own page; once finished, only that it is sealed or sent. */
import { useState } from 'react';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { say as sayHour } from '#messages/en/staff/groups/hour.ts';
import { say } from '#messages/en/staff/groups/sealed.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import type { ClinicClock } from '../../when.ts';
import { SignAdvice } from '../danger-part.tsx';
import { stageOf, type Typed } from '../group-answers.ts';
import { PersonCard } from '../person-card.tsx';
import type { PersonPart } from '../person-props.ts';
import { StageTag } from '../stage-tag.tsx';
import type { PersonState } from './roster.ts';

/** Where the sealed answer is; "aside": at the clinic beside another session, where nothing of it counts. */
type Where = 'waits' | 'arrived' | 'aside';

interface DoneProps extends Pick<PersonPart, 'person'> {
  readonly flags: readonly RedFlag[];
  readonly where: Where;
}

const stages = { waits: 'waiting', arrived: 'sent', aside: 'aside' } as const;

const reportedWords = {
  waits: sayHour('signs.not-reported'),
  arrived: say('sign.reported'),
  aside: say('sign.aside'),
} as const;

/** Told signs stay in sight, with whom to ring; everything else that was answered is closed here. */
const Finished = ({ person, flags, where }: DoneProps) => (
  <section className="group-person stack-close" aria-labelledby={`name-${person.patientId}`}>
    <header>
      <h2 id={`name-${person.patientId}`}>{person.name}</h2>
      <StageTag stage={flags.length > 0 ? 'stopped' : stages[where]} />
    </header>
    {flags.length > 0 ? (
      <Notice tone="danger" title={reportedWords[where]} isAnnounced>
        <SignAdvice person={person} flags={flags} />
      </Notice>
    ) : null}
    <p>{say(where === 'waits' ? 'sent-here' : `sent-here.${where}`)}</p>
    {where === 'waits' ? <p className="small">{say('sent-here.waits')}</p> : null}
  </section>
);

/** A slip on the wrong card is no session of that person. */
const TakeBack = ({ name, onTakeBack }: { readonly name: string; readonly onTakeBack: () => void }) => {
  const [isAsked, setAsked] = useState(false);
  return isAsked ? (
    <ConfirmQuestion
      question={say('take-back.sure', { name })}
      yes={say('take-back.yes')}
      no={say('take-back.no')}
      onYes={onTakeBack}
      onNo={() => setAsked(false)}
      isNoFirst
    />
  ) : (
    <Button tone="quiet" onClick={() => setAsked(true)}>
      {say('take-back', { name })}
    </Button>
  );
};

interface SealedPersonProps extends Pick<PersonPart, 'person' | 'press'> {
  readonly state: PersonState | undefined;
  readonly typed: Typed;
  readonly clock: ClinicClock;
  readonly where: Where;
  readonly onTakeBack: () => void;
  readonly onSave: () => void;
  readonly onReport: (name: string, flags: readonly RedFlag[]) => void;
}

const nothing = () => undefined;

export const SealedPerson = ({ state, where, onTakeBack, ...props }: SealedPersonProps) =>
  state?.state === 'finished' ? (
    <Finished person={props.person} flags={state.flags} where={where} />
  ) : (
    <div className="stack-close">
      <PersonCard
        {...props}
        isWithoutSignal
        isOpen
        stage={stageOf(props.person, props.typed)}
        isBusy={false}
        problem={null}
        kept=""
        change={nothing}
        onCorrect={nothing}
        onLeave={nothing}
      />
      {state ? <TakeBack name={props.person.name} onTakeBack={onTakeBack} /> : null}
    </div>
  );
