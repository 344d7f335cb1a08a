'use client';
/** A note as it is written. What is typed is kept as a draft until it is signed. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { visitNoteFields } from '#core/episode/visit-note.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode/visit-notes.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { DescriptorFields } from '../forms/descriptor-fields.tsx';
import { readTyped, type Typed } from '../forms/typed.ts';
import { useDraft } from '../forms/use-draft.ts';
import { useSubmit } from '../forms/use-submit.ts';

export interface NoteFormProps {
  readonly patientId: string;
  readonly day: Day;
  readonly signer: string;
  readonly draft: Typed | null;
}

const prefix = 'note-';

const useNote = ({ patientId, day, draft }: NoteFormProps) => {
  const router = useRouter();
  const empty: Typed = { day };
  const [typed, setTyped] = useState<Typed>(draft ?? empty);
  const [isSigned, setSigned] = useState(false);
  const draftState = useDraft(patientId, 'visit-note', typed, isSigned);
  const submit = useSubmit(prefix, `${prefix}send`, visitNoteFields);
  const type = (path: string, text: string) => {
    setSigned(false);
    setTyped((before) => ({ ...before, [path]: text }));
  };
  const sign = async () => {
    const { value, problems } = readTyped(visitNoteFields, typed);
    const isTaken = await submit.send(problems, async () => {
      await client.clinician.visitNotes.record.mutate({ patientId, note: value });
      setSigned(true);
      await client.clinician.drafts.drop.mutate({ patientId, form: 'visit-note' });
    });
    if (!isTaken) return;
    setTyped(empty);
    router.refresh();
  };
  return { typed, isSigned, draftState, submit, type, sign };
};

export const NoteForm = (props: NoteFormProps) => {
  const { typed, isSigned, draftState, submit, type, sign } = useNote(props);
  const send = (event: FormEvent) => {
    event.preventDefault();
    void sign();
  };
  return (
    <form method="post" className="stack note-form" noValidate onSubmit={send}>
      <ErrorSummary problems={submit.problems} />
      <DescriptorFields
        fields={visitNoteFields}
        typed={typed}
        onType={type}
        errorOf={submit.errorOf}
        prefix={prefix}
      />
      <div className="row">
        <Button type="submit" id={`${prefix}send`} aria-disabled={submit.isBusy || undefined}>
          {say('save', { name: props.signer })}
        </Button>
        <span role="status" className="soft">
          {isSigned ? say('saved') : draftState === 'none' ? '' : say(`draft.${draftState}`)}
        </span>
      </div>
    </form>
  );
};
