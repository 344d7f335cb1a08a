/** What a procedure may answer instead of a result: one list of codes, each with its transport code. */
import { TRPCError } from '@trpc/server';
import type { Refusal } from '#core/outcome.ts';
import { refusalText } from '#messages/refusals.ts';
import type { Text } from '#messages/text.ts';

const transport = {
  'signed-out': 'UNAUTHORIZED',
  'not-yours': 'FORBIDDEN',
  'not-found': 'NOT_FOUND',
  refused: 'BAD_REQUEST',
  'not-confirmed': 'PRECONDITION_FAILED',
  conflict: 'CONFLICT',
  'foreign-origin': 'FORBIDDEN',
  /** The record is kept to a care team the caller is not in. */
  'care-team': 'FORBIDDEN',
  /** Passphrase or PIN is asked for again. */
  'fresh-sign-in': 'FORBIDDEN',
  /** The sign-in is not fully set up yet. */
  'set-up': 'FORBIDDEN',
  'too-often': 'TOO_MANY_REQUESTS',
  /** What would be read now could not be written into the audit. */
  'not-recorded': 'SERVICE_UNAVAILABLE',
} as const satisfies Record<string, TRPCError['code']>;

export type ProblemCode = keyof typeof transport;

/** A value that was refused; with its reason in every language where a patient may read it. */
export interface FieldRefusal extends Refusal {
  readonly text?: Text;
}

/**
 * An expected refusal on its way to the border. What it says is for people; nothing internal stands in it.
 * A patient is told in every language, staff in English.
 */
export class Problem extends TRPCError {
  readonly problem: ProblemCode;
  /** null where only staff reads it. */
  readonly text: Text | null;
  readonly refusals: readonly FieldRefusal[];
  /** What to confirm, for an unlikely value. */
  readonly questions: readonly string[];

  constructor(
    problem: ProblemCode,
    said: Text | string,
    more: { refusals?: readonly FieldRefusal[]; questions?: readonly string[] } = {},
  ) {
    super({ code: transport[problem], message: typeof said === 'string' ? said : said.en });
    this.text = typeof said === 'string' ? null : said;
    this.problem = problem;
    this.refusals = more.refusals ?? [];
    this.questions = more.questions ?? [];
  }
}

export const refusedWith = (refusals: readonly Refusal[]): Problem =>
  new Problem('refused', refusals.map((refusal) => refusal.reason).join(' '), { refusals });

/** What somebody is told whose call failed; `text` is null where only staff reads it. */
export const toldOf = (error: TRPCError): { readonly message: string; readonly text: Text | null } => {
  if (error instanceof Problem) return error;
  const text = refusalText(
    error.code === 'INTERNAL_SERVER_ERROR' ? 'server-failed-on-page' : 'request-unread-on-page',
  );
  return { message: text.en, text };
};
