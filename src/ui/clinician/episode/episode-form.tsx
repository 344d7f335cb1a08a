'use client';
/** Opening an episode of care. Contacts are typed a line each: who they are; name; telephone. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { episodeFields } from '#core/episode/episode-fields.ts';
import { say } from '#messages/en/staff/episode.ts';
import { client } from '#ui/clinician/client.ts';
import { FormFrame } from '#ui/clinician/forms/form-frame.tsx';
import { linesOf } from '#ui/clinician/forms/typed.ts';

/** Typed a line each, so that several stand in one field. */
const inLines = (field: { readonly name: string; readonly about?: string }): Field => ({
  name: field.name,
  kind: 'text',
  maxLength: 900,
  optional: field.name !== 'diagnoses',
  about: field.about ?? field.name,
});

const fields: readonly Field[] = [
  ...episodeFields.map((field): Field => {
    const isTyped = field.name === 'diagnoses' || field.name === 'goals' || field.name === 'contacts';
    return isTyped ? inLines(field) : field;
  }),
  { name: 'reason', kind: 'text', minLength: 1, maxLength: 300, about: say('reason-for-opening') },
];

const linesFrom = (text: unknown) => linesOf(typeof text === 'string' ? text : '');

const contactsFrom = (text: unknown) =>
  linesFrom(text).map((line) => {
    const [role = '', name = '', phone = ''] = line.split(';').map((part) => part.trim());
    return { role, name, phone: phone || null };
  });

export const EpisodeForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="episode-"
      fields={fields}
      label={say('open-this-episode-of-care')}
      taken="Opened."
      clearsTo={{}}
      hints={{
        diagnoses: say('one-per-line'),
        goals: say('goals-one-per-line'),
        followedJoints: say('one-or-two-joints'),
        contacts: say('contacts-one-per-line'),
      }}
      send={async ({ reason, contacts, diagnoses, goals, ...row }) => {
        const episode = {
          ...row,
          diagnoses: linesFrom(diagnoses),
          goals: linesFrom(goals),
          contacts: contactsFrom(contacts),
        };
        await client.clinician.episodes.open.mutate({ patientId, episode, reason: String(reason ?? '') });
        router.refresh();
      }}
    />
  );
};
