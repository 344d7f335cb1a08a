/** What the phone that asks for a page is: unknown, or enrolled and waiting for its PIN. */
import 'server-only';
import { parseCookies } from 'better-auth/cookies';
import { headers } from 'next/headers';
import { cookiePrefix } from './auth.ts';
import { phoneState } from './phone-sign-in.ts';
import { runtime } from './runtime.ts';

export const phoneHere = async () => {
  const at = runtime();
  const isSecure = at.settings.PUBLIC_ORIGIN.startsWith('https://');
  const name = `${isSecure ? '__Secure-' : ''}${cookiePrefix}.phone`;
  const cookie = parseCookies((await headers()).get('cookie') ?? '').get(name) ?? null;
  return phoneState({ store: at.store, auditKey: at.keys.audit, now: at.clock.now() }, cookie);
};
