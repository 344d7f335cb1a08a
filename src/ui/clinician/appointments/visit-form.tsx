'use client';
/** Place, call-back number and who is present; at a distance the first two are needed. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/appointments.ts';
import { SentFrame } from '#ui/clinician/forms/form-frame.tsx';
import { beginVisit } from '#ui/clinician/forms/sent/care.ts';

export const VisitForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={beginVisit}
      about={{ patientId }}
      label="Begin"
      clearsTo={{}}
      hints={{
        whereabouts: say('for-video-or-telephone-where'),
        callBackPhone: say('needed-for-video'),
        present: say('one-per-line-a-carer'),
      }}
      onTaken={router.refresh}
    />
  );
};
