'use client';
/** A dose set beside the one in force, and what comes of it: the server computes it, and nothing is kept until asked. */
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { say as sayPlain } from '#messages/en/staff/prescribing.ts';
import type { Proposed } from '../answers.ts';
import { client } from '../client.ts';
import { readTyped, type Typed } from '../forms/typed.ts';
import { useSubmit } from '../forms/use-submit.ts';
import { DoseForm } from './dose-form.tsx';
import type { PrescribeFormProps } from './prescribe-form-props.ts';
import { ProposalCard } from './proposal-card.tsx';
import { askedFields, requestFrom, withScheme } from './request-fields.ts';
import { SignProposal } from './sign-proposal.tsx';

interface Shown {
  readonly request: Readonly<Record<string, unknown>>;
  readonly proposed: Proposed;
  /** As it was proposed beside: once signed, the new version is the one in force. */
  readonly inForce: PrescribeFormProps['inForce'];
}

const Result = (props: {
  readonly shown: Shown;
  readonly of: PrescribeFormProps;
  readonly readAt: number;
  readonly onKept: () => void;
}) => {
  const { shown, of } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <section className="proposal" aria-labelledby="proposal-heading">
      <h2 id="proposal-heading" ref={heading} tabIndex={-1} className="visually-hidden">
        {sayPlain('proposed')}
      </h2>
      <ProposalCard proposed={shown.proposed} inForce={shown.inForce} held={of.held}>
        <SignProposal
          patientId={of.patientId}
          request={shown.request}
          proposed={shown.proposed}
          itemId={shown.inForce?.itemId ?? null}
          signer={of.signer}
          readAt={props.readAt}
          onKept={props.onKept}
        />
      </ProposalCard>
    </section>
  );
};

export const PrescribeForm = (props: PrescribeFormProps) => {
  const { method, patientId } = props;
  const [readAt] = useState(props.readAt);
  const [typed, setTyped] = useState<Typed>(props.start);
  const [shown, setShown] = useState<Shown | null>(null);
  const [isKept, setKept] = useState(false);
  const submit = useSubmit('', 'propose');
  const asked = askedFields(method, typed);
  const type = (path: string, text: string) => {
    // What was proposed no longer answers what is asked.
    setShown(null);
    setTyped(withScheme(typed, path, text));
  };
  const propose = async (event: FormEvent) => {
    event.preventDefault();
    setKept(false);
    setShown(null);
    const { value, problems } = readTyped([...asked.first, ...asked.usual], typed);
    const request = requestFrom(method, value);
    await submit.send(problems, async () => {
      const proposed = await client.clinician.prescriptions.propose.mutate({ patientId, request });
      setShown({ request, proposed: proposed as Proposed, inForce: props.inForce });
    });
  };
  const kept = () => {
    setShown(null);
    setKept(true);
  };
  return (
    <>
      <DoseForm {...props} typed={typed} onType={type} submit={submit} onPropose={propose} />
      <div className="result stack">
        {shown ? (
          <Result shown={shown} of={props} readAt={readAt} onKept={kept} />
        ) : (
          <p role="status" className="proposal soft">
            {say(isKept ? 'kept' : 'nothing-proposed')}
          </p>
        )}
        {props.children}
      </div>
    </>
  );
};
