/** What a call is made with, how it is told of, and what is said of a procedure. */
import type { Access } from '#data/access.ts';
import type { Reading } from '#data/database/read-together.ts';
import type { ProgramToken } from '#data/programs/tokens.ts';
import type { Person, Role } from './person.ts';

export interface ApiContext {
  readonly person: Person | null;
  /** Null when nobody is signed in and no program asks. */
  readonly access: Access | null;
  /** Of another program that asks; then there is no person. */
  readonly token?: ProgramToken;
  /** Clinical minus system time, for phones of the demo. */
  readonly clockOffset: number;
  /** Takes the calls of one session in turn, so that they leave room for others; without it a call begins at once. */
  readonly inTurn?: <T>(call: () => Promise<T>) => Promise<T>;
  /** What one of the context's questions has read, the next need not; without it each reads for itself. */
  readonly reading?: Reading;
  /** Told of every call and how it ended; never of what was sent or answered. */
  readonly observe?: (call: ObservedCall) => void;
}

export interface ObservedCall {
  readonly path: string;
  readonly kind: string;
  /** "ok", or the transport code of the refusal. */
  readonly outcome: string;
  readonly problem: string | null;
  /** A fault of ours, to be logged; refusals have none. */
  readonly fault: unknown;
  readonly milliseconds: number;
}

/** What `npm run procedures` and the access test print of a procedure. */
export interface ProcedureMeta {
  readonly roles: readonly (Role | 'program')[];
  /** In words: what is checked beside the role. */
  readonly guard: string;
}
