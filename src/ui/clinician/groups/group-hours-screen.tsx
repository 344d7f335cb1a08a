/** The clinic's group hours: those of today and to come, planning one, and those that are over. */
import { beginOf } from '#core/clinic/group-hour.ts';
import { say } from '#messages/en/staff/groups/hours.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { GroupHourLine } from '../answers.ts';
import { type ClinicClock, today } from '../when.ts';
import { type Clinician, PlanForm } from './group-forms.tsx';
import { lineInWords, whenInWords } from './hour-words.ts';
import { WaitingAnswers } from './sealed/waiting-answers.tsx';

const Line = ({ hour: { id, entry, ended, people } }: { readonly hour: GroupHourLine }) => (
  <li className="stack-close">
    <h3>
      <a href={`/groups/${id}`}>{entry.name}</a>, {whenInWords(entry)}
    </h3>
    <p className="soft">
      {lineInWords(entry)} {people === 0 ? say('people.none') : say('people', { count: people })}.
      {ended === null ? null : (
        <>
          {' '}
          <StatusTag shape="stop" tone="care">
            {say(`state.${ended}`)}
          </StatusTag>
        </>
      )}
    </p>
  </li>
);

interface ListProps {
  readonly of: 'coming' | 'past';
  readonly hours: readonly GroupHourLine[];
}

const List = ({ of, hours }: ListProps) => (
  <section className="stack" aria-labelledby={`groups-${of}`}>
    <h2 id={`groups-${of}`}>{say(of, { count: hours.length })}</h2>
    {hours.length === 0 ? <p className="soft">{say(`none.${of}`)}</p> : null}
    <ul className="plain-list stack">
      {hours.map((hour) => (
        <Line key={hour.id} hour={hour} />
      ))}
    </ul>
  </section>
);

interface GroupHoursProps {
  /** By when they begin. */
  readonly hours: readonly GroupHourLine[];
  readonly clinicians: readonly Clinician[];
  readonly clock: ClinicClock;
}

export const GroupHoursScreen = ({ hours, clinicians, clock }: GroupHoursProps) => {
  const isComing = ({ entry }: GroupHourLine) => beginOf(entry).day >= today(clock);
  return (
    <div className="stack-wide">
      <PageHeading>{say('title')}</PageHeading>
      <p>{say('lead')}</p>
      <WaitingAnswers />
      <List of="coming" hours={hours.filter(isComing)} />
      <section className="stack-close" aria-labelledby="group-plan">
        <h2 id="group-plan">{say('plan')}</h2>
        <PlanForm clinicians={clinicians} />
      </section>
      <List of="past" hours={hours.filter((hour) => !isComing(hour)).toReversed()} />
    </div>
  );
};
