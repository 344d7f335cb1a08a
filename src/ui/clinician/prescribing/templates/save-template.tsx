'use client';
/** Doses in force saved as a template of the clinic, under a name of one’s own. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/prescribing/templates.ts';
import { SentFrame } from '../../forms/form-frame.tsx';
import { saveTemplate } from '../../forms/sent/templates.ts';

export const SaveTemplate = (props: {
  readonly patientId: string;
  readonly doses: readonly { readonly id: string; readonly title: string }[];
}) => {
  const router = useRouter();
  return (
    <>
      <p className="soft">{say('about')}</p>
      <p className="soft small">{say('not-kept')}</p>
      <SentFrame
        sent={saveTemplate}
        about={{ patientId: props.patientId }}
        label={say('save')}
        tone="plain"
        several={{ prescriptionIds: props.doses.map(({ id }) => id) }}
        choices={{ prescriptionIds: props.doses.map(({ id, title }) => ({ value: id, label: title })) }}
        onTaken={router.refresh}
      />
    </>
  );
};
