/** What the server answered instead of a result, by field, in words a form can show. */
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { askedFor, noSuchDay, noSuchTime, numberAskedFor, typeWithin } from './field-problems.ts';

export interface Refused {
  readonly problems: readonly Problem[];
  /** Unlikely values to confirm; not errors. */
  readonly questions: readonly string[];
  /** The passphrase has to be given again first; nothing typed is wrong. */
  readonly needsProof?: boolean;
}

export interface RefusedField {
  readonly field: string;
  readonly code?: string;
  readonly reason: string;
}

interface ProblemData {
  readonly problem?: string | null;
  readonly refusals?: readonly RefusedField[];
  readonly questions?: readonly string[];
}

const noAnswer = say('no-response');

/** "input.home.observedSessions" → "home.observedSessions"; one element of a list is its list's problem. */
const pathOf = (field: string): string => field.replace(/^input\.?/, '').replace(/(\.\d+|\[\d+\]).*$/, '');

/** The same error with everything refused at one field, for a form that has one field for many. */
export const refusedAt = (error: unknown, field: string): unknown => {
  const { data, message } = error as { data?: ProblemData | null; message?: string };
  if (!data?.refusals) return error;
  const refusals = data.refusals.map(({ reason }) => ({ field: `input.${field}`, reason }));
  return Object.assign(new Error(message), { data: { ...data, refusals } });
};

/** The descriptor at "home.observedSessions"; undefined where the form has none there. */
export const fieldAt = (fields: readonly Field[], path: string): Field | undefined => {
  const [name = '', ...rest] = path.split('.');
  const field = fields.find((one) => one.name === name);
  if (rest.length === 0) return field;
  return field?.kind === 'record' ? fieldAt(field.fields, rest.join('.')) : undefined;
};

/** A refusal by the label that stands on the page; the server's own sentence where it says more than bounds. */
const inWords = ({ code, reason }: RefusedField, field: Field | undefined): string => {
  if (!field) return reason;
  if (code === 'missing') return askedFor(field);
  if (field.kind === 'day' && code === 'wrong-type') return noSuchDay(field);
  if (field.kind === 'date-time' && code === 'wrong-type') return noSuchTime(field);
  if (field.kind === 'flag' && code === 'wrong-type') return askedFor(field);
  if (field.kind !== 'number' && field.kind !== 'integer') return reason;
  if (code === 'wrong-type') return numberAskedFor(field);
  // What a calculation refused says why, and what else to type; the border names the field by its code.
  const isPastBound = (code === 'too-low' || code === 'too-high') && reason.startsWith(`${field.name} `);
  return isPastBound ? typeWithin(field) : reason;
};

/**
 * Reads an error of a procedure. `prefix` stands before the ids of the form's fields; `fallback` is
 * the id that a problem without a field of its own leads to; `fields` are those the form was made from.
 */
export const refusedBy = (
  error: unknown,
  prefix: string,
  fallback: string,
  fields: readonly Field[] = [],
): Refused => {
  const data = (error as { data?: ProblemData | null } | null)?.data;
  if (!data) return { problems: [{ field: fallback, text: noAnswer }], questions: [] };
  if (data.problem === 'fresh-sign-in') return { problems: [], questions: [], needsProof: true };
  if (data.questions && data.questions.length > 0) return { problems: [], questions: data.questions };
  const refusals = data.refusals ?? [];
  if (refusals.length === 0) {
    const text = (error as { message?: string }).message ?? noAnswer;
    return { problems: [{ field: fallback, text }], questions: [] };
  }
  return {
    problems: refusals.map((one) => {
      const path = pathOf(one.field);
      return {
        field: path === '' ? fallback : `${prefix}${path}`,
        text: inWords(one, fieldAt(fields, path)),
      };
    }),
    questions: [],
  };
};
