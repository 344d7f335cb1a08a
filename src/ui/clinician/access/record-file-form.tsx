'use client';
/** Makes the record's file for somebody the patient has named, and saves it in the browser. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/access.ts';
import { Asked } from '#ui/account/asked.tsx';
import { change } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';

const saveAs = (name: string, text: string): void => {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
};

export interface RecordFileFormProps {
  readonly patientId: string;
  /** Civil day of the clinic, for the file's name. */
  readonly day: string;
}

export const RecordFileForm = ({ patientId, day }: RecordFileFormProps) => {
  const router = useRouter();
  const asking = useAsking('handed-to');
  const [handedTo, setHandedTo] = useState('');
  const [saved, setSaved] = useState<string | null>(null);
  const make = (event: FormEvent) => {
    event.preventDefault();
    if (handedTo.trim().length < 2) {
      return asking.t([{ field: 'handed-to', text: say('write-who-receives-the-file') }]);
    }
    void asking.ask(
      () => change<{ text: string }>('clinician.recordFile.make', { patientId, handedTo }),
      ({ text }) => {
        const name = `record-${patientId}-${day}.json`;
        saveAs(name, text);
        setSaved(name);
        setHandedTo('');
        router.refresh();
      },
    );
  };
  return (
    <ScriptedForm className="stack" onSubmit={make}>
      <Asked asking={asking} />
      {saved ? (
        <Notice title={say('the-file-was-made')} isAnnounced>
          <p>{say('saved-to-downloads', { saved })}</p>
        </Notice>
      ) : null}
      <TextField
        name="handed-to"
        label={say('who-receives')}
        hint={say('receiver-is-listed')}
        autoComplete="off"
        maxLength={120}
        value={handedTo}
        error={asking.errorOf('handed-to') ?? asking.errorOf('handedTo')}
        onChange={(event) => setHandedTo(event.target.value)}
      />
      <SendButton>{say('make-the-file')}</SendButton>
    </ScriptedForm>
  );
};
