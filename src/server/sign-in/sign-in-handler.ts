/**
 * The door in front of the sign-in library: only the endpoints in use, only the fields they need,
 * only from our own pages, held back when tried too often, each sign-in audited.
 */
import { parseCookies } from 'better-auth/cookies';
import { isReadable } from '#api/inputs/readable.ts';
import { accountByEmail, challengedUser } from '#data/accounts/auth-database.ts';
import { requiresTwoFactor } from '#data/accounts/staff.ts';
import { flushAttempts } from '#data/accounts/stored-attempts.ts';
import { refusalText } from '#messages/refusals.ts';
import { networkOf } from '../http/network.ts';
import { isOwnOrigin, jsonBody } from '../http/origin.ts';
import { refusal } from '../http/requests.ts';
import type { Runtime } from '../runtime.ts';
import { cookiePrefix } from './auth.ts';
import { ask, askedToWait, guardsOf, heldBack, type Session, withPassphrase } from './held-back.ts';
import { knownMark, withKnown } from './known-browser.ts';
import { auditAnswer } from './sign-in-audit.ts';

/** Path to the fields it takes. Whatever else the library offers does not exist here. */
export const endpoints: Readonly<Record<string, readonly string[]>> = {
  '/sign-in/email': ['email', 'password'],
  '/sign-out': [],
  '/two-factor/enable': ['password'],
  '/two-factor/disable': ['password'],
  '/two-factor/verify-totp': ['code'],
  '/two-factor/verify-backup-code': ['code'],
  '/two-factor/generate-backup-codes': ['password'],
  '/phone/accept': ['code'],
  '/phone/choose-pin': ['pin'],
  '/phone/sign-in': ['pin'],
  '/phone/prove': ['pin'],
  '/passkey/begin': [],
  '/passkey/add': ['name', 'answer'],
  '/passkey/ask': [],
  '/passkey/sign-in': ['answer'],
};

const base = '/api/auth';
const mostBytes = 4096;

/** The named fields as texts; null when one is missing, or something else than text that can be kept. */
const fieldsOf = (value: unknown, names: readonly string[]): Record<string, string> | null => {
  const sent = typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  const fields: Record<string, string> = {};
  for (const name of names) {
    const field = sent[name];
    if (typeof field !== 'string' || !isReadable(field)) return null;
    fields[name] = field;
  }
  return fields;
};

const cookieIn = (headers: Headers, name: string): string | null =>
  parseCookies(headers.get('cookie') ?? '').get(name) ?? null;

const isSecureOrigin = (at: Runtime): boolean => at.settings.PUBLIC_ORIGIN.startsWith('https://');

/** Browsers keep such a cookie only from a page under TLS. */
const cookieStart = (at: Runtime): string => (isSecureOrigin(at) ? '__Secure-' : '');

const knownCookie = (at: Runtime) => {
  const isSecure = isSecureOrigin(at);
  return {
    name: `${cookieStart(at)}${cookiePrefix}.known`,
    attributes: `Path=/; Max-Age=${180 * 86_400}; HttpOnly; SameSite=Lax${isSecure ? '; Secure' : ''}`,
  };
};

const signIn = async (at: Runtime, request: Request, fields: Record<string, string>): Promise<Response> => {
  const { name, attributes } = knownCookie(at);
  const cookie = cookieIn(request.headers, name);
  const email = fields.email ?? '';
  const attempt = {
    email,
    network: networkOf(request.headers),
    knownMark: knownMark(at.keys.signIn, cookie, email),
  };
  const now = Date.now();
  const { signIns } = guardsOf(at);
  const wait = signIns.wait(attempt, now);
  if (wait > 0) return askedToWait(wait);
  signIns.wrong(attempt, now);
  await flushAttempts(at.store, now);
  const answer = await ask(at, request, fields);
  if (!answer.ok) {
    const account = await accountByEmail(at.store, email);
    await auditAnswer(at, '/sign-in/email', answer, account);
    // One answer for an unknown address, a wrong passphrase and a deactivated account.
    return refusal(401, 'wrong', 'That address and passphrase do not belong together.');
  }
  signIns.right(attempt);
  await flushAttempts(at.store, now);
  const headers = new Headers(answer.headers);
  headers.append('set-cookie', `${name}=${withKnown(at.keys.signIn, cookie, email)}; ${attributes}`);
  await auditAnswer(at, '/sign-in/email', answer, await accountByEmail(at.store, email));
  return new Response(answer.body, { status: answer.status, headers });
};

const needsCodes = async (at: Runtime, clinicId: string): Promise<boolean> =>
  !at.settings.DEMO && (await requiresTwoFactor(at.store, clinicId));

const codeRefused = () =>
  refusal(401, 'wrong', 'This code is not right, has run out, or was used already. Wait for the next one.');

/** A code opens once: the library would take it again until its time is over. */
const verifyCode = async (
  at: Runtime,
  request: Request,
  fields: Record<string, string>,
  signedIn: string | null,
): Promise<Response> => {
  const code = (fields.code ?? '').replace(/\s/g, '');
  const challenge = cookieIn(request.headers, `${cookieStart(at)}${cookiePrefix}.two_factor`) ?? '';
  const identifier = challenge.slice(0, Math.max(0, challenge.lastIndexOf('.')));
  const userId = signedIn ?? (await challengedUser(at.store, identifier));
  const { used } = guardsOf(at);
  const now = Date.now();
  if (userId && !used.consume(userId, code, now)) return codeRefused();
  await flushAttempts(at.store, now);
  const answer = await ask(at, request, { code });
  if (userId && !answer.ok) {
    used.giveBack(userId, code);
    await flushAttempts(at.store, now);
  }
  return answer;
};

const passedOn = (
  at: Runtime,
  request: Request,
  path: string,
  fields: Record<string, string>,
  before: Session | null,
): Promise<Response> => {
  if (path === '/two-factor/verify-totp') return verifyCode(at, request, fields, before?.user.id ?? null);
  if (path === '/passkey/sign-in') return heldBack(at, request, path, fields);
  return before && 'password' in fields
    ? withPassphrase(at, request, fields, before)
    : ask(at, request, fields);
};

/** Every request to /api/auth. */
export const signInHandler = async (at: Runtime, request: Request): Promise<Response> => {
  const path = new URL(request.url).pathname.slice(base.length);
  const names = Object.hasOwn(endpoints, path) ? endpoints[path] : undefined;
  if (!names || request.method !== 'POST') return refusal(404, 'not-found', refusalText('nothing-here'));
  if (!isOwnOrigin(request.headers, at.settings.PUBLIC_ORIGIN)) {
    return refusal(403, 'foreign-origin', refusalText('foreign-origin'));
  }
  if (!/^application\/json\b/.test(request.headers.get('content-type') ?? '')) {
    return refusal(415, 'refused', 'Send this as JSON.');
  }
  const body = await jsonBody(request, mostBytes);
  const fields = body ? fieldsOf(body.value, names) : null;
  if (!fields) return refusal(400, 'refused', refusalText('request-unread'));
  if (path === '/sign-in/email') return signIn(at, request, fields);
  if (path === '/phone/accept') return heldBack(at, request, path, fields);
  const before = await at.auth.api.getSession({ headers: request.headers });
  if (path === '/two-factor/disable' && before && (await needsCodes(at, before.user.clinicId))) {
    return refusal(403, 'not-yours', 'Your clinic requires codes for staff, so they stay on.');
  }
  const answer = await passedOn(at, request, path, fields, before);
  await auditAnswer(at, path, answer, before?.user ?? null);
  return answer;
};
