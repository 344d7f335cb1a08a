/** Signing in on a patient's phone, as endpoints of the sign-in library, which keeps the sessions. */
import { createAuthEndpoint } from 'better-auth/api';
import { setSessionCookie } from 'better-auth/cookies';
import { z } from 'zod';
import {
  choosePin,
  enrolPhone,
  isGoodPin,
  type KnownPhone,
  type PhoneContext,
  phoneOf,
  tryPin,
} from '#data/accounts/phones.ts';
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

const openSession = async (ctx: EndpointContext, phone: KnownPhone) => {
  const user = await ctx.context.internalAdapter.findUserById(phone.userId);
  if (!user) return refuse(ctx, 403, 'no-phone');
  const session = await ctx.context.internalAdapter.createSession(phone.userId, false, {
    deviceId: phone.id,
  });
  await setSessionCookie(ctx, { session, user });
  savePhone(ctx, phone.id, phone.secret);
  return ctx.json({ signedIn: true });
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
        { method: 'POST', body: z.object({ pin: z.string().max(12) }) },
        async (ctx) => {
          const phone = await phoneIn(ctx, context());
          if (!phone) return refuse(ctx, 403, 'no-phone');
          if (!isGoodPin(ctx.body.pin)) return refuse(ctx, 400, 'plain-pin');
          if (!(await choosePin(context(), phone, ctx.body.pin))) return refuse(ctx, 409, 'pin-chosen');
          return openSession(ctx, phone);
        },
      ),
      phoneSignIn: createAuthEndpoint(
        '/phone/sign-in',
        { method: 'POST', body: z.object({ pin: z.string().max(12) }) },
        async (ctx) => {
          const phone = await phoneIn(ctx, context());
          if (!phone) return refuse(ctx, 403, 'no-phone');
          const answer = await tryPin(context(), phone, ctx.body.pin);
          if (answer.is === 'right') return openSession(ctx, phone);
          return answer.is === 'wrong'
            ? answerWith(ctx, 403, 'wrong-pin', refusalText('wrong-pin', { left: answer.left }))
            : refuse(ctx, 403, 'too-many-tries');
        },
      ),
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
  return phone.wrongAttempts >= 5 ? 'too-many-tries' : 'enter-pin';
};
