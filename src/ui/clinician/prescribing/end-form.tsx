'use client';
/** Ending a prescription, with the reason. Ended is not erased. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/prescribing.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { endPrescription } from '../forms/sent/prescriptions.ts';

export const EndForm = (props: { readonly patientId: string; readonly prescriptionId: string }) => {
  const router = useRouter();
  const { patientId, prescriptionId } = props;
  return (
    <SentFrame
      sent={endPrescription}
      about={{ patientId, prescriptionId }}
      label={say('end')}
      onTaken={router.refresh}
    />
  );
};
