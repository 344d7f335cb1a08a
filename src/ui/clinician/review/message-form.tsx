'use client';
/** Writing to the patient in plain words; it stands on their page. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/describe.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

const fields: readonly Field[] = [
  { name: 'text', kind: 'text', minLength: 1, maxLength: 2000, about: 'Message' },
];

export const MessageForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="message-"
      fields={fields}
      clearsTo={{}}
      label="Send to the patient"
      busyLabel="Sending…"
      taken="Sent."
      hints={{ text: 'Short sentences, no clinic words. Not for emergencies: ring instead.' }}
      send={async ({ text }) => {
        await client.staff.review.write.mutate({ patientId, text: String(text ?? '') });
        router.refresh();
      }}
    />
  );
};
