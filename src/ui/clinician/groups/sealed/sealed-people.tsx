'use client';
import { useState } from 'react';
/** The sealed hour while it lies open: who is of it, each by the plan of when it was sealed. */
import { say as sayHour } from '#messages/en/staff/groups/hour.ts';
import { say } from '#messages/en/staff/groups/sealed.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { momentInWords } from '../../when.ts';
import { AskedInLanguage } from '../asked-in.tsx';
import { answerKey } from './answers-kept.ts';
import { nameOf, personOf } from './roster.ts';
import { SealedPerson } from './sealed-person.tsx';
import { type OpenHour, useSealedPeople } from './use-sealed-people.ts';

interface PeopleProps {
  readonly hour: OpenHour;
  readonly goneAt: number;
  readonly arrived: ReadonlySet<string>;
  readonly aside: ReadonlySet<string>;
  readonly onFinished: () => void;
  readonly onLock: () => void;
  readonly onPutAway: () => void;
}

const Ways = ({ onLock, onPutAway }: Pick<PeopleProps, 'onLock' | 'onPutAway'>) => {
  const [isAsked, setAsked] = useState(false);
  return isAsked ? (
    <ConfirmQuestion
      question={say('put-away')}
      yes={say('put-away.yes')}
      no={say('put-away.no')}
      onYes={onPutAway}
      onNo={() => setAsked(false)}
    >
      <p>{say('put-away.sure')}</p>
    </ConfirmQuestion>
  ) : (
    <div className="presses">
      <Button tone="plain" onClick={onLock}>
        {say('lock')}
      </Button>
      <Button tone="quiet" onClick={() => setAsked(true)}>
        {say('put-away')}
      </Button>
    </div>
  );
};

const whereIs = (key: string, { arrived, aside }: Pick<PeopleProps, 'arrived' | 'aside'>) =>
  aside.has(key) ? 'aside' : arrived.has(key) ? 'arrived' : 'waits';

export const SealedPeople = ({ hour, goneAt, onFinished, ...props }: PeopleProps) => {
  const { roster, instant } = hour;
  const { states, isKept, typedOf, takeBack, press, finish, report } = useSealedPeople(hour, onFinished);
  const clock = { zone: roster.zone, now: instant() };
  return (
    <div className="stack-wide">
      <PageHeading>{roster.name}</PageHeading>
      <div className="stack-close">
        <p>
          {roster.place}. {say('until', { time: momentInWords(goneAt, clock) })}
        </p>
        <p>{say('lead', { time: momentInWords(roster.sealedAt, clock) })}</p>
        <p className="soft">{say('old-plan')}</p>
        <p>{say('begun-only')}</p>
        <Ways {...props} />
      </div>
      {isKept ? null : <Notice tone="danger" title={say('not-kept')} isAnnounced />}
      <nav className="group-people stack-close" aria-label={sayHour('people')}>
        <ul className="plain-list">
          {roster.people.map((one) => (
            <li key={one.patientId}>
              <a href={`#person-${one.patientId}`}>{nameOf(one)}</a>
            </li>
          ))}
        </ul>
      </nav>
      <AskedInLanguage>
        <div className="group-cards">
          {roster.people.map((one) => (
            <SealedPerson
              key={one.patientId}
              person={personOf(one)}
              state={states[one.patientId]}
              typed={typedOf(one)}
              clock={clock}
              where={whereIs(answerKey({ ...roster, entryId: one.entryId }), props)}
              onTakeBack={() => takeBack(one)}
              press={(change) => press(one, change)}
              onSave={() => finish(one)}
              onReport={(name, flags) => report(one, name, flags)}
            />
          ))}
        </div>
      </AskedInLanguage>
    </div>
  );
};
