/** Passkeys as endpoints of the sign-in library, which keeps the sessions. For staff; patients have their PIN. */
import { createAuthEndpoint, getSessionFromCtx } from 'better-auth/api';
import { setSessionCookie } from 'better-auth/cookies';
import { z } from 'zod';
import { isFresh } from '#api/fresh-sign-in.ts';
import { addPasskey, notePasskeyUse, passkeyById } from '#data/accounts/passkeys.ts';
import { storedAttempts } from '#data/accounts/stored-attempts.ts';
import { noteRefused } from '#data/audit/audit.ts';
import { perStore } from '#data/database/per-store.ts';
import type { Store } from '#data/database/store.ts';
import { rememberCodes } from '../used-codes.ts';
import { algorithms, madePasskey, type PasskeyPlace, usedPasskey } from './answers.ts';
import { challengeMs, consumeChallenge, makeChallenge } from './challenge.ts';

export interface PasskeyContext {
  readonly store: Store;
  readonly auditKey: Uint8Array;
  /** Clinical instant, for the audit. */
  readonly now: number;
}

const words = {
  'signed-out': 'Sign in with your passphrase first.',
  'not-yours': 'Passkeys are for the clinic’s staff.',
  'set-up': 'First choose your own passphrase.',
  'fresh-sign-in': 'Enter your passphrase again to do this. What you entered is still on this page.',
  unread: 'This device’s response could not be used. Try again, or use your passphrase.',
  known: 'This passkey is already registered.',
  wrong: 'This passkey does not open anything here. Use your passphrase.',
} as const;

const statusOf = {
  'signed-out': 401,
  'not-yours': 403,
  'set-up': 403,
  'fresh-sign-in': 403,
  unread: 400,
  known: 409,
  wrong: 401,
} as const satisfies Record<keyof typeof words, number>;

type EndpointContext = Parameters<typeof setSessionCookie>[0];

const refuse = (ctx: EndpointContext, problem: keyof typeof words) => {
  ctx.setStatus(statusOf[problem] as never);
  return ctx.json({ problem, message: words[problem] });
};

const usedChallenges = perStore('passkey-challenges', (store, key: Uint8Array) =>
  rememberCodes(storedAttempts(store, key, 'passkey-challenge'), challengeMs),
);

/** Who may make a passkey now, or why not. */
const maker = async (ctx: EndpointContext) => {
  const found = await getSessionFromCtx(ctx as never);
  const user = found?.user as
    | { id: string; role: string; clinicId: string; startingUntil?: Date }
    | undefined;
  if (!found || !user) return 'signed-out' as const;
  if (user.role === 'patient') return 'not-yours' as const;
  if (user.startingUntil) return 'set-up' as const;
  const proved = (found.session as { provedAt?: Date | null }).provedAt ?? found.session.createdAt;
  return isFresh({ provedAt: new Date(proved).getTime() }, Date.now()) ? user : ('fresh-sign-in' as const);
};

const takeFor =
  (context: PasskeyContext, purpose: string) =>
  (challenge: string): boolean => {
    const used = usedChallenges(context.store, context.auditKey);
    return consumeChallenge(context.auditKey, purpose, challenge, Date.now(), used);
  };

/**
 * What a browser writes of an answer by itself (`toJSON`, level 3, section 5.1), sent as one text: the door takes
 * texts alone. All else in it is left out.
 */
const text = z.string().max(4000);
const written = text.transform((of, ctx) => {
  try {
    return JSON.parse(of) as unknown;
  } catch {
    ctx.addIssue('Not what a browser writes of a passkey.');
    return z.NEVER;
  }
});
const answerOf = <S extends z.ZodRawShape>(response: S) =>
  z.object({
    id: text,
    rawId: text,
    type: z.literal('public-key'),
    response: z.object(response),
    clientExtensionResults: z.object({}).default({}),
  });
const made = written.pipe(answerOf({ clientDataJSON: text, attestationObject: text }));
const used = written.pipe(answerOf({ clientDataJSON: text, authenticatorData: text, signature: text }));

const making = (context: () => PasskeyContext, place: PasskeyPlace) => ({
  passkeyBegin: createAuthEndpoint('/passkey/begin', { method: 'POST' }, async (ctx) => {
    const user = await maker(ctx);
    if (typeof user === 'string') return refuse(ctx, user);
    const challenge = makeChallenge(context().auditKey, `make ${user.id}`, Date.now());
    return ctx.json({ challenge, host: place.host, algorithms, userId: user.id });
  }),
  passkeyAdd: createAuthEndpoint(
    '/passkey/add',
    {
      method: 'POST',
      body: z.object({ name: z.string().trim().min(1).max(60), answer: made }),
    },
    async (ctx) => {
      const user = await maker(ctx);
      if (typeof user === 'string') return refuse(ctx, user);
      const { name, answer } = ctx.body;
      const row = await madePasskey(answer, place, takeFor(context(), `make ${user.id}`));
      if (!row) return refuse(ctx, 'unread');
      const acting = { ...context(), clinicId: user.clinicId, actorId: user.id };
      return (await addPasskey(acting, { ...row, name }, Date.now()))
        ? ctx.json({ added: true })
        : refuse(ctx, 'known');
    },
  ),
});

type Known = NonNullable<Awaited<ReturnType<typeof passkeyById>>>;

/** Whether the known passkey gave this answer, now and for us. */
const isAnswerOf = async (
  row: Known,
  context: PasskeyContext,
  place: PasskeyPlace,
  sent: z.infer<typeof used>,
): Promise<boolean> => {
  const counter = await usedPasskey(sent, row, place, takeFor(context, 'sign in'));
  return counter !== null && notePasskeyUse(context.store, row.id, counter, Date.now());
};

const refuseKnown = (ctx: EndpointContext, context: PasskeyContext, row: Known | null) => {
  const subject = 'signed-in-with-passkey';
  if (row) {
    const acting = { ...context, clinicId: row.clinicId, actorId: row.userId };
    noteRefused(acting, { subject, subjectId: row.userId });
  }
  return refuse(ctx, 'wrong');
};

const signingIn = (context: () => PasskeyContext, place: PasskeyPlace) => ({
  passkeyAsk: createAuthEndpoint('/passkey/ask', { method: 'POST' }, async (ctx) =>
    ctx.json({ challenge: makeChallenge(context().auditKey, 'sign in', Date.now()), host: place.host }),
  ),
  passkeySignIn: createAuthEndpoint(
    '/passkey/sign-in',
    {
      method: 'POST',
      body: z.object({ answer: used }),
    },
    async (ctx) => {
      const row = await passkeyById(context().store, ctx.body.answer.id);
      if (!row || !(await isAnswerOf(row, context(), place, ctx.body.answer)))
        return refuseKnown(ctx, context(), row);
      const { internalAdapter } = ctx.context;
      const user = await internalAdapter.findUserById(row.userId);
      // The library makes no session for who was deactivated.
      const session = user && (await internalAdapter.createSession(user.id, false, { passkeyId: row.id }));
      if (!session) return refuseKnown(ctx, context(), row);
      await setSessionCookie(ctx, { session, user });
      return ctx.json({ user: { id: row.userId, clinicId: row.clinicId } });
    },
  ),
});

export const passkeySignIn = (context: () => PasskeyContext, place: PasskeyPlace) =>
  ({
    id: 'passkey-sign-in',
    endpoints: { ...making(context, place), ...signingIn(context, place) },
  }) as const;
