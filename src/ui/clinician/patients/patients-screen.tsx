'use client';
/** The clinic's patients, found by any part of the name. Works as a plain form when no script runs. */
import { useState } from 'react';
import { isNamedLike } from '#core/record/name-search.ts';
import { counted, dayInWords } from '#core/review/plain-words.ts';
import { ageYears, type Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/patients.ts';
import { LinkButton } from '#ui/design-system/button.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import type { PatientLine } from '../answers.ts';
import { TelephoneLink } from '../telephone-link.tsx';

const Line = ({ patient, day }: { readonly patient: PatientLine; readonly day: Day }) => (
  <li>
    <a href={`/patients/${patient.id}`}>
      {patient.familyName}, {patient.givenName}
    </a>
    {patient.phone ? (
      <TelephoneLink phone={patient.phone} />
    ) : (
      <span className="soft">{say('no-phone')}</span>
    )}
    <span className="soft">
      {say('born', { date: dayInWords(patient.birthDay), years: ageYears(patient.birthDay, day) })}
    </span>
  </li>
);

export const PatientsScreen = (props: {
  readonly patients: readonly PatientLine[];
  /** So many more are named so and do not fit the page. */
  readonly more: number;
  readonly typed: string;
  readonly day: Day;
}) => {
  const [typed, setTyped] = useState(props.typed);
  const shown = props.patients.filter((patient) => isNamedLike(patient, typed));
  return (
    <div className="stack">
      <form method="get" className="row row-end">
        <TextField
          name="name"
          label={say('find')}
          type="search"
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
        <LinkButton href="/patients/new" tone="plain">
          {say('add')}
        </LinkButton>
      </form>
      <p role="status" className="soft">
        {typed.trim() === ''
          ? `${counted(shown.length, 'patient')}.`
          : say('with-name', {
              count: shown.length,
              all: props.patients.length + props.more,
            })}
        {props.more > 0 ? ` ${say('more', { count: props.more })}` : ''}
      </p>
      <ul className="people people-of-clinic">
        {shown.map((patient) => (
          <Line key={patient.id} patient={patient} day={props.day} />
        ))}
      </ul>
    </div>
  );
};
