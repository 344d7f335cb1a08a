'use client';
/** A new patient: adults only, refused by the server with the reason. Whoever looks the same is asked about first. */
import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/patients.ts';
import { Button } from '#ui/design-system/button.tsx';
import type { AddedPatient } from '../answers.ts';
import { client } from '../client.ts';
import { callsFor, type Desk, placeOf } from '../desk-calls.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { addPatient } from '../forms/sent/record.ts';

type Found = Extract<AddedPatient, { answer: 'possible-duplicate' }>['found'];

const signInWords: Readonly<Record<Found[number]['signs'][number], string>> = {
  'birth-and-name': say('same-birth-and-name'),
  phone: say('same-phone'),
  email: say('same-email'),
  'patient-number': say('same-number'),
};

const FoundPeople = ({ found, desk }: { readonly found: Found; readonly desk: Desk }) => (
  <ul>
    {found.map(({ patientId, person, signs }) => (
      <li key={patientId}>
        <a href={`/${placeOf[desk]}/${patientId}`}>
          {person ? `${person.givenName} ${person.familyName}` : say('colleagues-patient')}
        </a>
        {person
          ? `, ${say('found-born', {
              date: dayInWords(person.birthDay),
              signs: signs.map((sign) => signInWords[sign]).join(', '),
            })}`
          : ''}
      </li>
    ))}
  </ul>
);

export const NewPatientForm = ({ desk = 'clinician' }: { readonly desk?: Desk }) => {
  const router = useRouter();
  const [found, setFound] = useState<Found>([]);
  /** Set by the button below, which sends the form as it stands then. */
  const otherThan = useRef<readonly string[]>([]);
  const add = async (patient: unknown) => {
    const confirmed = [...otherThan.current];
    otherThan.current = [];
    const answer = await callsFor(client)[desk].add.mutate({ patient, otherThan: confirmed });
    setFound(answer.answer === 'added' ? [] : answer.found);
    if (answer.answer === 'added') router.push(`/${placeOf[desk]}/${answer.patientId}`);
  };
  return (
    <SentFrame
      sent={addPatient}
      about={{ desk }}
      label={say('add-this')}
      taken={found.length > 0 ? '' : say('added')}
      hints={{
        birthDay: say('birth-hint'),
        phone: say('phone-hint'),
      }}
      send={add}
    >
      {found.length > 0 ? (
        <section className="confirm" aria-live="polite">
          <h2>{say('on-record')}</h2>
          <FoundPeople found={found} desk={desk} />
          <Button
            type="submit"
            tone="plain"
            onClick={() => {
              otherThan.current = found.map(({ patientId }) => patientId);
            }}
          >
            {say('somebody-else')}
          </Button>
        </section>
      ) : null}
    </SentFrame>
  );
};
