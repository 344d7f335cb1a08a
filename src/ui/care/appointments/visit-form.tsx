'use client';
/** Place, call-back number and who is present; at a distance the first two are needed. */
import { useRouter } from 'next/navigation';
import { visitFields } from '#core/care/visit-fields.ts';
import { client } from '#ui/clinician/client.ts';
import { FormFrame } from '#ui/clinician/forms/form-frame.tsx';

export const VisitForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="visit-"
      fields={visitFields}
      label="Begin"
      taken="Begun."
      clearsTo={{}}
      hints={{
        whereabouts: 'By video or telephone: where help would be sent.',
        callBackPhone: 'By video or telephone: needed.',
        present: 'One a line: a carer, an interpreter, a nurse.',
      }}
      send={async (visit) => {
        await client.staff.visits.begin.mutate({ patientId, visit: { present: [], ...visit } });
        router.refresh();
      }}
    />
  );
};
