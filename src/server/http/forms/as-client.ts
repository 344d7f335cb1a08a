/** The caller of the procedures in the shape a browser’s client has, so that a form sends in one way from both. */
import { TRPCError } from '@trpc/server';
import { Problem, toldOf } from '#api/errors.ts';
import type { createCaller } from '#api/root.ts';

/** As a browser is told of it. */
const asInBrowser = (error: unknown): unknown => {
  if (!(error instanceof TRPCError)) return error;
  const { problem, refusals, questions } =
    error instanceof Problem ? error : { problem: null, refusals: [], questions: [] };
  const { message, text } = toldOf(error);
  return Object.assign(new Error(message), { data: { problem, refusals, questions, text } });
};

type Call = ((input?: unknown) => Promise<unknown>) & { readonly [name: string]: Call };

const told = (call: Call) => async (input?: unknown) => {
  try {
    return await call(input);
  } catch (error) {
    throw asInBrowser(error);
  }
};

const wrapped = (call: Call): unknown =>
  new Proxy(() => undefined, {
    get: (_, name) => {
      if (typeof name !== 'string') return undefined;
      return name === 'mutate' || name === 'query' ? told(call) : wrapped(call[name] as Call);
    },
  });

export const asClient = (caller: ReturnType<typeof createCaller>): unknown =>
  wrapped(caller as unknown as Call);
