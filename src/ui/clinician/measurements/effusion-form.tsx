'use client';
/** The knee's effusion as graded by the clinician, today. */
import { useRouter } from 'next/navigation';
import { effusionFields } from '#core/record/staff-fields.ts';
import { say } from '#messages/en/staff/measurements.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

export const EffusionForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="effusion-"
      fields={effusionFields}
      clearsTo={{}}
      label={say('effusion.record')}
      taken="Recorded."
      send={async (effusion) => {
        await client.clinician.measurements.recordEffusion.mutate({ patientId, effusion });
        router.refresh();
      }}
    />
  );
};
