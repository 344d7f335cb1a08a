/** The front desk: whoever comes from today on, by day, or whoever a name finds. Works without scripts. */
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/reception/reception.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { wholeDayText } from '../../language/text-of-time.ts';
import { TelephoneLink } from '../telephone-link.tsx';
import type { FoundPeople, PersonLine } from './answers.ts';

export interface ReceptionProps {
  readonly day: Day;
  /** What was searched for; empty = nothing, and appointments are shown. */
  readonly name: string;
  readonly found: FoundPeople | null;
  readonly appointments: readonly PersonLine[];
}

const nextInWords = ({ next }: PersonLine): string =>
  next ? [wholeDayText(next.day), next.time, next.place].filter(Boolean).join(', ') : say('not-booked');

const Person = ({ person, when }: { readonly person: PersonLine; readonly when: string }) => (
  <li>
    <span className="reception-when">{when}</span>
    <a href={`/reception/${person.patientId}`}>
      {person.familyName}, {person.givenName}
    </a>
    <span className="soft">{say('born', { date: dayInWords(person.birthDay) })}</span>
    {person.phone ? <TelephoneLink phone={person.phone} /> : <span className="soft">{say('no-phone')}</span>}
  </li>
);

const byDay = (people: readonly PersonLine[]): readonly (readonly [Day, readonly PersonLine[]])[] => {
  const days = new Map<Day, PersonLine[]>();
  for (const person of people)
    if (person.next) days.set(person.next.day, [...(days.get(person.next.day) ?? []), person]);
  return [...days];
};

const Appointments = ({ appointments }: Pick<ReceptionProps, 'appointments'>) =>
  appointments.length === 0 ? (
    <p className="soft">{say('none-booked')}</p>
  ) : (
    byDay(appointments).map(([day, people]) => (
      <section key={day} className="stack-close" aria-labelledby={`on-${day}`}>
        <h2 id={`on-${day}`}>{wholeDayText(day)}</h2>
        <ul className="people reception-people">
          {people.map((person) => (
            <Person
              key={person.patientId}
              person={person}
              when={[person.next?.time ?? say('no-time'), person.next?.place].filter(Boolean).join(', ')}
            />
          ))}
        </ul>
      </section>
    ))
  );

const Found = ({ name, found }: ReceptionProps & { readonly found: FoundPeople }) => (
  <section className="stack-close" aria-labelledby="found-heading">
    <h2 id="found-heading">{say('found-named', { name })}</h2>
    <p role="status" className="soft">
      {found.people.length === 0 ? say('found-none') : say('found', { count: found.people.length })}{' '}
      {found.more > 0 ? say('found-more', { count: found.more }) : ''}
    </p>
    <ul className="people reception-people">
      {found.people.map((person) => (
        <Person key={person.patientId} person={person} when={nextInWords(person)} />
      ))}
    </ul>
    <p>
      <a href="/reception">{say('all-appointments')}</a>
    </p>
  </section>
);

export const ReceptionScreen = (props: ReceptionProps) => (
  <div className="stack-wide">
    <form method="get" className="row row-end">
      <TextField name="name" label={say('find')} type="search" autoComplete="off" defaultValue={props.name} />
      <Button type="submit">{say('find-go')}</Button>
      <LinkButton href="/reception/new" tone="plain">
        {say('add')}
      </LinkButton>
    </form>
    {props.found ? <Found {...props} found={props.found} /> : <Appointments {...props} />}
    <p className="soft small">{say('not-here')}</p>
  </div>
);
