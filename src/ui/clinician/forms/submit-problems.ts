/** What the server answered instead of a result, by field, in words a form can show. */
import { say } from '#messages/en/staff/clinic.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';

export interface Refused {
  readonly problems: readonly Problem[];
  /** Unlikely values to confirm; not errors. */
  readonly questions: readonly string[];
  /** The passphrase has to be given again first; nothing typed is wrong. */
  readonly needsProof?: boolean;
}

interface ProblemData {
  readonly problem?: string | null;
  readonly refusals?: readonly { readonly field: string; readonly reason: string }[];
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

/**
 * Reads an error of a procedure. `prefix` stands before the ids of the form's fields; `fallback` is
 * the id that a problem without a field of its own leads to.
 */
export const refusedBy = (error: unknown, prefix: string, fallback: string): Refused => {
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
    problems: refusals.map(({ field, reason }) => ({
      field: pathOf(field) === '' ? fallback : `${prefix}${pathOf(field)}`,
      text: reason,
    })),
    questions: [],
  };
};
