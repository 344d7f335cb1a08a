/** What the fields of a form are drawn from, and what each control of them needs. */
import type { ReactNode } from 'react';
import type { Field } from '#core/calculations/describe.ts';
import { labelOf } from './field-words.ts';
import type { Typed } from './typed.ts';

export interface FieldsProps {
  readonly fields: readonly Field[];
  readonly typed: Typed;
  readonly onType: (path: string, text: string) => void;
  readonly errorOf: (path: string) => string | undefined;
  /** Stands before every id, so that several forms can share a page. */
  readonly prefix?: string;
  readonly path?: string;
  /** Options in place of a descriptor's bare text, by field name, such as the exercises. */
  readonly choices?: Readonly<Record<string, readonly { readonly value: string; readonly label: string }[]>>;
  /** What may be ticked in a list of texts, by field name. */
  readonly several?: Readonly<Record<string, readonly string[]>>;
  readonly hints?: Readonly<Record<string, ReactNode>>;
}

export interface OneProps extends FieldsProps {
  readonly field: Field;
}

const mayStayEmpty: readonly Field['kind'][] = ['text', 'day', 'date-time'];

export const wordsOf = (props: OneProps) => {
  const { field, path = '', prefix = '', hints } = props;
  const at = `${path}${field.name}`;
  return {
    at,
    name: `${prefix}${at}`,
    label: labelOf(field),
    error: props.errorOf(at),
    // A text or day that may be null may stay empty; a score that may be null is an answer of its own.
    isOptional: field.optional ?? (mayStayEmpty.includes(field.kind) && field.nullable === true),
    hint: hints?.[at],
  };
};
