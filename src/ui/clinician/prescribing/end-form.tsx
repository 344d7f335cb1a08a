'use client';
/** Ending a prescription, with the reason. Ended is not erased. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

const fields: readonly Field[] = [
  {
    name: 'reason',
    kind: 'text',
    minLength: 1,
    maxLength: 200,
    about: say('end.reason'),
  },
];

export const EndForm = (props: { readonly patientId: string; readonly prescriptionId: string }) => {
  const router = useRouter();
  const { patientId, prescriptionId } = props;
  return (
    <FormFrame
      prefix={`end-${prescriptionId}-`}
      fields={fields}
      label={say('end')}
      taken="Ended."
      send={async ({ reason }) => {
        await client.clinician.prescriptions.end.mutate({
          patientId,
          prescriptionId,
          reason: String(reason ?? ''),
        });
        router.refresh();
      }}
    />
  );
};
