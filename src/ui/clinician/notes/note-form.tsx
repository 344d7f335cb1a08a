'use client';
/** A note as it is written. What is typed is kept as a draft until it is signed. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode/visit-notes.ts';
import { client } from '../client.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { signNote } from '../forms/sent/notes.ts';
import type { Typed } from '../forms/typed.ts';
import { useDraft } from '../forms/use-draft.ts';

export interface NoteFormProps {
  readonly patientId: string;
  readonly day: Day;
  readonly signer: string;
  readonly draft: Typed | null;
}

export const NoteForm = ({ patientId, day, signer, draft }: NoteFormProps) => {
  const router = useRouter();
  const empty: Typed = { day };
  const [kept, setKept] = useState<Typed>(draft ?? empty);
  const [isSigned, setSigned] = useState(false);
  const draftState = useDraft(patientId, 'visit-note', kept, isSigned);
  const signed = () => {
    setSigned(true);
    setKept(empty);
    void client.clinician.drafts.drop.mutate({ patientId, form: 'visit-note' });
    router.refresh();
  };
  return (
    <SentFrame
      sent={signNote}
      about={{ patientId }}
      start={draft ?? empty}
      clearsTo={empty}
      label={say('save', { name: signer })}
      onTyped={(path, text) => {
        setSigned(false);
        setKept((before) => ({ ...before, [path]: text }));
      }}
      onTaken={signed}
    >
      <p role="status" className="soft small">
        {isSigned || draftState === 'none' ? '' : say(`draft.${draftState}`)}
      </p>
    </SentFrame>
  );
};
