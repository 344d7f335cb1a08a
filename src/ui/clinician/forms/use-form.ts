'use client';
/** What is typed into a form of descriptor fields, and how it is sent: from the page, or as the browser sent it. */
import { type FormEvent, useState } from 'react';
import { confirmedName, type PostedTexts } from '#api/inputs/posted-form.ts';
import type { Field } from '#core/calculations/describe.ts';
import { usePosted, type WhatPosted } from '#ui/design-system/posted/posted.tsx';
import { client } from '../client.ts';
import type { SentForm } from './sent/sent-form.ts';
import { readTyped, type Typed } from './typed.ts';
import { useSubmit } from './use-submit.ts';

export interface Begun {
  readonly start?: Typed;
  /** Clears the fields after a taken entry; left out, they stay. */
  readonly clearsTo?: Typed;
  /** Something was typed, so what was worked out before no longer belongs to it. */
  readonly onTyped?: (path: string, text: string) => void;
}

/** `isConfirmed` is true when unlikely values were confirmed. */
export type Send = (value: Record<string, unknown>, isConfirmed: boolean) => Promise<void>;

interface FormProps extends Begun {
  readonly prefix: string;
  readonly fields: readonly Field[];
  readonly send: Send;
  readonly posted: WhatPosted | null;
}

export const useForm = (props: FormProps) => {
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
    props.onTyped?.(path, text);
    // A confirmed value is the one that was asked about.
    if (submit.questions.length > 0) submit.forget();
    submit.answered(path, text);
    setTyped((before) => ({ ...before, [path]: text }));
  };
  const { errorOf } = submit;
  return { typed, isTaken, prefix, buttonId, submit, send, onSubmit, onType, errorOf };
};

export type TypedForm = ReturnType<typeof useForm>;

export interface SentProps extends Begun {
  readonly sent: SentForm;
  readonly about: PostedTexts;
  /** Only where the page knows more of them than the route, such as the options. */
  readonly fields?: readonly Field[];
  /** Only where the page does more with the answer than look again. */
  readonly send?: Send;
  readonly taken?: string;
  /** Begun anew on the page: what was typed before no longer counts. */
  readonly isAnew?: boolean;
  readonly onTaken?: (answer: unknown) => void;
}

export const useSent = ({ sent, about, isAnew, onTaken, ...props }: SentProps) => {
  const send: Send = async (value, isConfirmed) => {
    const answer = await sent.send(client, { about, value, isConfirmed });
    onTaken?.(answer);
  };
  const given = { send, taken: sent.taken, fields: sent.fields(about), ...props };
  const posted = usePosted(sent.name, about);
  const at = useForm({ ...given, prefix: sent.prefix(about), posted: isAnew ? null : posted });
  return { at, ...given };
};
