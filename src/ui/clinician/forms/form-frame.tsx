'use client';
/** A form of descriptor fields: summary of problems on top, questions about unlikely values below, one button. */
import { type FormEvent, type ReactNode, useState } from 'react';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { DescriptorFields, type FieldsProps } from './descriptor-fields.tsx';
import { readTyped, type Typed } from './typed.ts';
import { type Submit, useSubmit } from './use-submit.ts';

export interface FormFrameProps extends Pick<FieldsProps, 'choices' | 'several' | 'hints'> {
  /** Stands before the ids of the fields, so that several forms can share a page. */
  readonly prefix: string;
  readonly fields: readonly Field[];
  readonly start?: Typed;
  readonly label: string;
  readonly busyLabel?: string;
  /** `isConfirmed` is true when unlikely values were confirmed. */
  readonly send: (value: Record<string, unknown>, isConfirmed: boolean) => Promise<void>;
  /** Clears the fields after a taken entry; left out, they stay. */
  readonly clearsTo?: Typed;
  /** Said when the entry was taken. */
  readonly taken: string;
  /** Something was typed, so what was worked out before no longer belongs to it. */
  readonly onTyped?: () => void;
  /** Between the fields and the button. */
  readonly children?: ReactNode;
}

/** The page sends the form itself; the browser does not. */
const instead = (send: () => void) => (event: FormEvent) => {
  event.preventDefault();
  send();
};

const Unlikely = ({ submit, onConfirm }: { readonly submit: Submit; readonly onConfirm: () => void }) => (
  <ConfirmQuestion
    question={submit.questions.join(' ')}
    yes={say('it-is-correct-save')}
    no={say('change-it')}
    onYes={onConfirm}
    onNo={submit.forget}
  />
);

export const FormFrame = (props: FormFrameProps) => {
  const [typed, setTyped] = useState<Typed>(props.start ?? {});
  const [isTaken, setTaken] = useState(false);
  const buttonId = `${props.prefix}send`;
  const submit = useSubmit(props.prefix, buttonId, props.fields);
  const send = async (isConfirmed: boolean) => {
    const { value, problems } = readTyped(props.fields, typed);
    const taken = await submit.send(problems, () => props.send(value, isConfirmed));
    setTaken(taken);
    if (taken && props.clearsTo) setTyped(props.clearsTo);
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={instead(() => void send(false))}>
      <ErrorSummary problems={submit.problems} />
      <DescriptorFields
        fields={props.fields}
        typed={typed}
        onType={(path, text) => {
          setTaken(false);
          props.onTyped?.();
          setTyped({ ...typed, [path]: text });
        }}
        errorOf={submit.errorOf}
        prefix={props.prefix}
        choices={props.choices}
        several={props.several}
        hints={props.hints}
      />
      {props.children}
      {submit.needsProof ? <FreshSignIn onProved={() => void send(false)} onCancel={submit.forget} /> : null}
      {submit.questions.length > 0 ? (
        <Unlikely submit={submit} onConfirm={() => void send(true)} />
      ) : (
        <div className="row">
          <Button type="submit" id={buttonId} aria-disabled={submit.isBusy || undefined}>
            {submit.isBusy ? (props.busyLabel ?? 'Saving…') : props.label}
          </Button>
          <span role="status">{isTaken ? props.taken : ''}</span>
        </div>
      )}
    </form>
  );
};
