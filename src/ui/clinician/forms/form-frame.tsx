'use client';
/** A form of descriptor fields: summary of problems on top, questions about unlikely values below, one button. */
import { type FormEvent, type ReactNode, useState } from 'react';
import { confirmedName, type PostedTexts } from '#api/inputs/posted-form.ts';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { client } from '../client.ts';
import { DescriptorFields, type FieldsProps } from './descriptor-fields.tsx';
import type { SentForm } from './sent/sent-form.ts';
import { readTyped, type Typed } from './typed.ts';
import { type Submit, useSubmit } from './use-submit.ts';

interface Look extends Pick<FieldsProps, 'choices' | 'several' | 'hints'> {
  readonly start?: Typed;
  readonly label: string;
  readonly busyLabel?: string;
  /** Clears the fields after a taken entry; left out, they stay. */
  readonly clearsTo?: Typed;
  /** Something was typed, so what was worked out before no longer belongs to it. */
  readonly onTyped?: () => void;
  /** Between the fields and the button. */
  readonly children?: ReactNode;
}

/** `isConfirmed` is true when unlikely values were confirmed. */
type Send = (value: Record<string, unknown>, isConfirmed: boolean) => Promise<void>;

/** Works before the page’s scripts have come. */
export interface SentFrameProps extends Look {
  readonly sent: SentForm;
  readonly about: PostedTexts;
  /** Only where the page knows more of them than the route, such as the options. */
  readonly fields?: readonly Field[];
  /** Only where the page does more with the answer than look again. */
  readonly send?: Send;
  readonly taken?: string;
  /** Begun anew on the page: what was typed before no longer counts. */
  readonly isAnew?: boolean;
  readonly onTaken?: () => void;
}

/** Needs them: its button waits. */
export interface FormFrameProps extends Look {
  /** Stands before the ids of the fields, so that several forms can share a page. */
  readonly prefix: string;
  readonly fields: readonly Field[];
  readonly send: Send;
  /** Said when the entry was taken. */
  readonly taken: string;
}

const Unlikely = ({ submit }: { readonly submit: Submit }) => (
  <ConfirmQuestion
    question={submit.questions.join(' ')}
    yes={say('it-is-correct-save')}
    no={say('change-it')}
    sendsYes={confirmedName}
    onNo={submit.forget}
  />
);

type Around = FormFrameProps & { readonly posted: ReturnType<typeof usePosted> };

/** What stands in a form, and how it is sent. */
const useForm = (props: Around) => {
  const { posted, prefix, fields } = props;
  const [typed, setTyped] = useState<Typed>(posted && !posted.done ? posted.typed : (props.start ?? {}));
  const [isTaken, setTaken] = useState(Boolean(posted?.done));
  const buttonId = `${prefix}send`;
  const submit = useSubmit(prefix, buttonId, fields, posted);
  const send = async (isConfirmed: boolean) => {
    const { value, problems } = readTyped(fields, typed);
    const taken = await submit.send(problems, () => props.send(value, isConfirmed));
    setTaken(taken);
    if (taken && props.clearsTo) setTyped(props.clearsTo);
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    void send((submitter as HTMLButtonElement | null)?.name === confirmedName);
  };
  const onType = (path: string, text: string) => {
    setTaken(false);
    props.onTyped?.();
    // A confirmed value is the one that was asked about.
    if (submit.questions.length > 0) submit.forget();
    setTyped({ ...typed, [path]: text });
  };
  return { typed, isTaken, buttonId, submit, send, onSubmit, onType };
};

const Inside = ({
  at,
  props,
}: {
  readonly at: ReturnType<typeof useForm>;
  readonly props: FormFrameProps;
}) => {
  const { submit } = at;
  return (
    <>
      <ErrorSummary problems={submit.problems} />
      <DescriptorFields
        fields={props.fields}
        typed={at.typed}
        onType={at.onType}
        errorOf={submit.errorOf}
        prefix={props.prefix}
        choices={props.choices}
        several={props.several}
        hints={props.hints}
      />
      {props.children}
      {submit.needsProof ? (
        <FreshSignIn isSent onProved={() => void at.send(false)} onCancel={submit.forget} />
      ) : null}
      {submit.questions.length > 0 ? (
        <Unlikely submit={submit} />
      ) : (
        <div className="row">
          <SendButton id={at.buttonId} aria-disabled={submit.isBusy || undefined}>
            {submit.isBusy ? (props.busyLabel ?? 'Saving…') : props.label}
          </SendButton>
          <span role="status">{at.isTaken ? props.taken : ''}</span>
        </div>
      )}
    </>
  );
};

export const FormFrame = (props: FormFrameProps) => {
  const at = useForm({ ...props, posted: null });
  return (
    <ScriptedForm className="stack" onSubmit={at.onSubmit}>
      <Inside at={at} props={props} />
    </ScriptedForm>
  );
};

export const SentFrame = ({ sent, about, onTaken, isAnew, ...look }: SentFrameProps) => {
  const send: Send = async (value, isConfirmed) => {
    await sent.send(client, { about, value, isConfirmed });
    onTaken?.();
  };
  const prefix = sent.prefix(about);
  const props = { send, taken: sent.taken, fields: sent.fields(about), ...look, prefix };
  const posted = usePosted(sent.name, about);
  const at = useForm({ ...props, posted: isAnew ? null : posted });
  return (
    <PostedForm form={sent.name} about={about} className="stack" onSubmit={at.onSubmit}>
      <Inside at={at} props={props} />
    </PostedForm>
  );
};
