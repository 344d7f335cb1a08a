/** Who belongs to a group hour, and the hour as it is corrected, cancelled or marked as entered in error. */
import { mostInGroup } from '#core/clinic/group-hour.ts';
import { say } from '#messages/en/staff/groups/hours.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import type { GroupHourAnswer, PatientLine } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { type Clinician, CorrectForm, JoinForm, LeaveForm, StateForms } from './group-forms.tsx';
import { lineInWords, whenInWords } from './hour-words.ts';

interface RosterProps {
  readonly hour: GroupHourAnswer;
  readonly clinicians: readonly Clinician[];
  /** Of the clinic by the name that was looked for, and how many more are named so. */
  readonly found: { readonly patients: readonly PatientLine[]; readonly more: number };
  readonly typed: string;
  readonly clock: ClinicClock;
}

type Named = GroupHourAnswer['members'][number];

const Name = ({ patientId, name }: Named) =>
  name === null ? (
    <span className="soft">{say('unnamed')}</span>
  ) : (
    <a href={`/patients/${patientId}`}>{name}</a>
  );

const Members = ({ hour }: Pick<RosterProps, 'hour'>) => (
  <section className="stack" aria-labelledby="group-members">
    <h2 id="group-members">{say('roster.people', { count: hour.members.length, most: mostInGroup })}</h2>
    {hour.members.length === 0 ? <p className="soft">{say('people.none')}.</p> : null}
    <ul className="plain-list group-roster">
      {hour.members.map((one) => (
        <li key={one.patientId}>
          <Name {...one} />
          <LeaveForm hourId={hour.id} patientId={one.patientId} />
        </li>
      ))}
    </ul>
    {hour.left.length === 0 ? null : (
      <Disclosure summary={say('roster.left')}>
        <ul className="plain-list">
          {hour.left.map((one) => (
            <li key={one.patientId}>
              <Name {...one} />
            </li>
          ))}
        </ul>
        <p className="soft small">{say('roster.left.note')}</p>
      </Disclosure>
    )}
  </section>
);

const Join = ({ hour, found, typed }: RosterProps) => {
  const known = new Set(hour.members.map(({ patientId }) => patientId));
  const people = found.patients.filter(({ id }) => !known.has(id));
  return (
    <section className="stack-close" aria-labelledby="group-join">
      <h2 id="group-join">{say('add.title')}</h2>
      {hour.members.length >= mostInGroup ? (
        <p>{say('add.full', { most: mostInGroup })}</p>
      ) : (
        <>
          <search>
            <form method="get" className="row row-end">
              <TextField
                name="name"
                type="search"
                label={say('add.find')}
                defaultValue={typed}
                autoComplete="off"
              />
              <Button type="submit" tone="plain">
                {say('add.find.go')}
              </Button>
            </form>
          </search>
          {found.more > 0 ? <p className="soft">{say('add.more', { count: found.more })}</p> : null}
          {people.length === 0 ? (
            <p className="soft">{say('add.nobody')}</p>
          ) : (
            <JoinForm hourId={hour.id} people={people} />
          )}
        </>
      )}
    </section>
  );
};

const Before = ({ hour, clock }: Pick<RosterProps, 'hour' | 'clock'>) => (
  <>
    {hour.changes.map(({ state, by: name, at, reason }) => (
      <p key={at} className="soft small">
        {say(`changed.${state}`, { name, at: momentInWords(at, clock), reason })}
      </p>
    ))}
    {hour.earlier.length === 0 ? null : (
      <Disclosure summary={say('earlier', { count: hour.earlier.length })}>
        {hour.earlier.map(
          ({ version, name, place, minutes, clinicianName, writtenBy, writtenAt, ...entry }) => (
            <p key={version} className="small">
              {name}, {whenInWords(entry)}. {lineInWords({ place, minutes, clinicianName })} {writtenBy},{' '}
              {momentInWords(writtenAt, clock)}.
            </p>
          ),
        )}
      </Disclosure>
    )}
  </>
);

export const RosterScreen = (props: RosterProps) => {
  const { hour, clinicians, clock } = props;
  return (
    <div className="stack-wide">
      <PageHeading>{say('roster.title', { name: hour.entry.name })}</PageHeading>
      <div className="stack-close">
        <p>
          {whenInWords(hour.entry)}. {lineInWords(hour.entry)}
        </p>
        {hour.ended === null ? null : (
          <p>
            <strong>{say(`state.${hour.ended}`)}.</strong> {say('ended.note')}
          </p>
        )}
        <p>
          <a href={`/groups/${hour.id}`}>{say('to-hour')}</a> · <a href="/groups">{say('to-all')}</a>
        </p>
      </div>
      <Members hour={hour} />
      {hour.ended === null ? <Join {...props} /> : null}
      <section className="stack-close" aria-labelledby="group-state">
        <h2 id="group-state">{say('itself')}</h2>
        <Before hour={hour} clock={clock} />
        <CorrectForm hour={hour} clinicians={clinicians} />
        <StateForms hour={hour} />
      </section>
    </div>
  );
};
