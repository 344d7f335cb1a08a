'use client';
/** Recording what the patient said to one consent, after its wording was read aloud. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { say } from '#messages/en/staff/care.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import type { Consent } from '../answers.ts';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

type Act = 'given' | 'refused' | 'withdrawn';

const actsOn: Readonly<Record<Consent['state'], readonly Act[]>> = {
  given: ['withdrawn'],
  'not-asked': ['given', 'refused'],
  refused: ['given'],
  withdrawn: ['given'],
};

const actWords: Readonly<Record<Act, string>> = {
  given: say('patient-consents'),
  refused: say('patient-refuses'),
  withdrawn: say('patient-withdraws'),
};

interface ConsentFormProps {
  readonly patientId: string;
  readonly consent: Consent;
}

export const ConsentForm = ({ patientId, consent }: ConsentFormProps) => {
  const router = useRouter();
  const [reason, setReason] = useState('');
  const prefix = `agree-${consent.kind}-`;
  const submit = useSubmit(prefix, `${prefix}send`);
  const ids = [`${prefix}send`];
  const acts = actsOn[consent.state];
  const record = (act: Act) =>
    submit.send([], async () => {
      const { kind, wordingSource, wordingVersion } = consent;
      await client.clinician.consents.record.mutate({
        patientId,
        kind,
        act,
        wordingSource,
        wordingVersion,
        reason: reason.trim() === '' ? null : reason,
      });
      setReason('');
      router.refresh();
    });
  return (
    <div className="stack-close screen-only">
      <ErrorSummary problems={submit.problems} />
      <div className="row row-end">
        {consent.state === 'refused' || consent.state === 'withdrawn' ? null : (
          <TextField
            name={`${prefix}reason`}
            label={say('reason')}
            isOptional
            value={reason}
            onChange={(event) => setReason(event.target.value)}
          />
        )}
        {acts.map((act, place) => (
          <Button key={act} tone="plain" id={ids[place]} onClick={() => void record(act)}>
            {actWords[act]}
            <span className="visually-hidden">: {consent.title}</span>
          </Button>
        ))}
      </div>
    </div>
  );
};
