'use client';
/** A warning sign told by telephone, and a pause of the clinician's own. */
import { useRouter } from 'next/navigation';
import { pauseFields, signFields } from '#core/danger/danger-fields.ts';
import { signInWords } from '#core/danger/sign-words.ts';
import { redFlags } from '#core/decision/facts/facts.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const ReportForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="sign-"
      fields={signFields}
      choices={{ flags: redFlags.map((value) => ({ value, label: capital(signInWords[value]) })) }}
      label="Report warning sign"
      taken="Recorded. Everything is paused until a contact has reached the patient."
      clearsTo={{}}
      send={async (value) => {
        await client.clinician.danger.report.mutate({
          patientId,
          sign: { joint: null, remark: null, ...value },
        });
        router.refresh();
      }}
    />
  );
};

const causes = [
  {
    value: 'warning-sign',
    label: 'A concern of mine: everything stays paused until I have spoken with the patient',
  },
  { value: 'holiday', label: 'Holiday' },
  { value: 'operation', label: 'Operation' },
  { value: 'other', label: 'Another reason' },
];

export const PauseForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="pause-"
      fields={pauseFields}
      choices={{ cause: causes }}
      hints={{
        joint: 'Leave it empty to pause everything.',
        until: 'As YYYY-MM-DD. You are asked on that day; nothing resumes by itself.',
      }}
      label="Pause"
      taken="Paused."
      clearsTo={{}}
      send={async (value) => {
        await client.clinician.danger.pause.mutate({
          patientId,
          pause: { joint: null, until: null, ...value },
        });
        router.refresh();
      }}
    />
  );
};
