'use client';
/** Opening a stretch of care. Contacts are typed a line each: who they are; name; telephone. */
import { useRouter } from 'next/navigation';
import { episodeFields } from '#core/care/episode-fields.ts';
import type { Field } from '#core/describe.ts';
import { client } from '#ui/clinician/client.ts';
import { FormFrame } from '#ui/clinician/forms/form-frame.tsx';
import { linesOf } from '#ui/clinician/forms/typed.ts';

const listOfText: Field = {
  name: 'contacts',
  kind: 'text',
  maxLength: 900,
  optional: true,
  about: 'Others to speak with',
};

const fields: readonly Field[] = [
  ...episodeFields.filter((field) => field.name !== 'contacts'),
  listOfText,
  { name: 'reason', kind: 'text', minLength: 1, maxLength: 300, about: 'Reason for opening it' },
];

const contactsFrom = (text: unknown) =>
  linesOf(typeof text === 'string' ? text : '').map((line) => {
    const [role = '', name = '', phone = ''] = line.split(';').map((part) => part.trim());
    return { role, name, phone: phone || null };
  });

export const EpisodeForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="episode-"
      fields={fields}
      label="Open this stretch of care"
      taken="Opened."
      clearsTo={{}}
      hints={{
        diagnoses: 'One a line.',
        goals: 'One a line, as the patient says it.',
        followedJoints: 'One or two. These are asked about at each session and each morning.',
        contacts: 'A line each: who they are; name; telephone.',
      }}
      send={async ({ reason, contacts, ...row }) => {
        const episode = { goals: [], ...row, contacts: contactsFrom(contacts) };
        await client.staff.episodes.open.mutate({ patientId, episode, reason: String(reason ?? '') });
        router.refresh();
      }}
    />
  );
};
