/** What a procedure may answer instead of a result: one list of codes, each with its transport code. */
import { TRPCError } from '@trpc/server';
import type { Refusal } from '#core/outcome.ts';

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
} as const satisfies Record<string, TRPCError['code']>;

export type ProblemCode = keyof typeof transport;

/** An expected refusal on its way to the border. `text` is for people; nothing internal stands in it. */
export class Problem extends TRPCError {
  readonly problem: ProblemCode;
  readonly refusals: readonly Refusal[];
  /** What to confirm, for an unlikely value. */
  readonly questions: readonly string[];

  constructor(
    problem: ProblemCode,
    text: string,
    more: { refusals?: readonly Refusal[]; questions?: readonly string[] } = {},
  ) {
    super({ code: transport[problem], message: text });
    this.problem = problem;
    this.refusals = more.refusals ?? [];
    this.questions = more.questions ?? [];
  }
}

export const refusedWith = (refusals: readonly Refusal[]): Problem =>
  new Problem('refused', refusals.map((refusal) => refusal.reason).join(' '), { refusals });
