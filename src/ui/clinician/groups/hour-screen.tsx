'use client';
/** The page of a group hour: where everybody stands, and a card for each. Made for a tablet on a table. */
import { useRef, useState } from 'react';
import { beginOf } from '#core/clinic/group-hour.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { say as sayHours } from '#messages/en/staff/groups/hours.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { ClosedPerson, GroupHourAnswer, GroupPerson } from '../answers.ts';
import { type ClinicClock, today } from '../when.ts';
import { AskedInLanguage } from './asked-in.tsx';
import { personNow } from './correcting.ts';
import { type Stage, stageOf } from './group-answers.ts';
import { lineInWords, whenInWords } from './hour-words.ts';
import { PersonCard } from './person-card.tsx';
import { TakeAlong } from './sealed/take-along.tsx';
import { WaitingAnswers } from './sealed/waiting-answers.tsx';
import { StageTag } from './stage-tag.tsx';
import { type AtHour, usePerson } from './use-person.ts';

export interface HourProps {
  readonly hour: GroupHourAnswer;
  readonly people: readonly (GroupPerson | ClosedPerson)[];
  readonly clock: ClinicClock;
  /** What a tablet without signal seals answers to. */
  readonly clinicKey: string;
}

interface PersonProps {
  readonly first: GroupPerson;
  readonly at: AtHour;
  readonly clock: ClinicClock;
  readonly isOpen: boolean;
  readonly onStage: (patientId: string, stage: Stage) => void;
}

const Person = ({ first, at, clock, isOpen, onStage }: PersonProps) => {
  const state = usePerson(first, at);
  const { stage } = state;
  const shown = useRef(stage);
  if (shown.current !== stage) {
    shown.current = stage;
    queueMicrotask(() => onStage(first.patientId, stage));
  }
  return <PersonCard {...state} clock={clock} isOpen={isOpen} />;
};

type Stages = Readonly<Record<string, Stage | 'closed'>>;

const startOf = (hourId: string, people: HourProps['people']): Stages =>
  Object.fromEntries(
    people.map((one) => {
      if (one.name === null) return [one.patientId, 'closed'];
      const typed = one.typed ?? { hour: hourId };
      return [one.patientId, stageOf(personNow(one, typed), typed)];
    }),
  );

/** Clinical time runs on from what the page came with. */
const useInstant = (now: number) => {
  const loaded = useRef<number | null>(null);
  loaded.current ??= typeof window === 'undefined' ? null : Date.now();
  return () => Math.round(now + Date.now() - (loaded.current ?? Date.now()));
};

const isOver = (stage: Stage | 'closed' | undefined): boolean =>
  stage === 'sent' || stage === 'stopped' || stage === 'closed';

const Everybody = ({ people, stages }: Pick<HourProps, 'people'> & { readonly stages: Stages }) => {
  const open = people.filter(({ patientId }) => !isOver(stages[patientId])).length;
  return (
    <nav className="group-people stack-close" aria-label={say('people')}>
      <p role="status">
        <strong>{open === 0 ? say('open.none') : say('open', { count: open })}</strong>
      </p>
      <ul className="plain-list">
        {people.map(({ patientId, name }) => (
          <li key={patientId}>
            <a href={`#person-${patientId}`}>{name ?? sayHours('unnamed')}</a>{' '}
            <StageTag stage={stages[patientId] ?? 'closed'} />
          </li>
        ))}
      </ul>
    </nav>
  );
};

const Top = ({ hour, isOpen }: Pick<HourProps, 'hour'> & { readonly isOpen: boolean }) => (
  <>
    <PageHeading>{hour.entry.name}</PageHeading>
    <div className="stack-close">
      <p>
        {whenInWords(hour.entry)}. {lineInWords(hour.entry)}
      </p>
      <p className="soft">{say('lead')}</p>
      <p>
        <a href={`/groups/${hour.id}/roster`}>{say('to-roster')}</a> ·{' '}
        <a href="/groups">{sayHours('to-all')}</a>
      </p>
    </div>
    {hour.ended === null ? null : (
      <Notice tone="care" title={sayHours(`state.${hour.ended}`)}>
        <p>{sayHours('ended.note')}</p>
      </Notice>
    )}
    {hour.ended === null && !isOpen ? <p>{say('other-day')}</p> : null}
  </>
);

export const HourScreen = ({ hour, people, clock, clinicKey }: HourProps) => {
  const [stages, setStages] = useState(() => startOf(hour.id, people));
  const instant = useInstant(clock.now);
  const isOpen = hour.ended === null && beginOf(hour.entry).day === today(clock);
  const shown = people.flatMap((one) => (one.name === null ? [] : [one]));
  const onStage = (patientId: string, stage: Stage) =>
    setStages((before) => ({ ...before, [patientId]: stage }));
  return (
    <div className="stack-wide">
      <Top hour={hour} isOpen={isOpen} />
      <WaitingAnswers />
      {isOpen && shown.length > 0 ? (
        <TakeAlong hourId={hour.id} people={shown} clinicKey={clinicKey} instant={instant} />
      ) : null}
      {people.length === 0 ? <p>{say('nobody-yet')}</p> : <Everybody people={people} stages={stages} />}
      <AskedInLanguage>
        <div className="group-cards">
          {people.map((one) =>
            one.name === null ? (
              <section key={one.patientId} className="group-person" id={`person-${one.patientId}`}>
                <h2>{sayHours('unnamed')}</h2>
                <p className="small">{say('closed')}</p>
              </section>
            ) : (
              <Person
                key={one.patientId}
                first={one}
                at={{ hourId: hour.id, instant }}
                clock={clock}
                isOpen={isOpen}
                onStage={onStage}
              />
            ),
          )}
        </div>
      </AskedInLanguage>
    </div>
  );
};
