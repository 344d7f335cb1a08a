'use client';
/** A dose set beside the one in force, and what comes of it: the server computes it, and nothing is kept until asked. */
import { type FormEvent, useMemo, useState } from 'react';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import type { Proposed } from '../answers.ts';
import { client } from '../client.ts';
import { readTyped, type Typed } from '../forms/typed.ts';
import { useDraft } from '../forms/use-draft.ts';
import { useSubmit } from '../forms/use-submit.ts';
import { DoseForm } from './dose-form.tsx';
import type { PrescribeFormProps } from './prescribe-form-props.ts';
import { ProposalResult, type ShownProposal } from './proposal-result.tsx';
import { allAsked, requestFrom, withScheme } from './request-fields.ts';
import { keptWith, typedBefore } from './typed-before/typed-before.ts';
import { TypedEarlier } from './typed-before/typed-earlier.tsx';

/** What is typed stays for this person until it is signed or added, whatever page is opened meanwhile. */
const useTyped = ({ patientId, start, kept, of }: PrescribeFormProps) => {
  const [before] = useState(() => typedBefore(kept, of));
  const [typed, setTyped] = useState<Typed>({ ...start, ...before });
  const [isDone, setDone] = useState(false);
  const [others] = useState(kept);
  const keeping = useMemo(
    () => keptWith(others, of, isDone ? start : typed, start),
    [others, of, isDone, typed, start],
  );
  const draft = useDraft(patientId, 'prescribe', keeping, false);
  const type = (next: Typed) => {
    setDone(false);
    setTyped(next);
  };
  return { typed, type, draft, setDone, isRestored: !isDone && Object.keys(before).length > 0 };
};

export const PrescribeForm = (props: PrescribeFormProps) => {
  const { method, patientId, start } = props;
  const [readAt] = useState(props.readAt);
  const { typed, type, draft, setDone, isRestored } = useTyped(props);
  const [shown, setShown] = useState<ShownProposal | 'kept' | null>(null);
  const asked = allAsked(method, typed);
  const submit = useSubmit('', 'propose', asked);
  // What was proposed no longer answers what is asked.
  const change = (next: Typed) => {
    setShown(null);
    type(next);
  };
  const propose = async (event: FormEvent) => {
    event.preventDefault();
    setShown(null);
    const { value, problems } = readTyped(asked, typed);
    await submit.send(problems, async () => {
      const request = requestFrom(method, value);
      const proposed = await client.clinician.prescriptions.propose.mutate({ patientId, request });
      setShown({ request, proposed: proposed as Proposed, inForce: props.inForce });
    });
  };
  const kept = () => {
    setShown('kept');
    setDone(true);
  };
  return (
    <>
      <DoseForm
        {...{ ...props, typed, submit }}
        onType={(path, text) => {
          submit.answered(path, text);
          change(withScheme(typed, path, text));
        }}
        onPropose={propose}
        note={<TypedEarlier isRestored={isRestored} draft={draft} onAnew={() => change(start)} />}
      />
      <div className="result stack">
        {shown && shown !== 'kept' ? (
          <ProposalResult {...props} {...{ shown, readAt }} onKept={kept} onSigned={() => setDone(true)} />
        ) : (
          <p role="status" className="proposal soft">
            {say(shown ? 'kept' : 'nothing-proposed')}
          </p>
        )}
        {props.children}
      </div>
    </>
  );
};
