/** Tokens of the clinic’s other programs. The secret of one is answered once, when it is made. */
import { z } from 'zod';
import { mostTokenDays, tokenScopes } from '#core/clinic/token-scopes.ts';
import { endToken, makeToken, type TokenLine, tokensOf } from '#data/programs/tokens.ts';
import { Problem } from '../errors.ts';
import { nothing } from '../outputs.ts';
import { inputsOf } from '../programs/document.ts';
import { exported, interfaceRoot } from '../programs/exported.ts';
import { administratorProcedure, freshAdministrator, router } from '../trpc.ts';

/** More open keys than anybody can keep an eye on. */
const mostOpen = 20;

const stateOf = (
  { endedAt, expiresAt }: Pick<TokenLine, 'endedAt' | 'expiresAt'>,
  now: number,
): 'open' | 'run-out' | 'withdrawn' => {
  if (endedAt !== null) return 'withdrawn';
  return now < expiresAt ? 'open' : 'run-out';
};

export const programTokensRouter = router({
  list: administratorProcedure.query(async ({ ctx: { access } }) => {
    const now = Date.now();
    return (await tokensOf(access)).map(({ clinicId: _, ...token }) => ({
      ...token,
      state: stateOf(token, now),
    }));
  }),

  /** What a program may ask with one, as the document says it. */
  questions: administratorProcedure.query(() =>
    exported.map((one) => ({
      ...{ path: `${interfaceRoot}${one.path}`, scope: one.scope, summary: one.summary },
      takes: inputsOf(one)
        .flatMap(({ properties }) => Object.keys(properties ?? {}))
        .filter((name) => !one.path.includes(`{${name}}`)),
    })),
  ),

  make: freshAdministrator
    .input(
      z.object({
        name: z.string().trim().min(2).max(80),
        scopes: z.array(z.enum(tokenScopes)).min(1).max(tokenScopes.length),
        days: z.int().min(1).max(mostTokenDays),
      }),
    )
    .mutation(({ ctx: { access }, input }) =>
      access.store.write(async () => {
        const now = Date.now();
        const open = (await tokensOf(access)).filter((token) => stateOf(token, now) === 'open');
        if (open.length >= mostOpen)
          throw new Problem('conflict', `${mostOpen} tokens hold already. Withdraw one that is not needed.`);
        return makeToken(access, { ...input, scopes: [...new Set(input.scopes)] });
      }),
    ),

  /** At once and for good; a program that needs one is given a new one. */
  withdraw: administratorProcedure
    .input(z.object({ tokenId: z.string().min(1).max(64) }))
    .output(nothing)
    .mutation(async ({ ctx: { access }, input }) => {
      if (!(await endToken(access, input.tokenId)))
        throw new Problem('conflict', 'There is no such token in your clinic, or it was withdrawn already.');
    }),
});
