/** Signing in on a patient's phone, as endpoints of the sign-in library, which keeps the sessions. */
import { createAuthEndpoint, getSessionFromCtx } from 'better-auth/api';
import { setSessionCookie } from 'better-auth/cookies';
import { z } from 'zod';
import { choosePin, isGoodPin, tryPin } from '#data/accounts/phone-pin.ts';
import {
  enrolPhone,
  type KnownPhone,
  type PhoneContext,
  phoneOf,
  pinAttempts,
} from '#data/accounts/phones.ts';
import { noteProof } from '#data/accounts/sign-in-sessions.ts';
import { type RefusalKey, refusalText } from '#messages/refusals.ts';
import type { Text } from '#messages/text.ts';

const cookieName = 'phone';
/** As long as browsers keep a cookie; each opening begins it anew. */
const cookieDays = 400;

/** What each refusal says, by its code. */
const refusals = {
  'no-invitation': 'code-not-open',
  'no-phone': 'phone-not-set-up',
  'plain-pin': 'pin-too-plain',
  'pin-chosen': 'pin-chosen-already',
  'too-many-tries': 'no-tries-left',
} as const satisfies Readonly<Record<string, RefusalKey>>;

type Refusal = keyof typeof refusals;

type EndpointContext = Parameters<typeof setSessionCookie>[0];

const answerWith = (ctx: EndpointContext, status: number, problem: Refusal | 'wrong-pin', text: Text) => {
  ctx.setStatus(status as never);
  return ctx.json({ problem, message: text.en, text });
};

const refuse = (ctx: EndpointContext, status: number, problem: Refusal) =>
  answerWith(ctx, status, problem, refusalText(refusals[problem]));

const ownCookie = (ctx: EndpointContext) =>
  ctx.context.createAuthCookie(cookieName, { maxAge: cookieDays * 86_400, sameSite: 'strict' });

const phoneIn = async (ctx: EndpointContext, context: PhoneContext): Promise<KnownPhone | null> =>
  phoneOf(context.store, ctx.getCookie(ownCookie(ctx).name) ?? null);

const savePhone = (ctx: EndpointContext, deviceId: string, secret: string): void => {
  const { name, attributes } = ownCookie(ctx);
  ctx.setCookie(name, `${deviceId}.${secret}`, attributes);
};

const openSession = async (ctx: EndpointContext, phone: KnownPhone, { store }: PhoneContext) => {
  const user = await ctx.context.internalAdapter.findUserById(phone.userId);
  if (!user) return refuse(ctx, 403, 'no-phone');
  const session = await ctx.context.internalAdapter.createSession(phone.userId, false, {
    deviceId: phone.id,
  });
  // Ended between its PIN and here: ending takes away the sign-ins that were open by then, and this is a later one.
  if (!(await phoneOf(store, `${phone.id}.${phone.secret}`))) {
    await ctx.context.internalAdapter.deleteSession(session.token);
    return refuse(ctx, 403, 'no-phone');
  }
  await setSessionCookie(ctx, { session, user });
  savePhone(ctx, phone.id, phone.secret);
  return ctx.json({ signedIn: true });
};

const typedPin = z.object({ pin: z.string().max(12) });

interface OpenSession {
  readonly id: string;
  readonly deviceId?: string | null;
}

/** Null when the PIN that was sent is right. */
const pinRefused = async (
  ctx: EndpointContext & { readonly body: z.infer<typeof typedPin> },
  context: PhoneContext,
  phone: KnownPhone,
) => {
  const answer = await tryPin(context, phone, ctx.body.pin);
  if (answer.is === 'right') return null;
  if (answer.is === 'wrong')
    return answerWith(ctx, 403, 'wrong-pin', refusalText('wrong-pin', { left: answer.left }));
  return refuse(ctx, 403, answer.is === 'ended' ? 'no-phone' : 'too-many-tries');
};

export const phoneSignIn = (context: () => PhoneContext) =>
  ({
    id: 'phone-sign-in',
    endpoints: {
      phoneAccept: createAuthEndpoint(
        '/phone/accept',
        { method: 'POST', body: z.object({ code: z.string().min(8).max(20) }) },
        async (ctx) => {
          const enrolled = await enrolPhone(context(), ctx.body.code);
          if (!enrolled) return refuse(ctx, 403, 'no-invitation');
          savePhone(ctx, enrolled.deviceId, enrolled.secret);
          return ctx.json({ enrolled: true });
        },
      ),
      phoneChoosePin: createAuthEndpoint(
        '/phone/choose-pin',
        { method: 'POST', body: typedPin },
        async (ctx) => {
          const phone = await phoneIn(ctx, context());
          if (!phone) return refuse(ctx, 403, 'no-phone');
          if (!isGoodPin(ctx.body.pin)) return refuse(ctx, 400, 'plain-pin');
          if (!(await choosePin(context(), phone, ctx.body.pin))) return refuse(ctx, 409, 'pin-chosen');
          return openSession(ctx, phone, context());
        },
      ),
      phoneSignIn: createAuthEndpoint('/phone/sign-in', { method: 'POST', body: typedPin }, async (ctx) => {
        const phone = await phoneIn(ctx, context());
        if (!phone) return refuse(ctx, 403, 'no-phone');
        return (await pinRefused(ctx, context(), phone)) ?? openSession(ctx, phone, context());
      }),
      /** The PIN once more, within a sign-in that this phone opened. */
      phoneProve: createAuthEndpoint('/phone/prove', { method: 'POST', body: typedPin }, async (ctx) => {
        const phone = await phoneIn(ctx, context());
        const session = (await getSessionFromCtx(ctx as never))?.session as OpenSession | undefined;
        if (!phone || session?.deviceId !== phone.id) return refuse(ctx, 403, 'no-phone');
        const refused = await pinRefused(ctx, context(), phone);
        if (refused) return refused;
        await noteProof({ ...context(), clinicId: phone.clinicId, actorId: phone.userId }, session.id);
        return ctx.json({ proved: true });
      }),
    },
  }) as const;

/** What the sign-in page of a phone should ask for. */
export const phoneState = async (
  context: PhoneContext,
  cookie: string | null,
): Promise<'none' | 'choose-pin' | 'enter-pin' | 'too-many-tries'> => {
  const phone = await phoneOf(context.store, cookie);
  if (!phone) return 'none';
  if (!phone.pinHash) return 'choose-pin';
  return phone.wrongAttempts >= pinAttempts ? 'too-many-tries' : 'enter-pin';
};
