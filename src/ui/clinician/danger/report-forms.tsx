'use client';
/** A warning sign told by telephone, and a pause of the clinician's own. */
import { useRouter } from 'next/navigation';
import { signInWords } from '#core/danger/sign-words.ts';
import { redFlags } from '#core/decision/facts/facts.ts';
import { say } from '#messages/en/staff/danger.ts';
import { capital } from '../capital.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { pause, reportSign } from '../forms/sent/danger.ts';

export const ReportForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={reportSign}
      about={{ patientId }}
      choices={{ flags: redFlags.map((value) => ({ value, label: capital(signInWords[value]) })) }}
      label={say('report-warning-sign')}
      clearsTo={{}}
      onTaken={router.refresh}
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
    <SentFrame
      sent={pause}
      about={{ patientId }}
      choices={{ cause: causes }}
      hints={{
        joint: say('joint-left-out'),
        until: say('ask-on'),
      }}
      label="Pause"
      clearsTo={{}}
      onTaken={router.refresh}
    />
  );
};
