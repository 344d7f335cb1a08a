'use client';
/** A form of descriptor fields: summary of problems on top, questions about unlikely values below, one button. */
import type { ReactNode } from 'react';
import { confirmedName } from '#api/inputs/posted-form.ts';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import type { ButtonProps } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { DescriptorFields } from './descriptor-fields.tsx';
import type { FieldsProps } from './field-props.ts';
import { type Begun, type Send, type SentProps, type TypedForm, useForm, useSent } from './use-form.ts';
import type { Submit } from './use-submit.ts';

interface Look extends Pick<FieldsProps, 'choices' | 'several' | 'hints'>, Begun {
  readonly label: string;
  readonly busyLabel?: string;
  /** Left out = the one thing to do on its page. */
  readonly tone?: ButtonProps['tone'];
  /** The two answers to what is asked back, where it is not a figure that is asked about. */
  readonly confirm?: { readonly yes: string; readonly no: string };
  /** Between the fields and the button. */
  readonly children?: ReactNode;
}

/** Works before the page’s scripts have come. */
export type SentFrameProps = Look & SentProps;

/** Needs them: its button waits. */
export interface FormFrameProps extends Look {
  /** Stands before the ids of the fields, so that several forms can share a page. */
  readonly prefix: string;
  readonly fields: readonly Field[];
  readonly send: Send;
  /** Said when the entry was taken. */
  readonly taken: string;
}

const Unlikely = ({ submit, confirm }: { readonly submit: Submit } & Pick<Look, 'confirm'>) => (
  <ConfirmQuestion
    question={submit.questions.join(' ')}
    yes={confirm?.yes ?? say('it-is-correct-save')}
    no={confirm?.no ?? say('change-it')}
    sendsYes={confirmedName}
    onNo={submit.forget}
  />
);

const Inside = ({ at, props }: { readonly at: TypedForm; readonly props: FormFrameProps }) => {
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
        <FreshSignIn onProved={() => void at.send(false)} onCancel={submit.forget} />
      ) : null}
      {submit.questions.length > 0 ? (
        <Unlikely submit={submit} confirm={props.confirm} />
      ) : (
        <div className="row">
          <SendButton id={at.buttonId} tone={props.tone} aria-disabled={submit.isBusy || undefined}>
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
  const { at, fields, taken, send } = useSent({ sent, about, onTaken, isAnew, ...look });
  const props = { ...look, fields, taken, send, prefix: at.prefix };
  return (
    <PostedForm form={sent.name} about={about} className="stack" onSubmit={at.onSubmit}>
      <Inside at={at} props={props} />
    </PostedForm>
  );
};
