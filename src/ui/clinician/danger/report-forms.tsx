'use client';
/** A warning sign told by telephone, and a pause of the clinician's own. */
import { useRouter } from 'next/navigation';
import { pauseFields, signFields } from '#core/danger/danger-fields.ts';
import { signInWords } from '#core/danger/sign-words.ts';
import { redFlags } from '#core/decision/facts/facts.ts';
import { say } from '#messages/en/staff/danger.ts';
import { capital } from '../capital.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

export const ReportForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="sign-"
      fields={signFields}
      choices={{ flags: redFlags.map((value) => ({ value, label: capital(signInWords[value]) })) }}
      label={say('report-warning-sign')}
      taken={say('sign-recorded')}
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
  { value: 'warning-sign', label: say('concern-of-mine') },
  { value: 'holiday', label: 'Holiday' },
  { value: 'operation', label: 'Operation' },
  { value: 'other', label: say('another-reason') },
];

export const PauseForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="pause-"
      fields={pauseFields}
      choices={{ cause: causes }}
      hints={{
        joint: say('joint-left-out'),
        until: say('ask-on'),
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
