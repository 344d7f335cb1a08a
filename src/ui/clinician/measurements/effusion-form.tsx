'use client';
/** The knee's effusion as graded by the clinician, today. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/measurements.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { recordEffusion } from '../forms/sent/measurements.ts';

export const EffusionForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={recordEffusion}
      about={{ patientId }}
      clearsTo={{}}
      label={say('effusion.record')}
      onTaken={router.refresh}
    />
  );
};
