'use client';
/** Place, call-back number and who is present; at a distance the first two are needed. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { visitFields } from '#core/episode/visit-fields.ts';
import { say } from '#messages/en/staff/appointments.ts';
import { client } from '#ui/clinician/client.ts';
import { FormFrame } from '#ui/clinician/forms/form-frame.tsx';
import { linesOf } from '#ui/clinician/forms/typed.ts';

/** Those present are typed a line each; nobody else may be there. */
const fields: readonly Field[] = visitFields.map((field) =>
  field.name === 'present'
    ? { name: 'present', kind: 'text', maxLength: 700, optional: true, about: field.about }
    : field,
);

export const VisitForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="visit-"
      fields={fields}
      label="Begin"
      taken="Begun."
      clearsTo={{}}
      hints={{
        whereabouts: say('for-video-or-telephone-where'),
        callBackPhone: say('needed-for-video'),
        present: say('one-per-line-a-carer'),
      }}
      send={async ({ present, ...visit }) => {
        const named = linesOf(typeof present === 'string' ? present : '');
        await client.clinician.visits.begin.mutate({ patientId, visit: { ...visit, present: named } });
        router.refresh();
      }}
    />
  );
};
